#include "core/chemistry/keeping.h"

#include "core/chemistry/formula.h"
#include "core/chemistry/oxygen.h"

#include <gtest/gtest.h>

namespace ullage::chemistry
{
namespace
{

double molarMass(std::string_view salt, std::string_view form)
{
    for (const SaltForm& known : saltForms()) {
        if (known.salt == salt && known.form == form) {
            return known.molarMass;
        }
    }
    ADD_FAILURE() << salt << ", " << form;
    return 0;
}

// Data sheets of sulfite as an oxygen scavenger in boiler water: 7.88 mg of sodium sulfite for each
// milligram of oxygen. By the model's masses 100 g/L can bind some thirty times what an MQ-borax
// stock's life ends near, so sulfite is not the limit.
TEST(Keeping, sulfiteOutlastsTheDeveloper)
{
    const double sulfite = molarMass("sodium-sulfite", "anhydrous");
    EXPECT_NEAR(2 * sulfite / kOxygenMass.value, 7.88, 0.005);
    const double bound = 100 / (2 * sulfite) * 1000; // mmol oxygen by a litre
    const auto limits =
        calibrate({Days(182.625), Days(60.875)}, solutionSaturation(kOxygenFactor.value));
    EXPECT_GT(bound, 10 * limits->oxygen.value());
}

} // namespace
} // namespace ullage::chemistry
