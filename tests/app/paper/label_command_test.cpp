#include "tests/app/paper/paper_command.h"
#include "tests/app/paper/paper_reader.h"

#include <gtest/gtest.h>

namespace ullage::app
{

using namespace testing;

namespace
{

const QByteArray kTwoBottles =
    R"({"type":"book","format":"ullage-journal","version":2})"
    "\n"
    R"({"type":"solution","id":"mq","name":"MQ borax developer","role":"developer",)"
    R"("capacity_films_per_litre":10,"wear":{"rule":"per-film","percent":10},)"
    R"("keeping":{"full_days":182.625}})"
    "\n"
    R"({"type":"vessel","id":"b1","name":"Amber 1","capacity_ml":1030,"material":"glass",)"
    R"("squeezed":false})"
    "\n"
    R"({"type":"vessel","id":"b2","name":"Amber 2","capacity_ml":1030,"material":"glass",)"
    R"("squeezed":false})"
    "\n"
    R"({"type":"event","id":"e1","batch":"dev-1","kind":"mixed","at":"2026-06-01T10:00:00Z",)"
    R"("solution":"mq","vessel":"b1","volume_ml":1000,"name":"Dev 1"})"
    "\n"
    R"({"type":"event","id":"e2","batch":"dev-2","kind":"mixed","at":"2026-06-02T10:00:00Z",)"
    R"("solution":"mq","vessel":"b2","volume_ml":1000,"name":"Dev 2"})"
    "\n";

QString codeOf(const QByteArray& pdf) { return decoded(rendered(pdf, 0, 300)); }

} // namespace

TEST(LabelCommand, aBottlesLabelIsAPageOfItsOwn)
{
    PaperCommand terminal(kTwoBottles);
    ASSERT_TRUE(terminal.begin());
    const auto made = terminal.run({"label", "--batch", "dev-2", terminal.path("label.pdf")});
    EXPECT_EQ(made.code, 0) << made.err.toStdString();
    const QString code = codeOf(terminal.written("label.pdf"));
    EXPECT_EQ(code.section('\n', 0, 0), "dev-2");
    EXPECT_TRUE(code.contains("Dev 2")) << code.toStdString();
    EXPECT_TRUE(code.contains("mixed 2 Jun 2026") || code.contains("mixed Jun 2, 2026"))
        << code.toStdString();
    const QImage page = rendered(terminal.written("label.pdf"), 0, 300);
    EXPECT_NEAR(toMillimetres(page.width(), 300), 70, 0.3);
    EXPECT_NEAR(toMillimetres(page.height(), 300), 36, 0.3);
}

TEST(LabelCommand, allBottlesStandOnOneSheetFromTheFirstFreeLabelOn)
{
    PaperCommand terminal(kTwoBottles);
    ASSERT_TRUE(terminal.begin());
    const auto made = terminal.run({"label", "--sheet", "a4-105x74", "--first", "7", "-"});
    ASSERT_EQ(made.code, 0) << made.err.toStdString();
    ASSERT_TRUE(made.out.startsWith("%PDF"));
    const QImage page = rendered(made.out, 0, 300);
    EXPECT_EQ(decoded(part(page, {0, 222.5, 105, 74}, 300)).section('\n', 0, 0), "dev-1");
    EXPECT_EQ(decoded(part(page, {105, 222.5, 105, 74}, 300)).section('\n', 0, 0), "dev-2");
    EXPECT_TRUE(darkIn(part(page, {2, 2, 200, 218}, 300)).isEmpty());
}

TEST(LabelCommand, whatCannotBePrintedIsRefusedAndNothingIsWritten)
{
    PaperCommand terminal(kTwoBottles);
    ASSERT_TRUE(terminal.begin());
    const QString file = terminal.path("label.pdf");
    EXPECT_EQ(terminal.run({"label", "--batch", "dev-9", file}).code, 1);
    EXPECT_EQ(terminal.run({"label", "--sheet", "a4-70x36", "--first", "25", file}).code, 1);
    const auto sheet = terminal.run({"label", "--sheet", "9x9", file});
    EXPECT_EQ(sheet.code, 1);
    EXPECT_TRUE(sheet.err.contains("a4-70x36")) << sheet.err.toStdString();
    EXPECT_EQ(terminal.run({"label", terminal.path("label.txt")}).code, 2);
    EXPECT_EQ(terminal.run({"label"}).code, 2);
    EXPECT_FALSE(QFile::exists(file));
}

} // namespace ullage::app
