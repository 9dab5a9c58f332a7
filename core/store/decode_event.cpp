#include "core/ledger/coded_notes.h"
#include "core/store/decode_parts.h"
#include "core/store/read_fields.h"

namespace ullage::store
{

using namespace ledger;

namespace
{

using Maker = Happening (*)();

template <std::size_t... I>
constexpr auto makers(std::index_sequence<I...>)
{
    return std::array<Maker, sizeof...(I)>{[] { return Happening(std::in_place_index<I>); }...};
}
// In the order of kKindCodes.
constexpr auto kMakers = makers(std::make_index_sequence<kKindCodes.size()>{});

} // namespace

Event decodeEvent(Fields& fields)
{
    Event event;
    event.what = kMakers[fields.choice("kind", kKindCodes)]();
    eachEventField(event, [&](const formulary::FieldDescription& is, auto& member) {
        detail::readField(fields, is, member, is.presence == formulary::Presence::Required);
    });
    if (auto* note = std::get_if<Noted>(&event.what)) {
        event.what = meaningOf(std::move(*note));
    }
    return event;
}

} // namespace ullage::store
