// What a description alone can tell of a line: whether what must be there is, whether figures are
// in their ranges, whether it says something that nothing reckons with yet, and what it names.
#pragma once

#include "core/chemistry/quantities.h"
#include "core/chemistry/result.h"
#include "core/formulary/described.h"

#include <cmath>
#include <concepts>
#include <optional>
#include <string>
#include <type_traits>
#include <vector>

namespace ullage::formulary
{

/// A member that holds one number: a double, a quantity, an exact decimal.
template <class M>
concept Figurelike = std::same_as<M, double> || requires(const M& member)
{
    {
        member.value()
        } -> std::same_as<double>;
};

/// A member with fields of its own.
template <class M>
concept Structured = requires
{
    Described<M>::fields;
};

namespace detail
{

template <class M>
struct Optional : std::false_type {
    using Inner = M;
};
template <class M>
struct Optional<std::optional<M>> : std::true_type {
    using Inner = M;
};
template <class M>
struct List : std::false_type {
    using Inner = M;
};
template <class M>
struct List<std::vector<M>> : std::true_type {
    using Inner = M;
};

template <class M>
double numberOf(const M& member)
{
    if constexpr (std::same_as<M, double>) {
        return member;
    } else {
        return member.value();
    }
}

/// Refuses what is outside the range (OutOfRange; NotFinite for NaN and infinity), and parts of a
/// piece where only whole ones are (OutOfRange, `allowed` says so).
Result<void> checkNumber(const FieldDescription& is, double value);
/// OutOfRange for a list of more than `most`, with the number of its pieces.
Result<void> checkCount(const FieldDescription& is, std::size_t pieces);
tl::unexpected<Error> missing(const FieldDescription& is);
/// The same refusal of a field inside another; `fine` must be a refusal.
Result<void> inside(Result<void> fine, const FieldDescription& outer);

} // namespace detail

/// Refuses, in the order of the fields, one that must be there and is empty (Missing), a figure out
/// of its range (OutOfRange, NotFinite) and a list too long (OutOfRange), then what
/// Described<T>::together() refuses. Fields are named as the journal spells them, inner ones with
/// their way ("keeping.full_days"). What is withdrawn need only say what it withdraws.
template <class T>
Result<void> checkDescribed(const T& what);

/// For one field; `demanded` as the description says, or not where the line is withdrawn: then a
/// required number may be 0. Truths, codes and moments are sound by themselves and pass.
template <class M>
Result<void> checkField(const FieldDescription& is, const M& member, bool demanded)
{
    if constexpr (std::same_as<M, std::string>) {
        return demanded && member.empty() ? detail::missing(is) : Result<void>{};
    } else if constexpr (Figurelike<M>) {
        const double value = detail::numberOf(member);
        const bool leftOut = is.presence == Presence::Required && !demanded && value == 0;
        return leftOut ? Result<void>{} : detail::checkNumber(is, value);
    } else if constexpr (detail::Optional<M>::value) {
        if (!member) {
            return demanded ? detail::missing(is) : Result<void>{};
        }
        return checkField(is, *member, demanded);
    } else if constexpr (detail::List<M>::value) {
        if (demanded && member.empty()) {
            return detail::missing(is);
        }
        if (auto fine = detail::checkCount(is, member.size()); !fine) {
            return fine;
        }
        if constexpr (Structured<typename detail::List<M>::Inner>) {
            for (const auto& one : member) {
                if (auto fine = checkDescribed(one); !fine) {
                    return detail::inside(std::move(fine), is);
                }
            }
        }
        return {};
    } else if constexpr (Structured<M>) {
        auto fine = checkDescribed(member);
        return fine ? fine : detail::inside(std::move(fine), is);
    } else {
        return {};
    }
}

/// True for a line that takes another out of the book.
template <class T>
bool isWithdrawn(const T& what)
{
    if constexpr (requires { what.withdrawn; }) {
        return what.withdrawn;
    } else {
        return false;
    }
}

/// Whether this field must be there on this line; of a withdrawn one, id and what it replaces only.
template <class T>
bool demands(const T& what, const FieldDescription& is)
{
    if (isWithdrawn(what)) {
        return is.name == "id" || is.name == "replaces";
    }
    return is.presence == Presence::Required && belongs(what, is);
}

template <class T>
Result<void> checkDescribed(const T& what)
{
    Result<void> fine;
    eachField(what, [&](const FieldDescription& is, const auto& member) {
        if (fine && belongs(what, is)) {
            fine = checkField(is, member, demands(what, is));
        }
    });
    if constexpr (requires { Described<T>::together(what); }) {
        return fine ? Described<T>::together(what) : fine;
    } else {
        return fine;
    }
}

namespace detail
{

/// Whether the field says anything besides its default, and what.
template <class M>
std::optional<Error> said(const FieldDescription& is, const M& member)
{
    Error error{.code = ErrorCode::NotBuilt, .field = std::string(is.name)};
    if constexpr (std::same_as<M, std::string>) {
        error.text = member;
        return member.empty() ? std::nullopt : std::optional(std::move(error));
    } else if constexpr (std::same_as<M, bool>) {
        error.text = is.holds == Holds::Code ? std::string(is.codes.front()) : "true";
        return member ? std::optional(std::move(error)) : std::nullopt;
    } else if constexpr (std::is_enum_v<M>) {
        error.text = std::string(is.codes[static_cast<std::size_t>(member)]);
        return error.text == is.meant ? std::nullopt : std::optional(std::move(error));
    } else if constexpr (Figurelike<M>) {
        error.number = numberOf(member);
        error.unit = std::string(is.unit);
        const bool isDefault = is.presence != Presence::Optional && *error.number == is.fallback;
        return isDefault ? std::nullopt : std::optional(std::move(error));
    } else if constexpr (Optional<M>::value) {
        return member ? said(is, *member) : std::nullopt;
    } else if constexpr (List<M>::value) {
        return member.empty() ? std::nullopt : std::optional(std::move(error));
    } else {
        return error;
    }
}

} // namespace detail

/// NotBuilt for a field that says more than its default although nothing reckons with it yet; the
/// error says what, in `text` or `number`. checkDescribed() does not ask this.
template <class M>
Result<void> checkBuilt(const FieldDescription& is, const M& member)
{
    if (is.built) {
        return {};
    }
    auto more = detail::said(is, member);
    return more ? refuse(std::move(*more)) : Result<void>{};
}

/// Calls f(description, id) if the field names something.
template <class M, class F>
void reference(const FieldDescription& is, const M& member, F&& f)
{
    if constexpr (std::same_as<M, std::string>) {
        if (is.refers != Refers::Nothing && !member.empty()) {
            f(is, member);
        }
    }
}

} // namespace ullage::formulary
