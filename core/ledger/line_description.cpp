#include "core/ledger/line_description.h"

#include <algorithm>

namespace ullage::ledger
{

namespace
{

using formulary::Described;
using formulary::FieldDescription;
using formulary::kFieldsOf;

template <class Kind>
constexpr auto eventFields()
{
    constexpr auto own = kFieldsOf<Kind>;
    constexpr std::size_t around = 5; // id, kind, at, air_ml, by
    std::array<FieldDescription, own.size() + around + (kHasBatch<Kind> ? 1 : 0)> all{};
    std::size_t at = 0;
    const auto put = [&](bool subject) {
        for (const FieldDescription& one : own) {
            if (one.subject == subject) {
                all[at++] = one;
            }
        }
    };
    all[at++] = kEventId;
    put(true);
    if (kHasBatch<Kind>) {
        all[at++] = kBatchField<Kind>;
    }
    all[at++] = kEventKind;
    all[at++] = kEventAt;
    put(false);
    all[at++] = kEventAir;
    all[at++] = kEventBy;
    return all;
}

template <class What>
constexpr auto allFields()
{
    if constexpr (requires { Described<What>::kind; }) {
        return eventFields<What>();
    } else {
        return kFieldsOf<What>;
    }
}
template <class What>
constexpr auto kAllFields = allFields<What>();

// Former names stand where they stood: after the moment.
template <class What>
constexpr auto namesInOrder()
{
    constexpr auto& fields = kAllFields<What>;
    constexpr std::size_t former = static_cast<std::size_t>(
        std::count_if(fields.begin(), fields.end(),
                      [](const FieldDescription& is) { return !is.formerly.empty(); }));
    std::array<std::string_view, fields.size() + former + 1> names{};
    std::size_t at = 0;
    names[at++] = "type";
    for (const FieldDescription& is : fields) {
        names[at++] = is.name;
        if (is.name == "at") {
            for (const FieldDescription& other : fields) {
                if (!other.formerly.empty()) {
                    names[at++] = other.formerly;
                }
            }
        }
    }
    return names;
}
template <class What>
constexpr auto kNamesInOrder = namesInOrder<What>();

template <class What>
constexpr LineDescription line()
{
    if constexpr (requires { Described<What>::kind; }) {
        return {Described<Event>::type, Described<What>::kind, kAllFields<What>,
                kNamesInOrder<What>, Described<What>::built};
    } else if constexpr (std::is_same_v<What, Event>) {
        return {Described<Event>::type, {}, {}, {}, true}; // described kind by kind
    } else {
        return {Described<What>::type, {}, kAllFields<What>, kNamesInOrder<What>, true};
    }
}

template <class Variant, std::size_t... I>
constexpr auto linesOf(std::index_sequence<I...>)
{
    return std::array<LineDescription, sizeof...(I)>{
        line<std::variant_alternative_t<I, Variant>>()...};
}

constexpr auto kTypes =
    linesOf<EntryWhat>(std::make_index_sequence<std::variant_size_v<EntryWhat>>{});
constexpr auto kKinds =
    linesOf<Happening>(std::make_index_sequence<std::variant_size_v<Happening>>{});

constexpr auto everyLine()
{
    std::array<LineDescription, kTypes.size() - 1 + kKinds.size()> all{};
    std::size_t at = 0;
    for (const LineDescription& one : kTypes) {
        if (one.type != Described<Event>::type) {
            all[at++] = one;
        }
    }
    for (const LineDescription& one : kKinds) {
        all[at++] = one;
    }
    return all;
}
constexpr auto kLines = everyLine();

} // namespace

const FieldDescription* LineDescription::field(std::string_view name) const
{
    const auto found = std::find_if(fields.begin(), fields.end(),
                                    [&](const FieldDescription& is) { return is.name == name; });
    return found == fields.end() ? nullptr : &*found;
}

std::span<const LineDescription> lineDescriptions() { return kLines; }

const LineDescription& describe(std::size_t type, std::size_t kind)
{
    const LineDescription& line = kTypes[type];
    return line.type == Described<Event>::type ? kKinds[kind] : line;
}

const LineDescription& describe(const Event& event) { return kKinds[event.what.index()]; }

Subject subjectOf(const Event& event)
{
    return std::visit(
        [](const auto& what) { return Described<std::remove_cvref_t<decltype(what)>>::subject; },
        event.what);
}

} // namespace ullage::ledger
