#include "app/sheet/sheet_kind.h"

#include "app/words/formulary_words.h"
#include "core/chemistry/films.h"

#include <QRegularExpression>

#include <algorithm>

namespace ullage::app
{

std::optional<RowKind> rowKindFrom(const QString& cell)
{
    if (saysOneOf(cell, {"bottle", "mix", "mixed", "batch", "flasche", "ansatz", "angesetzt"})) {
        return RowKind::BottleRow;
    }
    if (saysOneOf(cell, {"film", "films", "roll", "rolls", "run", "developed", "filme", "durchgang",
                         "entwickelt"})) {
        return RowKind::FilmRow;
    }
    if (saysOneOf(cell, {"test", "clearing test", "strip", "control strip", "probe", "klärprobe",
                         "kontrollstreifen"})) {
        return RowKind::TestRow;
    }
    return std::nullopt;
}

std::string sheetFormatFrom(const QString& cell)
{
    static const QRegularExpression narrow(
        QStringLiteral(R"(^(?:135|35\s*mm|35|kb|kleinbild)(?:\s*film)?(?:\W*\b(24|36)\b)?)"
                       R"((?:\W*(?:exp|exposures|aufn|aufnahmen|bilder))?\W*$)"),
        QRegularExpression::CaseInsensitiveOption);
    // By the frames on it: a sheet of that size says "cm".
    static const QRegularExpression roll(
        QStringLiteral(R"(^(?:120\W+)?(?:645|6\s*[x×]\s*(?:4[.,]5|6|7|8|9|12|17))(?:\W+120)?$)"
                       R"(|^(?:rollfilm\W*)?120(?:\s*film|er)?$|^rollfilm$|^mittelformat$)"
                       R"(|^medium format$)"),
        QRegularExpression::CaseInsensitiveOption);
    const QString said = cell.simplified();
    if (const auto found = narrow.match(said); found.hasMatch()) {
        const QString frames = found.captured(1);
        return frames.isEmpty() ? std::string(kUsualSheetFormat) // as most of them are
                                : "135-" + frames.toStdString();
    }
    if (roll.match(said).hasMatch()) {
        return "120";
    }
    const std::string format = readFilmFormat(said);
    return chemistry::filmsInOne(format) ? format : std::string();
}

bool isTotal(const QString& cell)
{
    constexpr qsizetype kLongest = 16; // asked of every cell
    return cell.size() <= kLongest &&
           saysOneOf(cell, {"sum", "sums", "total", "totals", "grand total", "subtotal", "together",
                            "summe", "summen", "gesamt", "gesamtsumme", "insgesamt",
                            "zwischensumme", "zusammen", "Σ", "σ", "∑"});
}

bool saysNothing(const QString& cell)
{
    constexpr qsizetype kLongest = 5; // asked of every cell
    const QStringView said = QStringView(cell).trimmed();
    const bool dashes = std::all_of(said.begin(), said.end(), [](QChar c) {
        return c == u'-' || c.category() == QChar::Punctuation_Dash;
    });
    return dashes ||
           (said.size() <= kLongest && saysOneOf(cell, {"n/a", "n.a", "k.a", "k. a", "./"}));
}

bool saysOneOf(const QString& cell, std::initializer_list<const char*> words)
{
    QString said = cell.simplified().toLower();
    while (said.endsWith(u':') || said.endsWith(u'.')) {
        said.chop(1);
    }
    return std::any_of(words.begin(), words.end(),
                       [&](const char* word) { return said == QString::fromUtf8(word); });
}

} // namespace ullage::app
