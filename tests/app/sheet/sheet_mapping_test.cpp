// A mapping as a file keeps it.
#include "app/sheet/sheet_mapping.h"

#include <gtest/gtest.h>

namespace ullage::app
{
namespace
{

TEST(SheetMapping, ComesBackAsItWasWritten)
{
    SheetMapping mapping;
    mapping.reading = {"windows-1252", store::SheetDelimiter::Tab};
    mapping.headingRow = 4;
    mapping.decimalComma = true;
    mapping.order = DayOrder::MonthFirst;
    mapping.columns = {{"Flasche", SheetField::BottleName}, {"wer weiß", SheetField::Unused}};
    mapping.solutions = {{"der gute alte", "MQ borax"}};
    const auto read = readMapping(mappingText(mapping));
    ASSERT_TRUE(read) << read.error().text;
    EXPECT_EQ(*read, mapping);
}

TEST(SheetMapping, NamesWhatIsWrongInIt)
{
    const auto refused = [](const QByteArray& text) {
        const auto read = readMapping(text);
        return read ? Error{} : read.error();
    };
    EXPECT_EQ(refused("no json").field, "mapping");
    EXPECT_EQ(refused("{}").field, "ullage-sheet");
    EXPECT_EQ(refused(R"({"ullage-sheet":2})").text, "2");
    EXPECT_EQ(refused(R"({"ullage-sheet":1,"delimiter":"x"})").field, "delimiter");
    EXPECT_EQ(refused(R"({"ullage-sheet":1,"decimal":"x"})").field, "decimal");
    EXPECT_EQ(refused(R"({"ullage-sheet":1,"days":"x"})").field, "days");
    const Error field =
        refused(R"({"ullage-sheet":1,"columns":[{"heading":"a","field":"colour"}]})");
    EXPECT_EQ(field.text, "colour");
    EXPECT_NE(field.allowed.find("volume_ml"), std::string::npos);
}

TEST(SheetMapping, EveryFieldHasACodeAndAName)
{
    for (std::size_t i = 0; i < kSheetFields; ++i) {
        const auto field = static_cast<SheetField>(i);
        EXPECT_EQ(sheetFieldFromCode(sheetCode(field)), field);
        EXPECT_FALSE(sheetFieldName(field).isEmpty());
    }
}

} // namespace
} // namespace ullage::app
