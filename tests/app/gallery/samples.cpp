#include "tests/app/gallery/samples.h"

namespace ullage::app::samples
{

namespace
{

QString text(const char* utf8) { return QString::fromUtf8(utf8); }

std::vector<BottleView> six()
{
    using enum SolutionLook;
    using enum BottleMaterial;
    using enum VerdictLook;
    const auto make = [](const char* id, const char* mixed, const char* solutionName,
                         SolutionLook solution, BottleMaterial material, double capacity,
                         double volume, double films, double standing, VerdictLook verdict,
                         const char* headline, const char* subline, double urgency) {
        BottleView bottle;
        bottle.id = bottle.name = text(id);
        bottle.mixedText = text(mixed);
        bottle.solutionName = text(solutionName);
        bottle.vesselName = text("Amber 1");
        bottle.solution = solution;
        bottle.material = material;
        bottle.capacityMl = capacity;
        bottle.volumeMl = volume;
        bottle.filmsDone = films;
        bottle.standing = standing;
        bottle.wear = films / 20;
        bottle.verdict = verdict;
        bottle.headline = text(headline);
        bottle.subline = text(subline);
        bottle.urgency = urgency;
        return bottle;
    };
    return {
        make("Dev 14", "mixed 2 Nov", "MQ borax developer, stock", Developer, Glass, 1030, 985, 7,
             0.17, Good, "5 films left", "until 1 May", 1),
        make("Fix 9", "mixed 2 Nov", "Rapid fixer, 1+4", Fixer, Hdpe, 1030, 960, 7, 0.1, TestFirst,
             "clearing test due", "11 films since", 3),
        make("Dev 13", "mixed 24 Sep", "Metol sulfite developer", Developer, Glass, 1030, 430, 11,
             0.84, NearItsEnd, "1 film left", "standing 84 % used", 2),
        make("Stop 3", "mixed 2 Nov", "Citric stop bath", Stop, Pet, 1000, 960, 0, 0.05, Good,
             "20 films left", "until 2 May", 0.6),
        make("Wash aid 2", "mixed 11 Oct", "Wash aid", WashAid, Ldpe, 1000, 640, 14, 0.3, Good,
             "31 films left", "until 11 Jan", 0.8),
        make("Fix 8", "mixed 3 Jun", "Acid fixer", Fixer, Pp, 1030, 600, 24, 0.9, Discard,
             "clears in twice the fresh time", "", 4),
    };
}

} // namespace

std::vector<BottleView> bottles(int count)
{
    const auto pattern = six();
    std::vector<BottleView> result;
    for (int i = 0; i < count; ++i) {
        BottleView bottle = pattern[static_cast<std::size_t>(i % 6)];
        if (i >= 6) {
            static const double kSizes[]{250, 500, 1000, 2000, 5000};
            static const double kFills[]{0.1, 0.95, 0.5, 0.75, 0.3};
            bottle.id = bottle.name = QStringLiteral("%1 %2").arg(bottle.name.section(u' ', 0, -2),
                                                                  QString::number(20 + i));
            bottle.capacityMl = kSizes[i % 5];
            bottle.volumeMl = bottle.capacityMl * kFills[(i / 5) % 5];
            bottle.material = static_cast<BottleMaterial>((i / 2) % 5);
            bottle.squeezed = i % 7 == 0;
            bottle.airMl = 10;
            bottle.filmsDone = i % 4 == 3 ? i + 0.0 : (i % 13) + (i % 3) / 3.0;
            if (i % 11 == 0) {
                bottle.solution = SolutionLook::WettingAgent;
                bottle.name = QStringLiteral("Wetting agent %1").arg(i);
            }
            bottle.urgency += 0.001 * i;
        }
        result.push_back(bottle);
    }
    return result;
}

} // namespace ullage::app::samples
