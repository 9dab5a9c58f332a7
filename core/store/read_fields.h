// Reads the fields of a struct by its description.
#pragma once

#include "core/formulary/field_check.h"
#include "core/ledger/decimal.h"
#include "core/store/fields.h"

#include <type_traits>

namespace ullage::store
{

template <class What>
void readDescribed(Fields& fields, What& what);

namespace detail
{

using formulary::FieldDescription;
using formulary::Figurelike;
using formulary::Holds;
using formulary::Structured;

// Under its name, or under the one it had in version 1.
inline const char* nameOn(const Fields& fields, const FieldDescription& is)
{
    const bool former = !is.formerly.empty() && !fields.has(is.name.data());
    return former && fields.has(is.formerly.data()) ? is.formerly.data() : is.name.data();
}

template <class M>
M readChoice(Fields& fields, const FieldDescription& is)
{
    return static_cast<M>(fields.choice(is.name.data(), is.codes));
}

template <class M>
void readList(Fields& fields, const FieldDescription& is, M& member)
{
    const QJsonArray list = fields.list(is.name.data());
    if (list.isEmpty() && is.presence == formulary::Presence::Required) {
        fields.refuseWith({.code = ErrorCode::Missing}, is.name.data());
    }
    member.reserve(static_cast<std::size_t>(list.size()));
    for (const auto& value : list) {
        Fields one = fields.element(is.name.data(), value);
        readDescribed(one, member.emplace_back());
    }
}

template <class M>
void readField(Fields& fields, const FieldDescription& is, M& member, bool demanded)
{
    const char* name = is.name.data();
    if constexpr (std::is_same_v<M, std::string>) {
        name = nameOn(fields, is);
        member = is.holds == Holds::Date ? fields.dateIf(name)
                 : demanded              ? fields.text(name)
                                         : fields.textIf(name);
    } else if constexpr (std::is_same_v<M, const std::string_view>) {
        // An event's kind, which chose what is read.
    } else if constexpr (std::is_same_v<M, std::vector<std::string>>) {
        member = fields.textsIf(name);
    } else if constexpr (std::is_same_v<M, std::map<std::string, std::string>>) {
        if (fields.has(name)) {
            fields.texts(name, member);
        }
    } else if (!demanded && !fields.has(name)) {
        // Stays as it is by default.
    } else if constexpr (std::is_same_v<M, ledger::Decimal>) {
        member = fields.decimal(name);
    } else if constexpr (Figurelike<M>) {
        member = M(fields.number(name));
    } else if constexpr (std::is_same_v<M, bool>) {
        if (is.holds == Holds::Code) {
            fields.choice(name, is.codes);
            member = true;
        } else {
            member = fields.truth(name);
        }
    } else if constexpr (std::is_enum_v<M>) {
        member = readChoice<M>(fields, is);
    } else if constexpr (std::is_same_v<M, chemistry::Instant>) {
        member = fields.moment(name);
    } else if constexpr (Structured<M>) {
        Fields inner = fields.inner(name);
        readDescribed(inner, member);
    } else if constexpr (formulary::detail::List<M>::value) {
        readList(fields, is, member);
    } else {
        readField(fields, is, member.emplace(), true);
    }
}

} // namespace detail

/// What is refused stays in `fields`.
template <class What>
void readDescribed(Fields& fields, What& what)
{
    using Description = formulary::Described<What>;
    if constexpr (requires { what.withdrawn; }) {
        // Says how much else there must be.
        what.withdrawn = fields.has("withdrawn") && fields.truth("withdrawn");
    }
    formulary::eachField(what, [&](const formulary::FieldDescription& is, auto& member) {
        if (!formulary::belongs(what, is)) {
            return;
        }
        bool demanded = formulary::demands(what, is);
        if constexpr (requires { Description::idFrom; }) {
            demanded = demanded && is.name != "id";
        }
        detail::readField(fields, is, member, demanded);
    });
    if constexpr (requires { Description::idFrom; }) {
        if (what.id.empty()) {
            what.id = what.*Description::idFrom;
        }
    }
    if constexpr (requires { Description::settle(what); }) {
        Description::settle(what);
    }
}

} // namespace ullage::store
