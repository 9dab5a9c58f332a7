#include "core/cupboard/chemical_kind.h"

#include <gtest/gtest.h>

namespace ullage::cupboard
{
namespace
{

using chemistry::AmountUnit;
using chemistry::Ingredient;

const Ingredient kDrySulfite{"sodium-sulfite", "anhydrous", 100};
const Ingredient kSulfiteCrystals{"sodium-sulfite", "heptahydrate", 200};

ledger::Chemical named(const char* name, const char* cas = "")
{
    ledger::Chemical chemical;
    chemical.name = name;
    chemical.cas = cas;
    return chemical;
}

std::vector<std::string> germanSulfite(const Ingredient& part)
{
    if (part.name != "sodium-sulfite") {
        return {};
    }
    if (part.form.empty()) {
        return {"Natriumsulfit"};
    }
    return part.form == "anhydrous" ? std::vector<std::string>{"Natriumsulfit, wasserfrei"}
                                    : std::vector<std::string>();
}

} // namespace

// The last digit of a number is the sum of the others, each times its place counted from the right,
// without its tens (CAS registry, check digit verification, from memory).
TEST(ChemicalKind, everyNumberHasItsCheckDigit)
{
    for (const NumberedChemical& one : numberedChemicals()) {
        std::string digits;
        for (const char c : one.cas) {
            if (c != '-') {
                digits += c;
            }
        }
        int sum = 0;
        for (std::size_t i = 0; i + 1 < digits.size(); ++i) {
            sum += (digits[digits.size() - 2 - i] - '0') * static_cast<int>(i + 1);
        }
        EXPECT_EQ(sum % 10, digits.back() - '0') << one.cas;
    }
}

TEST(ChemicalKind, everyFormOfEverySaltHasANumber)
{
    for (const chemistry::SaltForm& salt : chemistry::saltForms()) {
        int found = 0;
        for (const NumberedChemical& one : numberedChemicals()) {
            found += one.name == salt.salt && one.form == salt.form ? 1 : 0;
        }
        EXPECT_EQ(found, 1) << salt.salt << ' ' << salt.form;
    }
}

TEST(ChemicalKind, theNumberDecidesWhateverItIsCalled)
{
    EXPECT_TRUE(isOf(named("my jar", "7757-83-7"), kDrySulfite));
    EXPECT_FALSE(isOf(named("sodium sulfite", "7757-83-7"), kSulfiteCrystals)) << "dry, by number";
    EXPECT_FALSE(isOf(named("sodium sulfite", "497-19-8"), kDrySulfite)) << "that is a carbonate";
    EXPECT_TRUE(isOf(named("sodium sulfite", "1-00-0"), kDrySulfite)) << "no number known here";
}

TEST(ChemicalKind, withoutANumberItsNameDoes)
{
    EXPECT_TRUE(isOf(named("Sodium sulfite, dry"), kDrySulfite));
    EXPECT_FALSE(isOf(named("Sodium sulfite, dry"), kSulfiteCrystals));
    EXPECT_TRUE(isOf(named("sodium sulfite (heptahydrate)"), kSulfiteCrystals));
    EXPECT_FALSE(isOf(named("sodium sulfite (heptahydrate)"), kDrySulfite));
    EXPECT_TRUE(isOf(named("Sodium-Sulfite  Anhydrous"), kDrySulfite));
    EXPECT_FALSE(isOf(named("Sodium sulfite anhydrous"), kSulfiteCrystals));
    EXPECT_TRUE(isOf(named(" sodium sulfite, second jar"), kSulfiteCrystals)) << "of any form";
    EXPECT_FALSE(isOf(named("sodium sulfite solution"), kDrySulfite));
    EXPECT_FALSE(isOf(named("sodium sulfate"), kDrySulfite));
    EXPECT_FALSE(isOf(named(""), kDrySulfite));
    EXPECT_TRUE(isOf(named("Metol"), {"metol", "", 2}));
}

TEST(ChemicalKind, namesOfTheUsersLanguageAreReadToo)
{
    EXPECT_FALSE(isOf(named("Natriumsulfit"), kDrySulfite));
    EXPECT_TRUE(isOf(named("Natriumsulfit"), kDrySulfite, germanSulfite));
    EXPECT_TRUE(isOf(named("natriumsulfit, wasserfrei"), kDrySulfite, germanSulfite));
    EXPECT_FALSE(isOf(named("natriumsulfit, wasserfrei"), kSulfiteCrystals, germanSulfite));
    EXPECT_TRUE(isOf(named("Natriumsulfit, Heptahydrat"), kSulfiteCrystals, germanSulfite));
    EXPECT_FALSE(isOf(named("Natriumsulfit, Heptahydrat"), kDrySulfite, germanSulfite));
}

TEST(ChemicalKind, whatIsMeasuredByVolumeIsNotLookedFor)
{
    EXPECT_FALSE(isOf(named("acetic acid"), {"acetic acid", "", 20, AmountUnit::Millilitre}));
    EXPECT_TRUE(isOf(named("acetic acid"), {"acetic acid", "", 20}));
}

} // namespace ullage::cupboard
