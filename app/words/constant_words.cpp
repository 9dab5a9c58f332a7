#include "app/words/constant_words.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Constants)
};

constexpr const char* kUnits[] = {
    QT_TRANSLATE_NOOP("Constants", "cm³/day"),
    QT_TRANSLATE_NOOP("Constants", "cm² for 1 L"),
    QT_TRANSLATE_NOOP("Constants", "min for 1 L"),
    QT_TRANSLATE_NOOP("Constants", "cm³·mm/(m²·day·atm)"),
    QT_TRANSLATE_NOOP("Constants", "openings"),
    QT_TRANSLATE_NOOP("Constants", "months"),
    QT_TRANSLATE_NOOP("Constants", "days"),
    QT_TRANSLATE_NOOP("Constants", "mg as KBr"),
    QT_TRANSLATE_NOOP("Constants", "films/L"),
};

// Whole sources, and what stands before the colon of one that names a publication.
constexpr const char* kSaid[] = {
    QT_TRANSLATE_NOOP("Constants", "humid air at 20 °C, 101.325 kPa"),
    QT_TRANSLATE_NOOP("Constants", "volume share of oxygen in dry air"),
    QT_TRANSLATE_NOOP("Constants", "ideal gas at 0 °C and 1 atm"),
    QT_TRANSLATE_NOOP("Constants", "molar mass of oxygen"),
    QT_TRANSLATE_NOOP("Constants", "no source for 0.05; the range is that of screw caps"),
    QT_TRANSLATE_NOOP("Constants", "what the permeabilities are for"),
    QT_TRANSLATE_NOOP("Constants", "the trade's working point"),
    QT_TRANSLATE_NOOP("Constants", "area of a round bottle, grows with volume to the power 2/3"),
    QT_TRANSLATE_NOOP("Constants", "level surface in a round bottle, volume to the power 2/3"),
    QT_TRANSLATE_NOOP("Constants",
                      "no source: as an MQ-borax stock, where only the keeping time of a full "
                      "bottle is known; the range is that of a half-full bottle never opened "
                      "again, or three times"),
    QT_TRANSLATE_NOOP("Constants",
                      "no source: a bottle is half full because somebody poured from it"),
    QT_TRANSLATE_NOOP("Constants", "no source: keeping times given in whole months"),
    QT_TRANSLATE_NOOP("Constants", "no source: a date of the model so near to the calendar's is "
                                   "the calendar's"),
    QT_TRANSLATE_NOOP("Constants", "metol-hydroquinone"),
    QT_TRANSLATE_NOOP("Constants", "phenidone-ascorbate"),
    QT_TRANSLATE_NOOP("Constants", "fixing takes twice as long 10 °C colder"),
    QT_TRANSLATE_NOOP("Constants", "fix for twice the clearing time"),
    QT_TRANSLATE_NOOP("Constants", "three times for tabular grains, no published source"),
    QT_TRANSLATE_NOOP("Constants", "discard when the clearing time has doubled"),
    QT_TRANSLATE_NOOP("Constants", "if the maker gives none"),
    QT_TRANSLATE_NOOP("Constants", "working strength, two months at most"),
    QT_TRANSLATE_NOOP("Constants", "silver that fixing takes from film"),
    QT_TRANSLATE_NOOP("Constants", "what developing frees"),
    QT_TRANSLATE_NOOP("Constants", "hazardous at or above"),
};

template <class Table>
QString known(const Table& table, const QString& text)
{
    for (const char* one : table) {
        if (text == QString::fromUtf8(one))
            return Words::tr(one);
    }
    return {};
}

QString shown(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

} // namespace

QString constantUnit(std::string_view unit)
{
    const QString typed = shown(unit);
    const QString said = known(kUnits, typed);
    return said.isEmpty() ? typed : said;
}

QString constantSource(std::string_view source)
{
    const QString typed = shown(source);
    if (const QString whole = known(kSaid, typed); !whole.isEmpty())
        return whole;
    const QString colon = QStringLiteral(": ");
    const QString before = known(kSaid, typed.section(colon, 0, 0));
    return before.isEmpty() ? typed : before + colon + typed.section(colon, 1);
}

} // namespace ullage::app
