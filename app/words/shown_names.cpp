#include "app/words/shown_names.h"

#include "app/words/formula_words.h"
#include "app/words/known_phrase.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <QRegularExpression>

#include <array>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Starter)
};

constexpr std::array kNames{
    QT_TRANSLATE_NOOP("Starter", "MQ borax developer, stock"),
    QT_TRANSLATE_NOOP("Starter", "MQ borax developer, 1+1"),
    QT_TRANSLATE_NOOP("Starter", "Metol sulfite developer"),
    QT_TRANSLATE_NOOP("Starter", "PQ ascorbate developer"),
    QT_TRANSLATE_NOOP("Starter", "MQ borax replenisher"),
    QT_TRANSLATE_NOOP("Starter", "MQ borax developer, replenished"),
    QT_TRANSLATE_NOOP("Starter", "Acetic stop bath"),
    QT_TRANSLATE_NOOP("Starter", "Citric stop bath"),
    QT_TRANSLATE_NOOP("Starter", "Acid fixer"),
    QT_TRANSLATE_NOOP("Starter", "Rapid fixer, 1+4"),
    QT_TRANSLATE_NOOP("Starter", "Alkaline fixer"),
    QT_TRANSLATE_NOOP("Starter", "Wash aid"),
    QT_TRANSLATE_NOOP("Starter", "Wetting agent"),
    QT_TRANSLATE_NOOP("Starter", "Glass bottle, 1 L"),
    QT_TRANSLATE_NOOP("Starter", "Glass bottle, 1 L, second"),
    QT_TRANSLATE_NOOP("Starter", "Glass bottle, 500 ml"),
    QT_TRANSLATE_NOOP("Starter", "Glass bottle, 2 L"),
    QT_TRANSLATE_NOOP("Starter", "PET bottle, 1 L"),
    QT_TRANSLATE_NOOP("Starter", "HDPE bottle, 1 L"),
    QT_TRANSLATE_NOOP("Starter", "HDPE canister, 5 L"),
    QT_TRANSLATE_NOOP("Starter", "PP bottle, 1 L"),
    QT_TRANSLATE_NOOP("Starter", "LDPE bellows bottle, 1 L"),
    QT_TRANSLATE_NOOP("Starter", "stock"),
};

// Whole source lines of the starter, and what stands in them behind "common practice, no source:".
constexpr std::array kPhrases{
    QT_TRANSLATE_NOOP("Starter", "10 to 15 films a litre, no source"),
    QT_TRANSLATE_NOOP("Starter", "10 % on the first film's time for each film"),
    QT_TRANSLATE_NOOP("Starter", "one film in 500 ml, used once"),
    QT_TRANSLATE_NOOP("Starter", "used once, then poured away"),
    QT_TRANSLATE_NOOP("Starter", "use within the day"),
    QT_TRANSLATE_NOOP("Starter", "taken as for MQ borax developer"),
    QT_TRANSLATE_NOOP("Starter", "taken as for a metol-hydroquinone developer"),
    QT_TRANSLATE_NOOP("Starter", "taken as for acetic stop bath"),
    QT_TRANSLATE_NOOP("Starter", "taken as for acid fixer"),
    QT_TRANSLATE_NOOP("Starter", "a step after every five films a litre"),
    QT_TRANSLATE_NOOP("Starter", "mould grows in it sooner than in acetic acid"),
    QT_TRANSLATE_NOOP("Starter", "it grows cloudy"),
    QT_TRANSLATE_NOOP("Starter", "what is replenished keeps its time"),
    QT_TRANSLATE_NOOP("Starter", "two minutes at least"),
    QT_TRANSLATE_NOOP("Starter", "no time depends on it"),
    QT_TRANSLATE_NOOP("Starter", "fixing time comes from clearing tests"),
    QT_TRANSLATE_NOOP("Starter", "none chosen"),
    QT_TRANSLATE_NOOP("Starter", "taken as fresh water"),
    QT_TRANSLATE_NOOP("Starter", "0.11 to 0.21 g a film"),
    QT_TRANSLATE_NOOP("Starter", "15 films a litre"),
    QT_TRANSLATE_NOOP("Starter", "published formulas"),
    QT_TRANSLATE_NOOP("Starter", "half of the stock's"),
    QT_TRANSLATE_NOOP("Starter", "composition not published"),
    QT_TRANSLATE_NOOP("Starter", "phenidone and ascorbate in sulfite"),
    QT_TRANSLATE_NOOP("Starter", "common practice, no source"),
    QT_TRANSLATE_NOOP("Starter", "common practice of this darkroom, invented for the demo"),
};

// What the starter says of a publication's figure, beside the publication's own name.
constexpr std::array kRemarks{
    QT_TRANSLATE_NOOP("Starter", "40 to 60 mg as potassium bromide for 80 sq in"),
    QT_TRANSLATE_NOOP("Starter", "12 films a litre: formula SB-5 as printed by"),
    QT_TRANSLATE_NOOP("Starter", "MQ borax stock row: 1.86 to 1.96"),
    QT_TRANSLATE_NOOP("Starter", "rotary tube, 68 to 75 °F: 2.27 and 2.84"),
    QT_TRANSLATE_NOOP("Starter", "counting unit 80 sq in"),
    QT_TRANSLATE_NOOP("Starter", "p. 108, working strength"),
    QT_TRANSLATE_NOOP("Starter", "p. 108, acid fixers"),
    QT_TRANSLATE_NOOP("Starter", "p. 108, alkaline fixers"),
    QT_TRANSLATE_NOOP("Starter", "30 ml for 80 sq in"),
};

