// A line of every type and kind, made from its description, with every field said.
#pragma once

#include "core/formulary/field_check.h"
#include "core/ledger/line_description.h"

#include <algorithm>
#include <string>
#include <type_traits>
#include <vector>

namespace ullage::ledger::sample
{

using formulary::FieldDescription;

/// Gives every field a value that its description allows.
struct Fill {
    bool unbuilt = true; ///< also those that nothing reckons with yet

    template <class M>
    void operator()(const FieldDescription& is, M& member) const
    {
        if (!is.built && !unbuilt) {
            return;
        }
        if constexpr (std::is_same_v<M, const std::string_view>) {
            // an event's kind
        } else if constexpr (std::is_same_v<M, std::string>) {
            member = is.holds == formulary::Holds::Date ? "2026-02-28"
                     : is.name == "format"              ? "120"
                                                        : "a " + std::string(is.name) + " \"ü\"\n";
        } else if constexpr (std::is_same_v<M, Decimal>) {
            member = *Decimal::from("9.80");
        } else if constexpr (formulary::Figurelike<M>) {
            member = M(number(is));
        } else if constexpr (std::is_same_v<M, bool>) {
            member = is.name != "withdrawn";
        } else if constexpr (std::is_enum_v<M>) {
            member = static_cast<M>(is.codes.size() - 1);
        } else if constexpr (std::is_same_v<M, chemistry::Instant>) {
            member = chemistry::Instant(std::chrono::milliseconds(1'780'000'000'123));
        } else if constexpr (std::is_same_v<M, std::vector<std::string>>) {
            member = {"one", "two"};
        } else if constexpr (std::is_same_v<M, std::map<std::string, std::string>>) {
            member = {{"capacity", "a test"}};
        } else if constexpr (formulary::detail::Optional<M>::value) {
            (*this)(is, member.emplace());
        } else if constexpr (formulary::Structured<M>) {
            formulary::eachField(member, *this);
        } else {
            member.clear();
            formulary::eachField(member.emplace_back(), *this);
        }
    }

    // Neither a default nor a round one: what is lost on the way shows.
    static double number(const FieldDescription& is)
    {
        const double low = std::max(is.low, 0.0);
        const double high = std::min(is.high, 10'000.0);
        const double inside = low + (high - low) / 3;
        return is.whole ? std::ceil(inside) : inside;
    }
};

// What fields may not say together.
template <class What>
void reconcile(What&)
{
}
inline void reconcile(formulary::Solution& solution)
{
    solution.keeping.full = chemistry::Days(180);
    solution.keeping.half = chemistry::Days(60);
}
inline void reconcile(Packet& packet) { packet.form = formulary::Form::Liquid; }
inline void reconcile(Processed& processed) { processed.load.area.reset(); }
inline void reconcile(Mixed& mixed) { mixed.from.clear(); }
inline void reconcile(ToppedUp& filled) { filled.solution.clear(); }
inline void reconcile(FilmMark& mark) { mark.takesBack.clear(); }

template <class What>
What filled(const Fill& fill)
{
    What what;
    formulary::eachField(what, fill);
    reconcile(what);
    return what;
}

template <std::size_t... I>
void addTypes(std::vector<Entry>& all, const Fill& fill, std::index_sequence<I...>)
{
    const auto add = [&]<class What>(std::type_identity<What>) {
        if constexpr (!std::is_same_v<What, Event>) {
            all.push_back({filled<What>(fill), {}});
        }
    };
    (add(std::type_identity<std::variant_alternative_t<I, EntryWhat>>{}), ...);
}

template <std::size_t... I>
void addKinds(std::vector<Entry>& all, const Fill& fill, std::index_sequence<I...>)
{
    const auto add = [&]<class Kind>(std::type_identity<Kind>) {
        Event event;
        event.what = Kind();
        eachEventField(event, fill);
        reconcile(std::get<Kind>(event.what));
        all.push_back({std::move(event), {}});
    };
    (add(std::type_identity<std::variant_alternative_t<I, Happening>>{}), ...);
}

/// One of each type but events, then one event of each kind.
inline std::vector<Entry> lines(const Fill& fill = {})
{
    std::vector<Entry> all;
    addTypes(all, fill, std::make_index_sequence<kTypeCodes.size()>{});
    addKinds(all, fill, std::make_index_sequence<kKindCodes.size()>{});
    return all;
}

/// "event drawn", "vessel".
inline std::string nameOf(const Entry& entry)
{
    const Event* event = entry.event();
    return std::string(entry.type()) + (event ? " " + std::string(event->kind()) : "");
}

} // namespace ullage::ledger::sample
