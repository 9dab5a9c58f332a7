#include "app/sheet/sheet_headings.h"

#include <QRegularExpression>
#include <QStringList>

#include <algorithm>
#include <utility>
#include <vector>

namespace ullage::app
{

namespace
{

// Words of headings as people write them, bare: small letters without signs and spaces.
struct HeadingWords {
    SheetField field;
    std::vector<const char*> words;
};

const std::vector<HeadingWords>& headingWords()
{
    using F = SheetField;
    static const std::vector<HeadingWords> words{
        {F::Kind, {"kind", "type", "what", "entry", "art", "typ", "was", "eintrag"}},
        {F::BottleName,
         {"bottle",
          "bottlename",
          "batch",
          "label",
          "name",
          "developer",
          "developerbottle",
          "devbottle",
          "dev",
          "developedin",
          "developedwith",
          "flasche",
          "flaschenname",
          "flaschennr",
          "flaschennummer",
          "ansatz",
          "etikett",
          "entwickler",
          "entwicklerflasche",
          "entw",
          "entwickeltin",
          "entwickeltmit"}},
        {F::Fixer,
         {"fixer", "fix", "fixerbottle", "fixingbath", "fixedin", "fixedwith", "fixierer",
          "fixierbad", "fixiererflasche", "fixiertin", "fixiertmit"}},
        {F::Solution,
         {"solution", "recipe", "formula", "chemistry", "mixedas", "contents", "content",
          "whatisinit", "whatsinit", "lösung", "rezept", "chemie", "rezeptur"}},
        {F::Vessel, {"vessel", "container", "gefäß", "gefäss", "behälter"}},
        {F::Capacity,
         {"capacity", "bottlesize", "holds", "fassungsvermögen", "flaschengröße", "fasst"}},
        {F::Volume,
         {"volume", "amount", "quantity", "millilitres", "litres", "filled", "fill", "fillvolume",
          "size", "größe", "grösse", "volumen", "menge", "inhalt", "füllmenge", "füllung", "liter",
          "ml", "l"}},
        {F::Date,
         {"date", "day", "when", "mixed", "mixing", "made", "prepared", "processed", "developed",
          "tested", "datum", "tag", "wann", "angesetzt", "ansatzdatum", "hergestellt", "entwickelt",
          "entwicklungsdatum", "getestet"}},
        {F::TimeOfDay, {"time", "timeofday", "clock", "madeat", "mixedat", "zeit", "uhrzeit"}},
        {F::FilmsBefore,
         {"filmsdone", "filmssofar", "filmsbefore", "filmstodate", "filmsalready", "rollsdone",
          "rollssofar", "rollstodate", "tally", "filmedurch", "filmebisher", "filmebisjetzt",
          "rollenbisher", "rollenbisjetzt", "bisherigefilme", "filmeentwickelt", "entwickeltefilme",
          "striche", "strichliste"}},
        {F::Discarded,
         {"discarded", "discard", "thrownaway", "pouredaway", "dumped", "gone", "entsorgt",
          "entsorgung", "weggegossen", "weg"}},
        {F::Films,
         {"films", "rolls", "count", "number", "noofrolls", "nooffilms", "qty", "filme", "anzahl",
          "stück", "rollen", "filmanzahl"}},
        {F::Format, {"format", "filmformat", "filmsize", "filmgröße"}},
        {F::Film,
         {"film", "filmname", "filmstock", "emulsion", "filmtype", "filmmaterial", "filmsorte",
          "filmtyp"}},
        {F::ExposureIndex,
         {"ei", "iso", "asa", "exposureindex", "speed", "ratedat", "empfindlichkeit",
          "belichtetals"}},
        {F::Seconds,
         {"clearingtime", "clearing", "clearsin", "cleartime", "timetoclear", "secondstoclear",
          "klärzeit", "klärprobe", "klärdauer", "zeitbisklar", "sekundenbisklar", "seconds",
          "sekunden"}},
        {F::Temperature, {"temperature", "temp", "temperatur", "c", "f"}},
        {F::Density, {"density", "dichte"}},
        {F::Factor, {"factor", "faktor"}},
        {F::Passed,
         {"passed", "ok", "result", "testresult", "good", "bestanden", "ergebnis", "inordnung",
          "befund"}},
        {F::Notes,
         {"notes", "note", "remarks", "remark", "comment", "comments", "notiz", "notizen",
          "bemerkung", "bemerkungen", "anmerkung", "anmerkungen"}},
        {F::By,
         {"by", "who", "person", "member", "mixedby", "madeby", "developedby", "von", "wer",
          "mitglied", "angesetztvon", "entwickeltvon"}},
    };
    return words;
}

// Words between the others of a heading that change nothing.
const std::vector<const char*>& fillers()
{
    static const std::vector<const char*> words{
        "the",  "a",   "of",  "on",  "my",  "our", "is", "it", "used",   "no",     "number",
        "name", "der", "die", "das", "des", "am",  "im", "nr", "nummer", "anzahl", "verwendeter"};
    return words;
}

const std::vector<std::pair<std::vector<const char*>, const char*>>& units()
{
    static const std::vector<std::pair<std::vector<const char*>, const char*>> known{
        {{"ml", "millilitres", "milliliter", "cc"}, "ml"},
        {{"l", "litre", "litres", "liter", "liters"}, "l"},
        {{"fl oz", "oz", "floz", "ounces"}, "fl oz"},
        {{"°c", "c", "celsius"}, "°C"},
        {{"°f", "f", "fahrenheit"}, "°F"},
        {{"s", "sec", "secs", "seconds", "sek", "sekunden"}, "s"},
        {{"min", "minutes", "minuten"}, "min"},
    };
    return known;
}

bool isOneOf(const QString& word, const std::vector<const char*>& words)
{
    return std::any_of(words.begin(), words.end(),
                       [&](const char* one) { return word == QString::fromUtf8(one); });
}

QString unitOf(const QString& name)
{
    for (const auto& [names, means] : units()) {
        if (isOneOf(name, names)) {
            return QString::fromUtf8(means);
        }
    }
    return {};
}

QString bare(const QString& text)
{
    QString made;
    for (const QChar c : text.toLower()) {
        if (c.isLetter()) {
            made += c;
        }
    }
    return made;
}

QStringList wordsOf(const QString& text)
{
    static const QRegularExpression between(QStringLiteral(R"([^\p{L}°]+)"),
                                            QRegularExpression::UseUnicodePropertiesOption);
    return text.toLower().split(between, Qt::SkipEmptyParts);
}

// The heading and what stands in brackets behind it.
std::pair<QString, QString> parts(const QString& heading)
{
    static const QRegularExpression bracketed(
        QStringLiteral(R"(^([^(\[/]*)(?:[(\[/]\s*([^)\]]*)[)\]]?.*)?$)"),
        QRegularExpression::DotMatchesEverythingOption);
    const auto found = bracketed.match(heading);
    return {found.captured(1).trimmed(), found.captured(2).trimmed()};
}

bool hasFigures(const QString& text)
{
    return std::any_of(text.begin(), text.end(), [](QChar c) { return c.isDigit(); });
}

std::optional<SheetField> fieldOfWords(const QString& words)
{
    for (const HeadingWords& one : headingWords()) {
        if (isOneOf(words, one.words)) {
            return one.field;
        }
    }
    return std::nullopt;
}

} // namespace

std::optional<SheetField> sheetFieldFromHeading(const QString& heading)
{
    const QString first = parts(heading).first;
    if (hasFigures(first)) {
        return std::nullopt;
    }
    const auto field = fieldOfWords(bare(first));
    return field ? field : fieldOfWords(bare(heading));
}

std::optional<SheetField> sheetFieldFromLooseHeading(const QString& heading)
{
    const QString first = parts(heading).first;
    if (hasFigures(first)) {
        return std::nullopt;
    }
    QStringList words = wordsOf(first);
    if (words.size() > 1 && !unitOf(words.last()).isEmpty()) {
        words.removeLast(); // "Menge in ml"
        if (words.size() > 1 && words.last() == u"in") {
            words.removeLast();
        }
    }
    QString left;
    bool day = false;
    for (const QString& word : words) {
        const bool says = word == u"date" || word == u"datum";
        day = day || says;
        left += says || isOneOf(word, fillers()) ? QString() : word;
    }
    const auto field = fieldOfWords(left);
    const bool isDay = field == SheetField::Date || field == SheetField::Discarded;
    return day && !isDay ? std::nullopt : field;
}

bool isSizeOfSomething(const QString& heading)
{
    return isOneOf(bare(parts(heading).first), {"size", "größe", "grösse"});
}

QString unitInHeading(const QString& heading)
{
    const auto [words, bracket] = parts(heading);
    const QString unit = (bracket.isEmpty() ? words : bracket).toLower().remove(u'.').simplified();
    if (const QString whole = unitOf(unit); !whole.isEmpty()) {
        return whole;
    }
    const QStringList each = wordsOf(unit);
    for (auto word = each.rbegin(); word != each.rend(); ++word) {
        const bool last = word == each.rbegin(); // a letter by itself means something there only
        if (const QString found = unitOf(*word); !found.isEmpty() && (last || word->size() > 1)) {
            return found;
        }
    }
    return {};
}

bool isUnitAlone(const QString& heading)
{
    QStringList words = wordsOf(heading);
    if (words.size() > 1 && words.first() == u"in") {
        words.removeFirst();
    }
    return !words.isEmpty() && !unitOf(words.join(u' ')).isEmpty();
}

} // namespace ullage::app