QString phrase(const QString& text)
{
    if (const QString one = knownPhrase<Words>(kPhrases, text); !one.isEmpty())
        return one;
    for (const char* remark : kRemarks) {
        const QString words = QString::fromUtf8(remark);
        if (const qsizetype at = text.indexOf(words); at >= 0)
            return text.left(at) + Words::tr(remark) + text.mid(at + words.size());
    }
    return text;
}

// "metol 2, sodium sulfite 100 g per litre", name by name.
QString composition(const QString& list)
{
    static const QRegularExpression part(QStringLiteral("^(.*\\S) ([0-9.]+)( g per litre)?$"));
    QStringList said;
    for (const QString& one : list.split(QStringLiteral(", "))) {
        const auto match = part.match(one);
        if (!match.hasMatch())
            return phrase(list);
        const QString salt = match.captured(1).replace(u' ', u'-');
        const QString named = chemicalName(salt.toStdString());
        const QString name = named == salt ? match.captured(1) : named;
        said << (match.captured(3).isEmpty() ? Words::tr("%1 %2", "chemical, grams")
                                             : Words::tr("%1 %2 g per litre", "chemical"))
                    .arg(name, match.captured(2).replace(u'.', QLocale().decimalPoint()));
    }
    return said.join(QStringLiteral(", "));
}

} // namespace

QString shownName(const std::string& name)
{
    const QString typed = QString::fromStdString(name);
    const QString one = knownPhrase<Words>(kNames, typed);
    return one.isEmpty() ? typed : one;
}

std::string keptName(const std::string& kept, const QString& field)
{
    return field.trimmed() == shownName(kept) ? kept : field.trimmed().toStdString();
}

QString shownSource(const QString& words)
{
    const qsizetype semicolon = words.indexOf(QStringLiteral("; "));
    if (semicolon > 0 && !words.contains(u'§'))
        return composition(words.left(semicolon)) + QStringLiteral("; ") +
               shownSource(words.mid(semicolon + 2));
    const auto after = [&](const QString& start) {
        return words.startsWith(start) ? std::optional(words.mid(start.size())) : std::nullopt;
    };
    if (const auto rest = after(QStringLiteral("common practice, no source: ")))
        return Words::tr("common practice, no source: %1").arg(phrase(*rest));
    if (const auto rest = after(QStringLiteral("computed: ")))
        return Words::tr("computed: %1").arg(phrase(*rest));
    if (const auto rest = after(QStringLiteral("from memory of "))) {
        const qsizetype colon = rest->indexOf(QStringLiteral(": "));
        if (colon > 0)
            return Words::tr("from memory of %1: %2")
                .arg(phrase(rest->left(colon)), phrase(rest->mid(colon + 2)));
        return Words::tr("from memory of %1").arg(phrase(*rest));
    }
    static const QRegularExpression sulfite(
        QStringLiteral("^computed from (.*), for ([0-9]+) g/L (sodium sulfite|crystalline sodium "
                       "thiosulfate)$"));
    if (const auto match = sulfite.match(words); match.hasMatch())
        return (match.captured(3).startsWith(u'c')
                    ? Words::tr("computed from %1, for %2 g/L crystalline sodium thiosulfate")
                    : Words::tr("computed from %1, for %2 g/L sodium sulfite"))
            .arg(match.captured(1), match.captured(2));
    static const QRegularExpression own(
        QStringLiteral("^own tests, ([0-9]{1,6}) of ([0-9]{1,6}) bottles, to ([0-9-]{10})$"));
    if (const auto match = own.match(words); match.hasMatch()) {
        const QDate day = QDate::fromString(match.captured(3), Qt::ISODate);
        if (day.isValid())
            return Words::tr("own tests, in %1 of %n bottle(s), to %2", nullptr,
                             match.captured(2).toInt())
                .arg(match.captured(1), QLocale().toString(day, QLocale::ShortFormat));
    }
    return phrase(words);
}

namespace
{

// "Hydrochinon 5,5 g je Liter" to "hydroquinone 5.5 g per litre"; what is no such part stays.
QString keptPart(const QString& typed)
{
    static const QRegularExpression part(
        QStringLiteral("^(.*\\S)\\s+([0-9]+(?:[.,][0-9]+)?)\\s*(g|ml)?(\\s.*)?$"));
    const auto match = part.match(typed);
    if (!match.hasMatch())
        return typed;
    const QString name = chemicalCalled(match.captured(1));
    if (name.isEmpty() || name.compare(match.captured(1), Qt::CaseInsensitive) == 0)
        return typed;
    QString kept = name + u' ' + match.captured(2).replace(u',', u'.');
    if (!match.captured(3).isEmpty())
        kept += u' ' + match.captured(3);
    if (!match.captured(4).isEmpty())
        kept += QStringLiteral(" per litre");
    return kept;
}

} // namespace

std::string keptComposition(const std::string& kept, const QString& field)
{
    const QString typed = field.trimmed();
    const QString before = QString::fromStdString(kept);
    if (typed == shownSource(before))
        return kept;
    const qsizetype end = typed.indexOf(u';');
    QStringList parts;
    for (const QString& part : typed.left(end).split(QStringLiteral(", ")))
        parts << keptPart(part.trimmed());
    QString line = parts.join(QStringLiteral(", "));
    if (end >= 0) {
        const QString from = typed.mid(end + 1).trimmed();
        const QString fromBefore = before.mid(before.indexOf(u';') + 1).trimmed();
        line += QStringLiteral("; ") + (from == shownSource(fromBefore) ? fromBefore : from);
    }
    return line.toStdString();
}

} // namespace ullage::app
