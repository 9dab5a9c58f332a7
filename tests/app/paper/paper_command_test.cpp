#include "tests/app/paper/paper_command.h"

#include "tests/app/paper/paper_journal.h"
#include "tests/app/paper/paper_reader.h"

#include <gtest/gtest.h>

namespace ullage::app
{

using namespace testing;

namespace
{

// The program goes by the machine's clock: all of it must be over.
QByteArray twoMonthsLongAgo() { return QByteArray(kTwoMonths).replace("2026-", "2025-"); }

} // namespace

TEST(PaperPages, everyPageIsMadeOnBothSizes)
{
    PaperCommand terminal(twoMonthsLongAgo());
    ASSERT_TRUE(terminal.begin());
    const std::vector<QStringList> pages{{"shelf"},
                                         {"card", "--batch", "dev-1"},
                                         {"shopping"},
                                         {"month", "--month", "2025-11"},
                                         {"handover"}};
    for (const QStringList& page : pages) {
        for (const QString& size : {QStringLiteral("A4"), QStringLiteral("letter")}) {
            SCOPED_TRACE((page.join(u' ') + u' ' + size).toStdString());
            const auto made =
                terminal.run(QStringList{"paper"} + page + QStringList{"--size", size, "-"});
            ASSERT_EQ(made.code, 0) << made.err.toStdString();
            const QImage paper = rendered(made.out, 0, 100);
            ASSERT_FALSE(paper.isNull());
            EXPECT_NEAR(toMillimetres(paper.width(), 100), size == u"A4" ? 210 : 215.9, 0.4);
            EXPECT_NEAR(toMillimetres(paper.height(), 100), size == u"A4" ? 297 : 279.4, 0.4);
            EXPECT_GT(darkIn(paper).height(), 100);
        }
    }
}

TEST(PaperPages, whatCannotBePrintedIsRefusedAndNothingIsWritten)
{
    PaperCommand terminal(twoMonthsLongAgo());
    ASSERT_TRUE(terminal.begin());
    const QString file = terminal.path("page.pdf");
    EXPECT_EQ(terminal.run({"paper", "card", file}).code, 1);
    EXPECT_EQ(terminal.run({"paper", "card", "--batch", "none", file}).code, 1);
    EXPECT_EQ(terminal.run({"paper", "month", "--month", "2026-13", file}).code, 1);
    EXPECT_EQ(terminal.run({"paper", "month", "--size", "A7", file}).code, 1);
    const auto unknown = terminal.run({"paper", "poster", file});
    EXPECT_EQ(unknown.code, 1);
    EXPECT_TRUE(unknown.err.contains("handover")) << unknown.err.toStdString();
    EXPECT_EQ(terminal.run({"paper", "shelf"}).code, 2);
    EXPECT_EQ(terminal.run({"paper", "shelf", terminal.path("page.txt")}).code, 2);
    EXPECT_FALSE(QFile::exists(file));
}

} // namespace ullage::app
