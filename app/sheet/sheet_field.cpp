#include "app/sheet/sheet_field.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <algorithm>
#include <vector>

namespace ullage::app
{

namespace
{

struct SheetFields {
    Q_DECLARE_TR_FUNCTIONS(SheetFields)
};

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
         {"bottle", "bottlename", "batch", "label", "name", "developer", "developerbottle",
          "devbottle", "dev", "flasche", "flaschenname", "ansatz", "etikett", "entwickler",
          "entwicklerflasche", "entw"}},
        {F::Fixer,
         {"fixer", "fix", "fixerbottle", "fixingbath", "fixierer", "fixierbad", "fixiererflasche"}},
        {F::Solution,
         {"solution", "recipe", "formula", "chemistry", "mixedas", "lösung", "rezept", "chemie",
          "rezeptur"}},
        {F::Vessel, {"vessel", "container", "gefäß", "gefäss", "behälter"}},
        {F::Capacity,
         {"capacity", "bottlesize", "holds", "fassungsvermögen", "flaschengröße", "fasst"}},
        {F::Volume,
         {"volume", "amount", "quantity", "millilitres", "litres", "volumen", "menge", "inhalt",
          "liter", "ml", "l"}},
        {F::Date,
         {"date", "day", "when", "mixed", "mixedon", "mixeddate", "developed", "developedon",
          "testedon", "datum", "tag", "wann", "angesetzt", "angesetztam", "ansatzdatum",
          "entwickelt", "entwickeltam", "getestetam"}},
        // Not "time": that is how long a film was developed, as often as not.
        {F::TimeOfDay, {"timeofday", "clock", "uhrzeit", "oclock"}},
        {F::FilmsBefore,
         {"filmsdone", "filmssofar", "rollsdone", "tally", "filmedurch", "filmebisher",
          "filmeentwickelt", "entwickeltefilme", "striche", "strichliste"}},
        {F::Discarded,
         {"discarded", "discardedon", "thrownaway", "dumped", "gone", "entsorgt", "entsorgtam",
          "weggegossen", "weg"}},
        {F::Films,
         {"films", "rolls", "count", "number", "noofrolls", "nooffilms", "qty", "filme", "anzahl",
          "stück", "rollen"}},
        {F::Format, {"format", "filmformat", "filmsize", "filmgröße"}},
        {F::Film, {"film", "filmname", "emulsion", "filmtype", "filmsorte", "filmtyp"}},
        {F::ExposureIndex,
         {"ei", "iso", "exposureindex", "speed", "empfindlichkeit", "belichtetals"}},
        {F::Seconds,
         {"clearingtime", "clearing", "clearsin", "cleartime", "klärzeit", "klärprobe", "seconds",
          "sekunden"}},
        {F::Temperature, {"temperature", "temp", "temperatur", "c", "f"}},
        {F::Density, {"density", "dichte"}},
        {F::Factor, {"factor", "faktor"}},
        {F::Passed,
         {"passed", "ok", "result", "good", "bestanden", "ergebnis", "inordnung", "befund"}},
        {F::Notes,
         {"notes", "note", "remarks", "remark", "comment", "comments", "notiz", "notizen",
          "bemerkung", "bemerkungen", "anmerkung", "anmerkungen"}},
        {F::By, {"by", "who", "person", "member", "von", "wer", "mitglied"}},
    };
    return words;
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

// The heading and what stands in brackets behind it.
std::pair<QString, QString> parts(const QString& heading)
{
    static const QRegularExpression bracketed(
        QStringLiteral(R"(^([^(\[/]*)(?:[(\[/]\s*([^)\]]*)[)\]]?.*)?$)"),
        QRegularExpression::DotMatchesEverythingOption);
    const auto found = bracketed.match(heading);
    return {found.captured(1).trimmed(), found.captured(2).trimmed()};
}

} // namespace

std::string_view sheetCode(SheetField field)
{
    return kSheetFieldCodes[static_cast<std::size_t>(field)];
}

std::optional<SheetField> sheetFieldFromCode(std::string_view code)
{
    const auto* found = std::find(kSheetFieldCodes.begin(), kSheetFieldCodes.end(), code);
    if (found == kSheetFieldCodes.end()) {
        return std::nullopt;
    }
    return static_cast<SheetField>(found - kSheetFieldCodes.begin());
}

QString sheetFieldName(SheetField field)
{
    switch (field) {
    case SheetField::Unused:
        return SheetFields::tr("not used");
    case SheetField::Kind:
        return SheetFields::tr("Kind of row");
    case SheetField::BottleName:
        return SheetFields::tr("Bottle");
    case SheetField::Fixer:
        return SheetFields::tr("Fixer's bottle");
    case SheetField::Solution:
        return SheetFields::tr("Solution");
    case SheetField::Vessel:
        return SheetFields::tr("Stands in");
    case SheetField::Capacity:
        return SheetFields::tr("Capacity of the bottle");
    case SheetField::Volume:
        return SheetFields::tr("Volume");
    case SheetField::Date:
        return SheetFields::tr("Day");
    case SheetField::TimeOfDay:
        return SheetFields::tr("Time of day");
    case SheetField::FilmsBefore:
        return SheetFields::tr("Films done before");
    case SheetField::Discarded:
        return SheetFields::tr("Discarded on");
    case SheetField::Films:
        return SheetFields::tr("Number of films");
    case SheetField::Format:
        return SheetFields::tr("Format");
    case SheetField::Film:
        return SheetFields::tr("Film");
    case SheetField::ExposureIndex:
        return SheetFields::tr("Exposure index");
    case SheetField::Seconds:
        return SheetFields::tr("Clearing time");
    case SheetField::Temperature:
        return SheetFields::tr("Temperature");
    case SheetField::Density:
        return SheetFields::tr("Density of the control strip");
    case SheetField::Factor:
        return SheetFields::tr("Factor of the control strip");
    case SheetField::Passed:
        return SheetFields::tr("Passed");
    case SheetField::Notes:
        return SheetFields::tr("Notes");
    case SheetField::By:
        return SheetFields::tr("By");
    }
    return {};
}

std::optional<SheetField> sheetFieldFromHeading(const QString& heading)
{
    for (const QString& words : {bare(parts(heading).first), bare(heading)}) {
        for (const HeadingWords& one : headingWords()) {
            if (std::any_of(one.words.begin(), one.words.end(),
                            [&](const char* word) { return words == QString::fromUtf8(word); })) {
                return one.field;
            }
        }
    }
    return std::nullopt;
}

QString unitInHeading(const QString& heading)
{
    const auto [words, bracket] = parts(heading);
    const QString unit = (bracket.isEmpty() ? words : bracket).toLower().remove(u'.').simplified();
    static const std::vector<std::pair<std::vector<const char*>, const char*>> known{
        {{"ml", "millilitres", "milliliter", "cc"}, "ml"},
        {{"l", "litre", "litres", "liter", "liters"}, "l"},
        {{"fl oz", "oz", "floz", "ounces"}, "fl oz"},
        {{"°c", "c", "celsius"}, "°C"},
        {{"°f", "f", "fahrenheit"}, "°F"},
        {{"s", "sec", "secs", "seconds", "sek", "sekunden"}, "s"},
        {{"min", "minutes", "minuten"}, "min"},
    };
    for (const auto& [names, means] : known) {
        for (const char* name : names) {
            if (unit == QString::fromUtf8(name)) {
                return QString::fromUtf8(means);
            }
        }
    }
    return {};
}

} // namespace ullage::app
