#include "core/formulary/field_check.h"
#include "core/ledger/line_description.h"
#include "core/store/instant_text.h"
#include "core/store/journal_codec.h"
#include "core/store/line_writer.h"

namespace ullage::store
{

using namespace ledger;
using formulary::FieldDescription;
using formulary::Figurelike;
using formulary::Holds;
using formulary::Presence;
using formulary::Structured;

namespace
{

QByteArray joined(const QByteArrayList& values) { return '[' + values.join(',') + ']'; }

template <class What>
void writeDescribed(LineWriter& line, const What& what);

template <class What>
QByteArray objectOf(const What& what)
{
    LineWriter line;
    writeDescribed(line, what);
    return line.object();
}

// Defaults are written only where the description has them stated.
template <class M>
void writeField(LineWriter& line, const FieldDescription& is, const M& member)
{
    const bool always = is.presence == Presence::Required || is.presence == Presence::Stated;
    if constexpr (std::is_same_v<M, std::string>) {
        always ? line.text(is.name, member) : line.textIf(is.name, member);
    } else if constexpr (std::is_same_v<M, std::string_view>) {
        line.text(is.name, member);
    } else if constexpr (std::is_same_v<M, Decimal>) {
        line.text(is.name, member.text());
    } else if constexpr (Figurelike<M>) {
        const double number = formulary::detail::numberOf(member);
        if (is.presence != Presence::Implied || number != is.fallback) {
            line.number(is.name, number);
        }
    } else if constexpr (std::is_same_v<M, bool>) {
        if (is.holds == Holds::Code) {
            line.textIf(is.name, member ? is.codes.front() : std::string_view());
        } else if (is.presence != Presence::Implied || member) {
            line.truth(is.name, member);
        }
    } else if constexpr (std::is_enum_v<M>) {
        line.text(is.name, is.codes[static_cast<std::size_t>(member)]);
    } else if constexpr (std::is_same_v<M, chemistry::Instant>) {
        line.text(is.name, instantText(member).toStdString());
    } else if constexpr (std::is_same_v<M, std::map<std::string, std::string>>) {
        LineWriter inner;
        for (const auto& [key, text] : member) {
            inner.text(key, text);
        }
        if (always || !member.empty()) {
            line.raw(is.name, inner.object());
        }
    } else if constexpr (formulary::detail::Optional<M>::value) {
        if (member) {
            writeField(line, is, *member);
        }
    } else if constexpr (Structured<M>) {
        const QByteArray object = objectOf(member);
        if (always || object != "{}") {
            line.raw(is.name, object);
        }
    } else {
        QByteArrayList pieces;
        for (const auto& one : member) {
            if constexpr (std::is_same_v<M, std::vector<std::string>>) {
                pieces += jsonText(one);
            } else {
                pieces += objectOf(one);
            }
        }
        // A list that must be there may still be empty where the line takes something back.
        if (!member.empty()) {
            line.raw(is.name, joined(pieces));
        }
    }
}

template <class What>
void writeDescribed(LineWriter& line, const What& what)
{
    formulary::eachField(what, [&](const FieldDescription& is, const auto& member) {
        if (formulary::belongs(what, is)) {
            writeField(line, is, member);
        }
    });
}

} // namespace

QByteArray encode(const Entry& entry)
{
    if (!entry.body.empty()) {
        return QByteArray::fromStdString(entry.body);
    }
    LineWriter line;
    line.text("type", entry.type());
    eachEntryField(entry, [&](const FieldDescription& is, const auto& member) {
        writeField(line, is, member);
    });
    return line.object();
}

QByteArray defaultHeader()
{
    return LineWriter()
        .text("type", "book")
        .text("format", kJournalFormat)
        .number("version", kJournalVersion)
        .object();
}

} // namespace ullage::store
