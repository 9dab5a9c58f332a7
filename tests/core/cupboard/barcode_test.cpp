#include "core/cupboard/barcode.h"

#include <gtest/gtest.h>

namespace ullage::cupboard
{
namespace
{

TEST(Barcode, verifiesTheCheckDigit)
{
    // The worked example of the GS1 General Specifications, 7.9 (from memory): 629104150021 and 3.
    EXPECT_EQ(formOf("6291041500213"), CodeForm::Ean13);
    EXPECT_EQ(formOf("629 104150 0213\n"), CodeForm::Ean13);
    EXPECT_EQ(formOf("6291041500214"), CodeForm::WrongDigit);
    EXPECT_EQ(formOf("6219041500213"), CodeForm::WrongDigit) << "two digits exchanged";
    for (const char* other : {"", "629104150021", "62910415002133", "629104150021A"}) {
        EXPECT_EQ(formOf(other), CodeForm::Other) << other;
    }
}

TEST(Barcode, findsWhatItWasTaughtLast)
{
    const auto taught = [](const char* id, const char* code, const char* of) {
        ledger::Barcode made;
        made.id = id;
        made.code = code;
        made.of = of;
        return made;
    };
    const std::vector<ledger::Barcode> all{taught("1", "6291041500213", "dev"),
                                           taught("2", "A 7", "gloves"),
                                           taught("3", "629 1041500213", "fixer")};
    ASSERT_TRUE(kindOf(all, "6291041500213"));
    EXPECT_EQ(kindOf(all, "6291041500213")->of, "fixer");
    EXPECT_EQ(kindOf(all, "A7")->of, "gloves");
    EXPECT_FALSE(kindOf(all, "A8"));
}

} // namespace
} // namespace ullage::cupboard
