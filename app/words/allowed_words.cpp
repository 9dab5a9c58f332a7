#include "app/words/allowed_words.h"

#include <QCoreApplication>

namespace ullage::app
{

namespace
{

constexpr const char* kContext = "Allowed";

} // namespace

const std::vector<const char*>& allowedPhrases()
{
    static const std::vector<const char*> phrases{
        // the chemistry and the formulary
        QT_TRANSLATE_NOOP("Allowed", "each step above the one before it"),
        QT_TRANSLATE_NOOP("Allowed", "one time for each temperature"),
        QT_TRANSLATE_NOOP("Allowed", "two readings that come nearer to the surroundings"),
        QT_TRANSLATE_NOOP("Allowed", "shorter than full_days, and no shorter than the air of a "
                                     "half-full bottle can explain"),
        QT_TRANSLATE_NOOP("Allowed", "short enough that age is left beside the cap's leak"),
        QT_TRANSLATE_NOOP("Allowed", "a whole number"),
        // the ledger
        QT_TRANSLATE_NOOP("Allowed", "each bottle once"),
        QT_TRANSLATE_NOOP("Allowed", "a bath of this run that is poured back"),
        QT_TRANSLATE_NOOP("Allowed", "135-36, 135-24, 120, 220, 4x5, 5x7, 8x10, or a sheet with "
                                     "its unit such as 9x12cm or 11x14in"),
        QT_TRANSLATE_NOOP("Allowed", "with \"history\": \"unknown\""),
        QT_TRANSLATE_NOOP("Allowed", "either films or area_cm2"),
        QT_TRANSLATE_NOOP("Allowed", "either from or solution"),
        QT_TRANSLATE_NOOP("Allowed", "either from or history"),
        QT_TRANSLATE_NOOP("Allowed", "no later than it was found"),
        QT_TRANSLATE_NOOP("Allowed", "the solution's own replenisher"),
        QT_TRANSLATE_NOOP("Allowed", "another bottle"),
        QT_TRANSLATE_NOOP("Allowed", "a bottle of the same solution"),
        QT_TRANSLATE_NOOP("Allowed", "a bottle of the same kind"),
        QT_TRANSLATE_NOOP("Allowed", "with its other half, at the same time and of the same "
                                     "volume"),
        QT_TRANSLATE_NOOP("Allowed", "mark or takes_back, not both"),
        QT_TRANSLATE_NOOP("Allowed", "with \"form\": \"liquid\""),
        QT_TRANSLATE_NOOP("Allowed", "a whole packet: powder does not lie evenly in it, so that a "
                                     "part is none of its formula"),
        QT_TRANSLATE_NOOP("Allowed", "a packet that is still in the cupboard"),
        QT_TRANSLATE_NOOP("Allowed", "a vessel in which nothing stands"),
        QT_TRANSLATE_NOOP("Allowed", "a vessel that was not withdrawn"),
        QT_TRANSLATE_NOOP("Allowed", "a film without marks"),
        QT_TRANSLATE_NOOP("Allowed", "a decimal number as text, such as \"9.80\""),
        // the journal
        QT_TRANSLATE_NOOP("Allowed", "a JSON value"),
        QT_TRANSLATE_NOOP("Allowed", "a colon after the field's name"),
        QT_TRANSLATE_NOOP("Allowed", "a comma or the end of the array"),
        QT_TRANSLATE_NOOP("Allowed", "a comma or the end of the object"),
        QT_TRANSLATE_NOOP("Allowed", "a field's name in double quotes"),
        QT_TRANSLATE_NOOP("Allowed", "a text that ends with a double quote"),
        QT_TRANSLATE_NOOP("Allowed", "an escape that JSON knows"),
        QT_TRANSLATE_NOOP("Allowed", "control characters written as \\u0000 to \\u001f"),
        QT_TRANSLATE_NOOP("Allowed", "each field once"),
        QT_TRANSLATE_NOOP("Allowed", "four hexadecimal digits after \\u"),
        QT_TRANSLATE_NOOP("Allowed", "no more than 32 objects and arrays in one another"),
        QT_TRANSLATE_NOOP("Allowed", "one JSON object on a line"),
        QT_TRANSLATE_NOOP("Allowed", "surrogates in pairs"),
        QT_TRANSLATE_NOOP("Allowed", "a text"),
        QT_TRANSLATE_NOOP("Allowed", "a text without the characters U+0000, U+FFFE, U+FFFF, and "
                                     "without U+FEFF at its start"),
        QT_TRANSLATE_NOOP("Allowed", "a number"),
        QT_TRANSLATE_NOOP("Allowed", "a list of texts"),
        QT_TRANSLATE_NOOP("Allowed", "an object"),
        QT_TRANSLATE_NOOP("Allowed", "a list"),
        QT_TRANSLATE_NOOP("Allowed", "a list of objects"),
        QT_TRANSLATE_NOOP("Allowed", "one book line, the first"),
        QT_TRANSLATE_NOOP("Allowed", "{\"type\":\"book\",\"format\":\"ullage-journal\","
                                     "\"version\":2} first"),
        QT_TRANSLATE_NOOP("Allowed", "RFC 3339 with a zone, 1900 to 2200, such as "
                                     "2026-06-01T10:00:00Z"),
        QT_TRANSLATE_NOOP("Allowed", "a date, 1900 to 2200, such as 2026-06-01"),
    };
    return phrases;
}

QString allowedText(const std::string& allowed)
{
    return QCoreApplication::translate(kContext, allowed.c_str());
}

} // namespace ullage::app
