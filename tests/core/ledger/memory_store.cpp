#include "tests/core/ledger/memory_store.h"

#include "core/formulary/field_check.h"
#include "core/ledger/line_description.h"

namespace ullage::ledger
{

namespace
{

using formulary::FieldDescription;

// Writes fields one after another; an optional that is empty shows as a dash.
struct Printer {
    std::ostringstream& out;

    template <class M>
    void operator()(const FieldDescription& is, const M& member) const
    {
        if constexpr (std::is_same_v<M, std::string> || std::is_same_v<M, std::string_view>) {
            out << '"' << member << "\" ";
        } else if constexpr (std::is_same_v<M, bool>) {
            out << (member ? "yes " : "no ");
        } else if constexpr (formulary::Figurelike<M>) {
            out << formulary::detail::numberOf(member) << ' ';
        } else if constexpr (std::is_enum_v<M>) {
            out << is.codes[static_cast<std::size_t>(member)] << ' ';
        } else if constexpr (std::is_same_v<M, chemistry::Instant>) {
            out << member.time_since_epoch().count() << ' ';
        } else if constexpr (std::is_same_v<M, std::map<std::string, std::string>>) {
            for (const auto& [key, text] : member) {
                out << '"' << key << "\" \"" << text << "\" ";
            }
        } else if constexpr (formulary::detail::Optional<M>::value) {
            member ? (*this)(is, *member) : void(out << "- ");
        } else if constexpr (formulary::Structured<M>) {
            formulary::eachField(member, *this);
        } else {
            for (const auto& one : member) {
                (*this)(is, one);
            }
        }
    }
};

} // namespace

std::string printed(const Entry& entry)
{
    std::ostringstream out;
    out << entry.type() << ' ';
    eachEntryField(entry, Printer{out});
    return out.str();
}

} // namespace ullage::ledger
