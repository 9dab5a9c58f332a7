#include "core/store/decode_parts.h"
#include "core/store/read_fields.h"

namespace ullage::store
{

using namespace ledger;

namespace
{

using Decoder = EntryWhat (*)(Fields&);

template <std::size_t I>
EntryWhat decodeOne(Fields& fields)
{
    using What = std::variant_alternative_t<I, EntryWhat>;
    if constexpr (std::is_same_v<What, Event>) {
        return decodeEvent(fields);
    } else {
        What what;
        readDescribed(fields, what);
        return what;
    }
}

template <std::size_t... I>
constexpr auto decoders(std::index_sequence<I...>)
{
    return std::array<Decoder, sizeof...(I)>{decodeOne<I>...};
}
// In the order of kTypeCodes.
constexpr auto kDecoders = decoders(std::make_index_sequence<kTypeCodes.size()>{});

} // namespace

EntryWhat decodeWhat(Fields& fields, std::size_t type) { return kDecoders[type](fields); }

} // namespace ullage::store
