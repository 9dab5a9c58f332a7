// Every rule of the model, and what it is checked by that it was not made from.
//
// A rule without a check here stands in the model page's list of what is unchecked
// (core/chemistry/README.md, "Not checked"); rules_test.cpp holds the two against each other and
// against the tests that there are. Rules that are our own conventions are not listed.
#pragma once

#include <string_view>
#include <vector>

namespace ullage::published
{

struct Rule {
    int chapter;                          ///< of the model page
    std::string_view rule;                ///< as the model page words it, where it is not checked
    std::vector<std::string_view> checks; ///< "Suite.test"; none: not checked
};

inline const std::vector<Rule>& rules()
{
    static const std::vector<Rule> all{
        // 2: standing
        {2,
         "oxygen in fresh water",
         {"Oxygen.freshWaterAsTabulated", "Oxygen.standardTableDegreeByDegree",
          "Oxygen.freshWaterAgreesWithAnIndependentFit", "Oxygen.titratedAnew"}},
        {2, "salting out of oxygen by sulfite, sulfate and thiosulfate", {}},
        {2, "oxygen in the air of a bottle", {"Oxygen.airHoldsWhatTheGasLawSays"}},
        {2,
         "uptake of a closed bottle, in closed form",
         {"ClosedForm.matchesTheIntegratedEquation"}},
        {2, "what a solution takes up by being poured", {}},
        {2, "an opening renews all the air", {}},
        {2, "permeability of walls", {"Permeability.rangesOfTheTable"}},
        {2,
         "permeability of LDPE by temperature",
         {"Permeability.ofPolyethyleneFallsInTheColdAsMeasured"}},
        {2, "permeability of other walls by temperature", {}},
        {2, "thickness and area of walls, surface of a bottle", {}},
        {2, "leak of caps", {"Caps.shareOfWhatEntersABottle", "Caps.measuredOnWine"}},
        {2,
         "exchange at a still surface out of doors",
         {"Exchange.smallStillLakes", "Exchange.theStillestLakes"}},
        {2, "exchange in a bottle", {}},
        {2, "exchange in a tray", {"Exchange.openTrayByOpenWaterWithinAFactorOfTwo"}},
        {2, "uptake does not depend on temperature", {}},
        {2, "solving the two limits", {"Calibration.matchesTheIntegratedBottles"}},
        {2, "the limits themselves, and how often the half-full bottle was opened", {}},
        {2,
         "ageing by temperature, 72 to 92 °C",
         {"AgeingWithoutAir.stepsFromOvenToOvenAreTheConstants",
          "AgeingWithoutAir.oneFitOverThreeOvensGivesTheConstant"}},
        {2, "ageing by temperature below 72 °C", {}},
        {2, "sulfite is not the limit", {"Keeping.sulfiteOutlastsTheDeveloper"}},
        {2,
         "anything but a developer goes by the calendar",
         {"Fixing.workingStrengthKeepsTwoMonths"}},
        {2, "range of a date", {}},
        // 3: film, wear, time
        {3,
         "counting film by its area",
         {"Counting.twelveSheetsAreThePrintedArea", "Counting.twoRulesForPrintsInAFixerAgree"}},
        {3, "a strip of 36 frames counts as 80 square inches", {}},
        {3, "wear is diluted by topping up", {}},
        {3, "replenishing holds a steady wear", {"Replenishing.fourPublishedRatesByTheFilm"}},
        {3, "credit of films for a replenisher", {}},
        {3,
         "times between pairs",
         {"TimeAndTemperature.endsEnteredAsPairsGiveTheMiddleToo",
          "TimeAndTemperature.pairsCarryATable",
          "TimeAndTemperature.pairsCarryAnotherStatesOddDegrees"}},
        {3,
         "Q10 beyond the pairs",
         {"TimeAndTemperature.oneQ10FromTheEndsGivesTheMiddle",
          "TimeAndTemperature.radiographicFilmHeldOut", "TimeAndTemperature.mqPaperDeveloper",
          "TimeAndTemperature.ascorbateDevelopersAreSteeper"}},
        {3,
         "range of a carried time",
         {"TimeAndTemperature.aCarriedTimesRangeHoldsThePrintedTimes",
          "TimeAndTemperature.onePairDoesNotCarryIt"}},
        {3, "usual temperatures, 18 to 24 °C", {"TimeAndTemperature.usualRangeIsTheManuals"}},
        {3, "no time below 13 °C", {"TimeAndTemperature.noTimeIsCarriedToWhereHydroquinoneCeases"}},
        {3, "no time above 30 °C", {}},
        {3, "wear on the development time", {}},
        {3,
         "limits of control strips",
         {"IndividualsChart.handbookExample", "IndividualsChart.divisorIsTheMeanRangeOfTwo"}},
        {3, "response of density to time", {}},
        {3, "bromide from a film", {"Silver.imageAndFixerShareItAsPrinted"}},
        // 4: fixing, washing
        {4, "fixing is twice the clearing time", {"Fixing.twiceTheClearingTime"}},
        {4, "fixing of tabular grains is three times the clearing time", {}},
        {4, "fixing in the cold", {"Fixing.doublesForEighteenFahrenheitColder"}},
        {4, "clearing tests above 20 °C", {}},
        {4,
         "discard at twice the fresh clearing time",
         {"Fixing.discardWhenTheClearingTimeHasDoubled",
          "Fixing.twoOtherSheetsDiscardAtTheSamePlace"}},
        {4, "clearing time rises in a straight line", {}},
        {4,
         "fit and prediction band",
         {"StraightLine.certifiedToNineDigits", "StraightLine.matchesGslOnRandomTests"}},
        {4,
         "capacity of a fixer without a figure",
         {"Fixing.aLitreOfAcidFixerIsFullAfterThePrintedLoad",
          "Fixing.capacityLiesBetweenOldNegativeAndPositiveFilm"}},
        {4, "share of a film that loads a second fixing bath", {}},
        {4, "iodide test", {}},
        {4,
         "silver from a film",
         {"Silver.imageAndFixerShareItAsPrinted", "Silver.ofADozenPlates",
          "Silver.ofASquareMetreOfNegativeFilm", "Silver.ofFilmCoatedOnBothSidesIsMoreThanTwice",
          "Silver.ofASpentFixer"}},
        {4, "silver as hazardous waste", {"Fixing.silverThatIsHazardousWaste"}},
        {4,
         "ways and times of washing",
         {"Washing.runningWaterByFourOtherBooks", "Washing.usualWater"}},
        {4, "washing with an aid", {}},
        {4, "cold water", {"Washing.coldWaterByThreeBooks"}},
        {4, "wash and fixer apart", {"Washing.reticulation"}},
        {4, "fill and dump by dilution", {"Washing.oneFillingDilutesAsPrinted"}},
        {4,
         "running water halves what is left",
         {"Washing.hypoHalvesFourTimesSlowerThanByTheOtherManual",
          "Washing.limitIsReachedBetweenTheManualsTimes"}},
        {4, "thiosulfate that may stay", {"Washing.whatMayStay"}},
        // 5: mixing
        {5, "water to start with", {"Mixing.waterToStartWith"}},
        {5, "temperature of the mixing water", {"Mixing.waterTemperatures"}},
        {5, "room that dissolved thiosulfate takes", {"Displacement.ofThiosulfateByItsDensities"}},
        {5, "room that dissolved sulfite takes", {}},
        {5, "density of water", {"Water.densityBetweenThePoints"}},
        {5, "blending hot and cold water", {}},
        {5, "warming and cooling of a bottle", {}},
        {5, "molar masses", {"MolarMasses.areSumsOfAtoms"}},
        {5,
         "hydrates by molar mass",
         {"Hydrates.conversionTable", "Hydrates.carbonateMonohydrate",
          "Hydrates.oneDeveloperInThreeForms", "Hydrates.ofAnOldHandbook", "Hydrates.borax",
          "Formulas.sulfateStopBathFromCrystals"}},
        {5,
         "diluting acids by weight and by volume",
         {"Dilution.glacialAceticAcidIntoWater", "Dilution.acidByWeight", "Dilution.acidByVolume",
          "Dilution.percentByVolumeIsNotByWeight"}},
        {5, "cold stores", {}},
        // 6: pace, own figures
        {6,
         "waits and chances of the forecast",
         {"Forecast.symmetricPosteriorGivesOneHalf", "Forecast.gammaPriorOfTheHandbook",
          "Quantiles.waitsMatchGslsBeta", "Quantiles.chanceIsThePoissonMixedOverTheGamma"}},
        {6, "the prior of one load in thirty days", {}},
        {6,
         "reckoning of own figures",
         {"OwnFigures.fixerCapacityMatchesGslsWeightedFit",
          "OwnFigures.oxygenLimitMatchesGslsIntegration"}},
        {6, "spread of a darkroom's own tests", {}},
    };
    return all;
}

} // namespace ullage::published
