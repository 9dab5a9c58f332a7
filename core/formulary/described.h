// Descriptions of fields tied to the members they are read into.
//
// A struct that stands on a line has a specialisation of Described with a tuple `fields`, in the
// order in which they are written. eachField() goes through struct and description together; it is
// unrolled by the compiler, so that reading a line by its description costs nothing over reading it
// by hand.
#pragma once

#include "core/formulary/field.h"

#include <array>
#include <tuple>
#include <type_traits>

namespace ullage::formulary
{

/// Specialised for every struct of a line:
///   static constexpr auto fields = std::tuple(bound(&T::member, field::text("name")), …);
/// and optionally
///   static constexpr bool belongs(const T&, std::string_view field); // of what was read before it
///   static Result<void> together(const T&);                          // what fields say together
///   static void settle(T&);                  // puts what was read in order, before any check
template <class T>
struct Described;

/// One field: its description and the member it is read into.
template <class T, class M>
struct Bound {
    FieldDescription is;
    M T::*member;
};
template <class T, class M>
constexpr Bound<T, M> bound(M T::*member, const FieldDescription& is)
{
    return {is, member};
}

/// A member whose own fields stand on the line beside those of the whole.
template <class T, class M>
struct Spread {
    M T::*member;
};
template <class T, class M>
constexpr Spread<T, M> spread(M T::*member)
{
    return {member};
}

namespace detail
{

template <class T, class M, class What, class F>
void visit(What& what, const Bound<T, M>& field, F& f)
{
    f(field.is, what.*field.member);
}

} // namespace detail

/// Calls f(description, member) for every field in order.
template <class What, class F>
void eachField(What& what, F&& f);

namespace detail
{

template <class T, class M, class What, class F>
void visit(What& what, const Spread<T, M>& part, F& f)
{
    eachField(what.*part.member, f);
}

template <class T, class M>
constexpr std::size_t count(const Bound<T, M>&)
{
    return 1;
}
template <class T, class M>
constexpr std::size_t count(const Spread<T, M>&)
{
    return std::apply([](const auto&... fields) { return (std::size_t{0} + ... + count(fields)); },
                      Described<M>::fields);
}
template <class T>
constexpr std::size_t countOf()
{
    return std::apply([](const auto&... fields) { return (std::size_t{0} + ... + count(fields)); },
                      Described<T>::fields);
}

template <class Array, class T, class M>
constexpr void put(Array& all, std::size_t& at, const Bound<T, M>& field)
{
    all[at++] = field.is;
}
template <class Array, class T, class M>
constexpr void put(Array& all, std::size_t& at, const Spread<T, M>&)
{
    std::apply([&](const auto&... fields) { (put(all, at, fields), ...); }, Described<M>::fields);
}
template <class T>
constexpr auto flat()
{
    std::array<FieldDescription, countOf<T>()> all{};
    std::size_t at = 0;
    std::apply([&](const auto&... fields) { (put(all, at, fields), ...); }, Described<T>::fields);
    return all;
}

} // namespace detail

template <class What, class F>
void eachField(What& what, F&& f)
{
    std::apply([&](const auto&... fields) { (detail::visit(what, fields, f), ...); },
               Described<std::remove_const_t<What>>::fields);
}

/// The descriptions alone, in order, those of spread members among them.
template <class T>
inline constexpr auto kFieldsOf = detail::flat<T>();

/// Whether a field belongs on the line, by what stands before it. One that does not is neither
/// read, nor written, nor checked.
template <class T>
constexpr bool belongs(const T& what, const FieldDescription& is)
{
    if constexpr (requires { Described<T>::belongs(what, is.name); }) {
        return Described<T>::belongs(what, is.name);
    } else {
        return true;
    }
}

} // namespace ullage::formulary
