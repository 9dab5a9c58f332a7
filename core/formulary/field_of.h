// The description of one member's field, for whatever checks, asks for or shows just that one.
#pragma once

#include "core/formulary/described.h"

namespace ullage::formulary
{

namespace detail
{

template <class T, class M, class U, class N>
constexpr const FieldDescription* matching(const Bound<U, N>& field, M T::*member)
{
    if constexpr (std::is_same_v<N U::*, M T::*>) {
        return field.member == member ? &field.is : nullptr;
    } else {
        return nullptr;
    }
}
// What is spread is asked for by its own struct.
template <class T, class M, class U, class N>
constexpr const FieldDescription* matching(const Spread<U, N>&, M T::*)
{
    return nullptr;
}

} // namespace detail

/// fieldOf(&ledger::StoodOpen::time): its name, range, unit and default, as they stand in the
/// description, so that it may be handed on and kept by reference. Does not compile for a member
/// that stands on no line.
template <class T, class M>
consteval const FieldDescription& fieldOf(M T::*member)
{
    const FieldDescription* found = nullptr;
    std::apply(
        [&](const auto&... fields) {
            ((found = found ? found : detail::matching(fields, member)), ...);
        },
        Described<T>::fields);
    return *found;
}

/// Whether the lower end of a range only means "more than nothing" (field::positive()).
constexpr bool isAboveNothing(double low) { return low == std::numeric_limits<double>::min(); }

} // namespace ullage::formulary
