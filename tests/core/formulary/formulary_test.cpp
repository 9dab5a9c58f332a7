#include "core/formulary/formulary.h"

#include <cmath>
#include <functional>
#include <gtest/gtest.h>

namespace ullage::formulary
{
namespace
{

using namespace chemistry;

Solution developer()
{
    Solution solution;
    solution.id = "mq";
    solution.name = "MQ borax developer";
    solution.role = Role::Developer;
    solution.capacity = FilmsPerLitre(10);
    solution.wear = {WearRule::PerFilm, 10, {}};
    solution.keeping = {Days(182.625), Days(60.875), Hours(24)};
    return solution;
}

Vessel bottle()
{
    Vessel vessel;
    vessel.id = "b1";
    vessel.name = "Amber 1";
    vessel.capacity = Millilitres(1030);
    return vessel;
}

template <class T>
std::string fieldRefused(T value, const std::function<void(T&)>& change)
{
    change(value);
    const auto fine = check(value);
    return fine ? "accepted" : fine.error().field;
}

TEST(Solution, refusesFiguresOutOfRangeByName)
{
    const auto refused = [](const std::function<void(Solution&)>& change) {
        return fieldRefused<Solution>(developer(), change);
    };
    EXPECT_TRUE(check(developer()));
    EXPECT_EQ(refused([](auto& s) { s.id = ""; }), "id");
    EXPECT_EQ(refused([](auto& s) { s.name = ""; }), "name");
    EXPECT_EQ(refused([](auto& s) { s.capacity = FilmsPerLitre(0); }), "capacity_films_per_litre");
    EXPECT_EQ(refused([](auto& s) { s.capacity = FilmsPerLitre(1001); }),
              "capacity_films_per_litre");
    EXPECT_EQ(refused([](auto& s) { s.wear.percent = -1; }), "wear.percent");
    EXPECT_EQ(refused([](auto& s) { s.keeping.full = Days(0); }), "keeping.full_days");
    EXPECT_EQ(refused([](auto& s) { s.keeping.full.reset(); }), "keeping.full_days");
    EXPECT_EQ(refused([](auto& s) { s.keeping.half = Days(-1); }), "keeping.half_days");
    EXPECT_EQ(refused([](auto& s) { s.keeping.half = Days(182.625); }), "keeping.half_days");
    EXPECT_EQ(refused([](auto& s) { s.keeping.tray = Hours(0); }), "keeping.tray_hours");
    EXPECT_EQ(refused([](auto& s) { s.q10 = 0.9; }), "q10");
    EXPECT_EQ(refused([](auto& s) { s.q10 = 5.1; }), "q10");
    EXPECT_EQ(refused([](auto& s) { s.oxygenFactor = 0; }), "oxygen_factor");
    EXPECT_EQ(refused([](auto& s) { s.oxygenFactor = 1.6; }), "oxygen_factor");
    EXPECT_EQ(refused([](auto& s) { s.silverPerFilm = -0.1; }), "silver_g_per_film");
    EXPECT_EQ(refused([](auto& s) { s.bromidePerFilm = NAN; }), "bromide_mg_per_film");
    EXPECT_EQ(refused([](auto& s) { s.freshClearing = Seconds(0.5); }), "fresh_clearing_s");
    EXPECT_EQ(refused([](auto& s) { s.silverLimit = GramsPerLitre(0); }),
              "silver_limit_g_per_litre");
    EXPECT_EQ(refused([](auto& s) { s.tabularFactor = 0.5; }), "tabular_factor");
}

TEST(Solution, defaultsAreTheModels)
{
    EXPECT_EQ(Solution().q10, kQ10.value);
    EXPECT_EQ(Solution().oxygenFactor, kOxygenFactor.value);
    EXPECT_NEAR(saturation(developer()).value(), 0.13923647606143907, 1e-12);
}

TEST(Solution, rangeOfQ10GoesByWhatIsInIt)
{
    auto solution = developer();
    EXPECT_EQ(q10Range(solution).name, kQ10.name);
    solution.chemicals = {"metol", "sodium sulfite"};
    EXPECT_EQ(q10Range(solution).name, kQ10.name);
    for (const char* chemical : {"ascorbic acid", "Sodium ascorbate", "sodium isoascorbate"}) {
        solution.chemicals = {"phenidone", chemical};
        EXPECT_EQ(q10Range(solution).name, kQ10Ascorbate.name) << chemical;
    }
}

TEST(Solution, keepingLimitsNeedAFullBottleFigure)
{
    auto solution = developer();
    EXPECT_NEAR(keepingLimits(solution)->oxygen.value(), 24.26733461818996, 1e-8);
    EXPECT_NEAR(*keepingLimits(solution)->trayExchange, 13.989420439013259, 1e-8);
    solution.role = Role::Fixer;
    solution.keeping.half.reset();
    EXPECT_FALSE(keepingLimits(solution)->airCounts());
    solution.keeping = {};
    EXPECT_FALSE(keepingLimits(solution));
    EXPECT_TRUE(check(solution));
}

TEST(Codes, goThereAndBack)
{
    for (std::size_t i = 0; i < kRoleCodes.size(); ++i) {
        EXPECT_EQ(code(*roleFromCode(kRoleCodes[i])), kRoleCodes[i]);
    }
    EXPECT_FALSE(roleFromCode("bleach"));
    EXPECT_EQ(code(Role::WashAid), "wash-aid");
    EXPECT_EQ(code(Role::WettingAgent), "wetting-agent");
    for (std::size_t i = 0; i < kMaterialCodes.size(); ++i) {
        EXPECT_EQ(code(*materialFromCode(kMaterialCodes[i])), kMaterialCodes[i]);
        EXPECT_EQ(kWalls[i].material, kMaterialCodes[i]); // enclosure() counts on one order
    }
    EXPECT_FALSE(materialFromCode("tin"));
}

TEST(Vessel, refusesFiguresOutOfRangeByName)
{
    const auto refused = [](const std::function<void(Vessel&)>& change) {
        return fieldRefused<Vessel>(bottle(), change);
    };
    EXPECT_TRUE(check(bottle()));
    EXPECT_EQ(refused([](auto& v) { v.id = ""; }), "id");
    EXPECT_EQ(refused([](auto& v) { v.name = ""; }), "name");
    EXPECT_EQ(refused([](auto& v) { v.capacity = Millilitres(0.5); }), "capacity_ml");
    EXPECT_EQ(refused([](auto& v) { v.capacity = Millilitres(100'001); }), "capacity_ml");
    EXPECT_EQ(refused([](auto& v) { v.wall = Millimetres(0); }), "wall_mm");
    EXPECT_EQ(refused([](auto& v) { v.permeability = -1; }), "permeability");
    EXPECT_EQ(refused([](auto& v) { v.capLeak = CubicCentimetresPerDay(-1); }), "cap_cm3_day");
}

TEST(Vessel, ownFiguresGoBeforeTheMaterials)
{
    auto vessel = bottle();
    vessel.material = Material::Hdpe;
    const double wall = enclosure(vessel).wallFlow;
    // 73·0.0620·1.03^⅔·0.2095/0.9/22.414
    EXPECT_NEAR(wall, 73 * 0.0620 * std::pow(1.03, 2.0 / 3) * 0.2095 / 0.9 / 22.414, 1e-12);
    vessel.wall = Millimetres(1.8);
    EXPECT_NEAR(enclosure(vessel).wallFlow, wall / 2, 1e-12);
    vessel.permeability = 146;
    EXPECT_NEAR(enclosure(vessel).wallFlow, wall, 1e-12);
    vessel.capLeak = CubicCentimetresPerDay(22.414);
    EXPECT_NEAR(enclosure(vessel).capFlow, 1, 1e-12);
}

TEST(Vessel, rangesReachTheMaterialsFiguresOnly)
{
    auto vessel = bottle();
    vessel.material = Material::Hdpe;
    AirConstants high;
    high.permeability = 1;
    high.capLeak = 1;
    EXPECT_NEAR(enclosure(vessel, high).wallFlow / enclosure(vessel).wallFlow, 98.0 / 73, 1e-12);
    EXPECT_NEAR(enclosure(vessel, high).capFlow / enclosure(vessel).capFlow, 5, 1e-12);
    AirConstants low;
    low.permeability = 0;
    low.capLeak = 0;
    EXPECT_NEAR(enclosure(vessel, low).wallFlow / enclosure(vessel).wallFlow, 39.0 / 73, 1e-12);
    EXPECT_NEAR(enclosure(vessel, low).capFlow / enclosure(vessel).capFlow, 0.2, 1e-12);
    vessel.permeability = 50;
    vessel.capLeak = CubicCentimetresPerDay(0.1);
    EXPECT_EQ(enclosure(vessel, high).wallFlow, enclosure(vessel).wallFlow);
    EXPECT_EQ(enclosure(vessel, high).capFlow, enclosure(vessel).capFlow);
}

TEST(Vessel, airAboveIsWhatWasLeftButNeverMoreThanTheRoom)
{
    auto vessel = bottle();
    const auto air = [&](double volume, std::optional<Millilitres> left) {
        return airAbove(vessel, Millilitres(volume), left).value();
    };
    EXPECT_EQ(air(900, {}), 130);
    EXPECT_EQ(air(900, Millilitres(20)), 20);
    EXPECT_EQ(air(900, Millilitres(500)), 130);
    EXPECT_EQ(air(1040, {}), 0);
    vessel.squeezed = true;
    EXPECT_EQ(air(900, {}), 0);
    EXPECT_EQ(air(900, Millilitres(20)), 20);
}

TEST(Formulary, keepsWhatItWasGivenInOrder)
{
    Formulary formulary;
    formulary.add(developer());
    formulary.add(bottle());
    auto second = bottle();
    second.id = "b2";
    formulary.add(second);
    EXPECT_EQ(formulary.solution("mq")->name, "MQ borax developer");
    EXPECT_EQ(formulary.vessel("b2")->id, "b2");
    EXPECT_EQ(formulary.vessels().size(), 2U);
    EXPECT_EQ(formulary.vessels()[1]->id, "b2");
    EXPECT_FALSE(formulary.solution("b1"));
    EXPECT_FALSE(formulary.vessel("mq"));
}

} // namespace
} // namespace ullage::formulary
