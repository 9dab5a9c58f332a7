#include "app/words/hazards.h"

#include "app/words/cautions.h"
#include "app/words/formula_words.h"
#include "core/formulary/composition.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <utility>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Cautions)
};

// One chemical that carries hazard statements. The statements are those of words beside which the
// caution stands; the limits are shares of a mixture by weight from which it is classified by one
// of them: Regulation (EC) 1272/2008, annex I (sensitisers and suspected carcinogens 1 %, toxic
// for reproduction 0.3 %) and annex VI (acetic acid, corrosive from 25 %).
struct Hazard {
    const char* chemical; ///< as a composition line or a list of chemicals names it, small letters
    const char* statements;
    double limit;      ///< percent by weight; what is lower carries none
    QString (*line)(); ///< its own sentence; null for the usual one
};
constexpr std::array<Hazard, 4> kHazards{{
    {"metol", "H302, H317, H410", 1, nullptr},
    {"hydroquinone", "H302, H317, H318, H341, H351, H410", 1, nullptr},
    {"borax", "H360", 0.3, &Cautions::borax},
    {"acetic acid", "H226, H314", 25, &Cautions::glacialAcid},
}};

QString lineOf(const Hazard& hazard)
{
    return hazard.line
               ? hazard.line()
               : Words::tr("Contains %1 (%2): see its data sheet.")
                     .arg(chemicalName(hazard.chemical), QString::fromLatin1(hazard.statements));
}

// Percent by weight, a litre taken for a kilogram; none where it is only known to be in it.
using Contents = std::map<std::string, std::optional<double>>;

Contents contentsOf(const formulary::Solution& solution)
{
    Contents contents;
    const auto small = [](std::string name) {
        return QString::fromStdString(name).toLower().replace(u'-', u' ').toStdString();
    };
    for (const std::string& chemical : solution.chemicals)
        contents[small(chemical)];
    const auto line = solution.sources.find("composition");
    if (line == solution.sources.end())
        return contents;
    if (const auto formula = formulary::readComposition(line->second)) {
        for (const auto& part : formula->ingredients)
            contents[small(part.name)] = part.amount * 100 / formula->makes.value();
    }
    return contents;
}

// What the statements say, in short: Regulation (EC) 1272/2008, annex III, from memory.
constexpr std::array<std::pair<const char*, const char*>, 9> kStatements{{
    {"H226", QT_TRANSLATE_NOOP("Cautions", "flammable liquid and vapour")},
    {"H302", QT_TRANSLATE_NOOP("Cautions", "harmful if swallowed")},
    {"H314", QT_TRANSLATE_NOOP("Cautions", "causes severe skin burns and eye damage")},
    {"H317", QT_TRANSLATE_NOOP("Cautions", "may cause an allergic skin reaction")},
    {"H318", QT_TRANSLATE_NOOP("Cautions", "causes serious eye damage")},
    {"H341", QT_TRANSLATE_NOOP("Cautions", "suspected of causing genetic defects")},
    {"H351", QT_TRANSLATE_NOOP("Cautions", "suspected of causing cancer")},
    {"H360", QT_TRANSLATE_NOOP("Cautions", "may damage fertility or the unborn child")},
    {"H410", QT_TRANSLATE_NOOP("Cautions", "very toxic to aquatic life with long lasting effects")},
}};

bool contains(const Contents& contents, const char* chemical)
{
    return std::any_of(contents.begin(), contents.end(), [&](const auto& part) {
        return part.first.find(chemical) != std::string::npos;
    });
}

} // namespace

std::vector<HazardousChemical> hazardousChemicals(const formulary::Solution& solution)
{
    const Contents contents = contentsOf(solution);
    std::vector<HazardousChemical> chemicals;
    for (const Hazard& hazard : kHazards) {
        if (contains(contents, hazard.chemical))
            chemicals.push_back(
                {chemicalName(hazard.chemical),
                 QString::fromLatin1(hazard.statements).split(QStringLiteral(", "))});
    }
    return chemicals;
}

QString hazardStatement(const QString& code)
{
    for (const auto& [known, says] : kStatements) {
        if (code == QLatin1String(known))
            return Words::tr("%1: %2", "code of a hazard statement, what it says")
                .arg(code, Words::tr(says));
    }
    return code;
}

QStringList everyHazard()
{
    QStringList lines;
    for (const Hazard& hazard : kHazards)
        lines << lineOf(hazard);
    return lines;
}

QStringList hazardCautions(const formulary::Solution& solution, Strength strength)
{
    const Contents contents = contentsOf(solution);
    QStringList lines;
    for (const Hazard& hazard : kHazards) {
        const bool carries = std::any_of(contents.begin(), contents.end(), [&](const auto& part) {
            if (part.first.find(hazard.chemical) == std::string::npos)
                return false;
            return strength == Strength::AsBought || !part.second || *part.second >= hazard.limit;
        });
        if (carries)
            lines << lineOf(hazard);
    }
    return lines;
}

} // namespace ullage::app
