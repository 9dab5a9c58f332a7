// Every type of line and every kind of event that the journal knows, each with its fields.
//
// What a field says stands beside its struct (event_fields.h, entry_fields.h, and for what the
// formulary holds its own *_fields.h); here it all comes together. Nothing else lists types, kinds
// or fields.
#pragma once

#include "core/formulary/notebook_fields.h"
#include "core/formulary/solution_fields.h"
#include "core/formulary/vessel_fields.h"
#include "core/ledger/entry_fields.h"
#include "core/ledger/event_fields.h"

#include <span>
#include <string_view>
#include <utility>
#include <variant>

namespace ullage::ledger
{

namespace detail
{

template <class Variant, std::size_t... I>
constexpr auto kindsOf(std::index_sequence<I...>)
{
    return std::array<std::string_view, sizeof...(I)>{
        formulary::Described<std::variant_alternative_t<I, Variant>>::kind...};
}
template <class Variant, std::size_t... I>
constexpr auto typesOf(std::index_sequence<I...>)
{
    return std::array<std::string_view, sizeof...(I)>{
        formulary::Described<std::variant_alternative_t<I, Variant>>::type...};
}

} // namespace detail

using EntryWhat = decltype(Entry::what);

/// Kinds as the journal writes them, in the order of Happening.
inline constexpr auto kKindCodes =
    detail::kindsOf<Happening>(std::make_index_sequence<std::variant_size_v<Happening>>{});
/// Types as the journal writes them, in the order of Entry::what.
inline constexpr auto kTypeCodes =
    detail::typesOf<EntryWhat>(std::make_index_sequence<std::variant_size_v<EntryWhat>>{});

struct LineDescription {
    std::string_view type;
    std::string_view kind; ///< of an event; else empty
    /// In the order in which they stand on the line; what is called "type" is not among them.
    std::span<const formulary::FieldDescription> fields;
    /// Names in that order, "type" first, and those that version 1 used.
    std::span<const std::string_view> order;
    /// False: refused by name as a whole, as long as nothing reckons with it.
    bool built = true;

    /// Null for a field that the line has no use for.
    [[nodiscard]] const formulary::FieldDescription* field(std::string_view name) const;
};

/// Every type of line in the order of Entry::what; events follow, in the order of Happening.
std::span<const LineDescription> lineDescriptions();

/// By place in kTypeCodes and, for an event, kKindCodes.
const LineDescription& describe(std::size_t type, std::size_t kind = 0);
const LineDescription& describe(const Event& event);

/// What an event of this kind is about.
Subject subjectOf(const Event& event);

/// Calls f(description, member) for every field of the entry in order.
template <class E, class F>
void eachEntryField(E& entry, F&& f)
{
    std::visit(
        [&](auto& what) {
            if constexpr (std::is_same_v<std::remove_cvref_t<decltype(what)>, Event>) {
                eachEventField(what, f);
            } else {
                formulary::eachField(what, f);
            }
        },
        entry.what);
}

} // namespace ullage::ledger
