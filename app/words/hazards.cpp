#include "app/words/hazards.h"

#include "app/words/cautions.h"
#include "app/words/formula_words.h"
#include "app/words/hazard_statements.h"
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
// caution stands, and of annex VI of Regulation (EC) No 1272/2008 for those after the first four
// (from memory); the limits are shares of a mixture by weight from which it is classified by one of
// them: its annex I (sensitisers and suspected carcinogens 1 %, toxic for reproduction 0.3 %,
// irritant to eyes 10 %, harmful to swallow and toxic to water 25 %) and annex VI (acetic acid,
// corrosive from 25 %), from memory.
struct Hazard {
    const char* chemical; ///< as a composition line or a list of chemicals names it, small letters
    const char* statements;
    double limit;      ///< percent by weight; what is lower carries none
    QString (*line)(); ///< its own sentence; null for the usual one
};
constexpr std::array<Hazard, 7> kHazards{{
    {"metol", "H302, H317, H410", 1, nullptr},
    {"hydroquinone", "H302, H317, H318, H341, H351, H410", 1, nullptr},
    {"borax", "H360", 0.3, &Cautions::borax},
    {"acetic acid", "H226, H314", 25, &Cautions::glacialAcid},
    {"phenidone", "H302, H411", 25, nullptr},
    {"citric acid", "H319", 10, nullptr},
    {"sodium carbonate", "H319", 10, nullptr},
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

QStringList statementsOf(const std::vector<HazardousChemical>& chemicals)
{
    QStringList codes;
    for (const HazardousChemical& chemical : chemicals)
        codes << chemical.statements;
    return hazardStatements(std::move(codes));
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
