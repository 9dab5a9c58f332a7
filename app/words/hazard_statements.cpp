#include "app/words/hazard_statements.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <utility>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Cautions)
};

// Regulation (EC) No 1272/2008, annex III, part 1, and of part 2 what a darkroom meets: the wording
// from memory, compared with published lists of it in both languages; small letters are ours.
// Left out is what nothing of the trade carries (explosives, gases, aerosols, self-igniting
// things).
constexpr std::array<std::pair<const char*, const char*>, 55> kStatements{{
    {"H225", QT_TRANSLATE_NOOP("Cautions", "highly flammable liquid and vapour")},
    {"H226", QT_TRANSLATE_NOOP("Cautions", "flammable liquid and vapour")},
    {"H228", QT_TRANSLATE_NOOP("Cautions", "flammable solid")},
    {"H260", QT_TRANSLATE_NOOP(
                 "Cautions",
                 "in contact with water releases flammable gases which may ignite spontaneously")},
    {"H271", QT_TRANSLATE_NOOP("Cautions", "may cause fire or explosion; strong oxidiser")},
    {"H272", QT_TRANSLATE_NOOP("Cautions", "may intensify fire; oxidiser")},
    {"H290", QT_TRANSLATE_NOOP("Cautions", "may be corrosive to metals")},
    {"H300", QT_TRANSLATE_NOOP("Cautions", "fatal if swallowed")},
    {"H301", QT_TRANSLATE_NOOP("Cautions", "toxic if swallowed")},
    {"H302", QT_TRANSLATE_NOOP("Cautions", "harmful if swallowed")},
    {"H304", QT_TRANSLATE_NOOP("Cautions", "may be fatal if swallowed and enters airways")},
    {"H310", QT_TRANSLATE_NOOP("Cautions", "fatal in contact with skin")},
    {"H311", QT_TRANSLATE_NOOP("Cautions", "toxic in contact with skin")},
    {"H312", QT_TRANSLATE_NOOP("Cautions", "harmful in contact with skin")},
    {"H314", QT_TRANSLATE_NOOP("Cautions", "causes severe skin burns and eye damage")},
    {"H315", QT_TRANSLATE_NOOP("Cautions", "causes skin irritation")},
    {"H317", QT_TRANSLATE_NOOP("Cautions", "may cause an allergic skin reaction")},
    {"H318", QT_TRANSLATE_NOOP("Cautions", "causes serious eye damage")},
    {"H319", QT_TRANSLATE_NOOP("Cautions", "causes serious eye irritation")},
    {"H330", QT_TRANSLATE_NOOP("Cautions", "fatal if inhaled")},
    {"H331", QT_TRANSLATE_NOOP("Cautions", "toxic if inhaled")},
    {"H332", QT_TRANSLATE_NOOP("Cautions", "harmful if inhaled")},
    {"H334",
     QT_TRANSLATE_NOOP(
         "Cautions", "may cause allergy or asthma symptoms or breathing difficulties if inhaled")},
    {"H335", QT_TRANSLATE_NOOP("Cautions", "may cause respiratory irritation")},
    {"H336", QT_TRANSLATE_NOOP("Cautions", "may cause drowsiness or dizziness")},
    {"H340", QT_TRANSLATE_NOOP("Cautions", "may cause genetic defects")},
    {"H341", QT_TRANSLATE_NOOP("Cautions", "suspected of causing genetic defects")},
    {"H350", QT_TRANSLATE_NOOP("Cautions", "may cause cancer")},
    {"H350i", QT_TRANSLATE_NOOP("Cautions", "may cause cancer by inhalation")},
    {"H351", QT_TRANSLATE_NOOP("Cautions", "suspected of causing cancer")},
    {"H360", QT_TRANSLATE_NOOP("Cautions", "may damage fertility or the unborn child")},
    {"H360F", QT_TRANSLATE_NOOP("Cautions", "may damage fertility")},
    {"H360D", QT_TRANSLATE_NOOP("Cautions", "may damage the unborn child")},
    {"H360FD", QT_TRANSLATE_NOOP("Cautions", "may damage fertility; may damage the unborn child")},
    {"H360Fd",
     QT_TRANSLATE_NOOP("Cautions", "may damage fertility; suspected of damaging the unborn child")},
    {"H360Df",
     QT_TRANSLATE_NOOP("Cautions", "may damage the unborn child; suspected of damaging fertility")},
    {"H361", QT_TRANSLATE_NOOP("Cautions", "suspected of damaging fertility or the unborn child")},
    {"H361f", QT_TRANSLATE_NOOP("Cautions", "suspected of damaging fertility")},
    {"H361d", QT_TRANSLATE_NOOP("Cautions", "suspected of damaging the unborn child")},
    {"H361fd",
     QT_TRANSLATE_NOOP("Cautions",
                       "suspected of damaging fertility; suspected of damaging the unborn child")},
    {"H362", QT_TRANSLATE_NOOP("Cautions", "may cause harm to breast-fed children")},
    {"H370", QT_TRANSLATE_NOOP("Cautions", "causes damage to organs")},
    {"H371", QT_TRANSLATE_NOOP("Cautions", "may cause damage to organs")},
    {"H372", QT_TRANSLATE_NOOP("Cautions",
                               "causes damage to organs through prolonged or repeated exposure")},
    {"H373", QT_TRANSLATE_NOOP(
                 "Cautions", "may cause damage to organs through prolonged or repeated exposure")},
    {"H400", QT_TRANSLATE_NOOP("Cautions", "very toxic to aquatic life")},
    {"H410", QT_TRANSLATE_NOOP("Cautions", "very toxic to aquatic life with long lasting effects")},
    {"H411", QT_TRANSLATE_NOOP("Cautions", "toxic to aquatic life with long lasting effects")},
    {"H412", QT_TRANSLATE_NOOP("Cautions", "harmful to aquatic life with long lasting effects")},
    {"H413",
     QT_TRANSLATE_NOOP("Cautions", "may cause long lasting harmful effects to aquatic life")},
    {"EUH029", QT_TRANSLATE_NOOP("Cautions", "contact with water liberates toxic gas")},
    {"EUH031", QT_TRANSLATE_NOOP("Cautions", "contact with acids liberates toxic gas")},
    {"EUH032", QT_TRANSLATE_NOOP("Cautions", "contact with acids liberates very toxic gas")},
    {"EUH066",
     QT_TRANSLATE_NOOP("Cautions", "repeated exposure may cause skin dryness or cracking")},
    {"EUH071", QT_TRANSLATE_NOOP("Cautions", "corrosive to the respiratory tract")},
}};

// What a reader of the code may choose: only the letters behind the number tell by their size.
bool isCode(const char* known, const QString& code)
{
    const QString plain = QString::fromLatin1(known);
    return plain == code ||
           (plain.back().isDigit() && plain.compare(code, Qt::CaseInsensitive) == 0);
}

// Empty for what is none.
QString saysAlone(const QString& code)
{
    const auto found = std::find_if(kStatements.begin(), kStatements.end(),
                                    [&](const auto& one) { return isCode(one.first, code); });
    return found == kStatements.end() ? QString() : Words::tr(found->second);
}

} // namespace

QString hazardStatement(const QString& code)
{
    QStringList says;
    for (const QString& one : code.split(u'+')) {
        const QString words = saysAlone(one.trimmed());
        if (words.isEmpty())
            return code;
        says << words;
    }
    return Words::tr("%1: %2", "code of a hazard statement, what it says")
        .arg(code, says.join(QStringLiteral("; ")));
}

QStringList hazardStatements(QStringList codes)
{
    codes.removeDuplicates();
    codes.sort();
    for (QString& code : codes)
        code = hazardStatement(code);
    return codes;
}

} // namespace ullage::app
