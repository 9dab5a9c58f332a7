#include "core/formulary/composition.h"

#include <gtest/gtest.h>

namespace ullage::formulary
{

using chemistry::AmountUnit;
using chemistry::Ingredient;

TEST(Composition, readsNamesAmountsAndTheUsualFormsInTheirOrder)
{
    const auto formula =
        readComposition("metol 2, sodium sulfite 100, hydroquinone 5, borax 2 g per "
                        "litre; from memory of published formulas");
    ASSERT_TRUE(formula);
    EXPECT_EQ(formula->makes, chemistry::Millilitres(1000));
    const std::vector<Ingredient> expected{{"metol", "", 2, AmountUnit::Gram},
                                           {"sodium-sulfite", "anhydrous", 100, AmountUnit::Gram},
                                           {"hydroquinone", "", 5, AmountUnit::Gram},
                                           {"borax", "decahydrate", 2, AmountUnit::Gram}};
    EXPECT_EQ(formula->ingredients, expected);
}

TEST(Composition, readsFormsMillilitresAndDecimalCommas)
{
    const auto formula =
        readComposition("Sodium sulfite heptahydrate 7,5, acetic acid 28 ml, metol 0.25");
    ASSERT_TRUE(formula);
    const std::vector<Ingredient> expected{
        {"sodium-sulfite", "heptahydrate", 7.5, AmountUnit::Gram},
        {"acetic acid", "", 28, AmountUnit::Millilitre},
        {"metol", "", 0.25, AmountUnit::Gram}};
    EXPECT_EQ(formula->ingredients, expected);
}

TEST(Composition, makesNothingOfProse)
{
    for (const char* line :
         {"", ";", "phenidone and ascorbate in sulfite; composition not published",
          "metol 2, some sulfite", "metol 0", "metol 2 oz", "2 metol", "metol 2 kg per litre",
          "metol 1e400", "metol -2"})
        EXPECT_FALSE(readComposition(line)) << line;
}

TEST(Composition, everySaltWithSeveralFormsHasAUsualOne)
{
    for (const chemistry::SaltForm& known : chemistry::saltForms())
        EXPECT_TRUE(chemistry::hydrateFactor(known.salt, known.form, usualForm(known.salt)));
}

} // namespace ullage::formulary
