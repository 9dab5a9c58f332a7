// What people typed is told apart from what the program put there.
#include "core/store/persons_text.h"

#include "core/ledger/line_description.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace ullage::store
{

namespace
{

// Texts of the journal that are no words of a person's, or never stand in the day book.
constexpr std::array<std::string_view, 14> kNoWords{"id",   "kind", "run",      "film",  "step",
                                                    "tank", "cas",  "currency", "unit",  "code",
                                                    "rule", "type", "dilution", "source"};

bool isIn(const auto& list, std::string_view name)
{
    return std::find(list.begin(), list.end(), name) != list.end();
}

} // namespace

TEST(PersonsText, EveryFieldOfTextIsSearchedOrKnownToBeNone)
{
    for (const ledger::LineDescription& line : ledger::lineDescriptions()) {
        for (const formulary::FieldDescription& field : line.fields) {
            if (field.holds == formulary::Holds::Text &&
                field.refers == formulary::Refers::Nothing) {
                EXPECT_TRUE(isIn(kOwnWords, field.name) || isIn(kNoWords, field.name))
                    << line.type << ' ' << line.kind << ": " << field.name;
            }
        }
    }
}

TEST(PersonsText, ReasonsOfTheProgramAreCodesAndThoseOfAPersonAreText)
{
    const auto voided = [](const QByteArray& why) {
        return personsText(R"({"type":"event","id":"v","kind":"voided","voids":"e",)"
                           R"("at":"2026-05-01T10:00:00Z","why":")" +
                           why + "\"}");
    };
    for (const std::string_view code : kWhyCodes) {
        const PersonsText line = voided(QByteArray(code.data(), qsizetype(code.size())));
        EXPECT_EQ(line.why, code);
        EXPECT_TRUE(line.text.isEmpty()) << code;
    }
    EXPECT_EQ(voided("Wrong bottle").text, "wrong bottle");
    EXPECT_TRUE(voided("Wrong bottle").why.empty());
}

} // namespace ullage::store
