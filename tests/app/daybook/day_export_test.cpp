// What is written and printed is what is shown, row by row, whatever is shown.
#include "tests/app/daybook/day_driver.h"

#include "app/daybook/day_export.h"
#include "app/daybook/day_print.h"
#include "app/words/moment_text.h"
#include "core/store/journal_codec.h"
#include "tests/app/scripted_prompts.h"
#include "tests/app/time_zone.h"
#include "tests/core/store/damaged_book.h"

#include <QComboBox>
#include <QPdfWriter>
#include <QPrintPreviewDialog>
#include <QSignalSpy>

namespace ullage::app
{

namespace
{

class DayExport : public testing::Test
{
protected:
    DayExport() : force(asked)
    {
        desk.pass(-30);
        desk.clearWhenMixed = false;
        dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
        fix = desk.mix("starter-acid-fixer", "starter-pet-1000", 1000, "Fix, \"1\"");
        desk.pass(3);
        const auto done = desk.session().doing([&](ledger::Book& book) {
            return book.process({.load = {.films = {{"120", 2}}},
                                 .baths = {{dev, {}, {}, false, {}}, {fix, {}, {}, false, {}}},
                                 .films = {{.format = "120", .name = "Harbour"}},
                                 .times = {}},
                                desk.now());
        });
        EXPECT_TRUE(done);
        for (int i = 0; i < 250; ++i) { // more than a page
            desk.passMinutes(60);
            desk.record(dev, ledger::Noted{"note " + std::to_string(i)});
        }
        EXPECT_TRUE(desk.session().undo());
    }

    QByteArray written(PageOn& on, const QString& name)
    {
        QSignalSpy done(&on.page, &DayBookPage::exported);
        asked.answer(desk.file(name));
        on.page.exportShown();
        waitFor([&] { return done.count() == 1; });
        QFile file(desk.file(name));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll();
    }
    // Titles of everything, read to the end.
    static QStringList all(PageOn& on)
    {
        while (on.page.model()->canFetchMore({})) {
            on.page.model()->fetchMore({});
            waitFor([&] { return !on.page.model()->isWaiting(); });
        }
        QStringList found;
        for (int row = 0; row < on.page.model()->rowCount(); ++row) {
            if (on.page.model()->entry(row))
                found << on.page.model()->index(row).data().toString();
        }
        return found;
    }
    // The second column of a CSV whose first has no commas.
    static QStringList titlesOf(const QByteArray& csv)
    {
        QStringList found;
        auto lines = QString::fromUtf8(csv).split("\r\n");
        const QString headings = lines.takeFirst();
        EXPECT_TRUE(headings.contains("When (")) << headings.toStdString();
        EXPECT_TRUE(headings.endsWith(",What,Bottles,Detail,By,Taken back"));
        EXPECT_EQ(lines.takeLast(), QString());
        for (const QString& line : lines) {
            const QString rest = line.mid(line.indexOf(',') + 1);
            found << (rest.startsWith('"')
                          ? rest.mid(1, rest.indexOf("\",") - 1).replace("\"\"", "\"")
                          : rest.left(rest.indexOf(',')));
        }
        return found;
    }

    Desk desk;
    std::string dev;
    std::string fix;
    ScriptedPrompts asked;
    PromptsInForce force;
};

} // namespace

TEST_F(DayExport, CsvHasEveryRowThatIsShownAndNoOther)
{
    PageOn on(desk);
    EXPECT_EQ(on.page.model()->entriesRead(), DayModel::kPage);
    const QStringList csv = titlesOf(written(on, "all.csv"));
    EXPECT_EQ(csv.size(), 253) << "also what was not scrolled into sight";
    EXPECT_EQ(csv, all(on));
    EXPECT_TRUE(csv.contains("Mixed, Fix, \"1\""));

    on.page.filterBar()->setGroup(DayGroup::Runs);
    on.settle();
    const QByteArray runs = written(on, "runs.csv");
    EXPECT_EQ(titlesOf(runs), all(on));
    EXPECT_TRUE(runs.contains("\"Dev 1, Fix, \"\"1\"\"\"")) << runs.toStdString();
    on.page.filterBar()->reset();
    on.page.filterBar()->find()->setText("note 24");
    QTest::keyClick(on.page.filterBar()->find(), Qt::Key_Return);
    on.settle();
    EXPECT_EQ(titlesOf(written(on, "found.csv")), all(on));
    QSignalSpy done(&on.page, &DayBookPage::exported);
    asked.answer(desk.file("no-ending"));
    on.page.exportShown();
    waitFor([&] { return done.count() == 1; });
    EXPECT_TRUE(QFile::exists(desk.file("no-ending.csv")));
}

TEST_F(DayExport, OfOnePersonHasThatPersonsEntriesAlone)
{
    desk.session().setPerson("Ada");
    desk.passMinutes(60);
    desk.record(fix, ledger::Noted{"hers"});
    PageOn on(desk);
    auto* person = named<QComboBox>(on.page, "Person");
    waitFor([&] { return person->isVisible(); });
    person->setCurrentIndex(person->findText("Ada"));
    on.settle();
    const QByteArray csv = written(on, "ada.csv");
    EXPECT_EQ(titlesOf(csv), QStringList{"Note, Fix, \"1\""}) << csv.toStdString();
    EXPECT_TRUE(csv.contains(",Ada,"));
    const QByteArray journal = written(on, "ada.jsonl");
    EXPECT_TRUE(journal.contains("hers"));
    EXPECT_FALSE(journal.contains("note 5"));
}

TEST_F(DayExport, TimesAreThoseOfTheUsersClockAndTheHeadingSaysWhich)
{
    const InZone zone("Europe/Berlin");
    desk.record(dev, ledger::Noted{"the last"}); // in November, an hour ahead of UTC
    PageOn on(desk);
    const QByteArray csv = written(on, "times.csv");
    EXPECT_TRUE(csv.startsWith("\"When (Europe/Berlin, UTC+01:00, UTC+02:00)\",What,"))
        << csv.left(80).toStdString();
    const QByteArray last = localTime(desk.now()).toString("yyyy-MM-dd HH:mm:ss").toLatin1();
    EXPECT_TRUE(csv.contains("\r\n" + last + ",")) << csv.left(200).toStdString();
}

// A spreadsheet runs a cell that begins so; what was typed is marked, the program's own words not.
TEST_F(DayExport, NoCellIsAFormula)
{
    for (const char* text : {"=1+1", "+2", "-3", "@SUM(A1)", "\t=4", "＝5"})
        desk.record(dev, ledger::Noted{text});
    PageOn on(desk);
    const QByteArray csv = written(on, "formulas.csv");
    for (const char* text : {",'=1+1,", ",'+2,", ",'-3,", ",'@SUM(A1),", ",\"'\t=4\",", ",'＝5,"})
        EXPECT_TRUE(csv.contains(text)) << text;
    EXPECT_FALSE(csv.contains(",="));
    EXPECT_FALSE(csv.contains(",\"="));
    EXPECT_TRUE(csv.contains(",note 1,")) << "as it is";
}

TEST_F(DayExport, AJournalHasTheLinesOfWhatIsShown)
{
    PageOn on(desk);
    on.page.filterBar()->setGroup(DayGroup::Runs);
    on.settle();
    const QByteArray text = written(on, "runs.jsonl");
    const QByteArray whole = desk.journal();
    QByteArrayList lines = text.split('\n');
    EXPECT_EQ(lines.takeFirst(), store::defaultHeader());
    EXPECT_EQ(lines.takeLast(), QByteArray());
    ASSERT_EQ(lines.size(), 3) << "two baths and a film";
    for (const QByteArray& line : lines)
        EXPECT_TRUE(whole.contains(line + '\n'));
    on.page.filterBar()->setGroup(DayGroup::Notes);
    on.settle();
    const QByteArray notes = written(on, "notes.jsonl");
    EXPECT_EQ(notes.count("\"noted\""), 250);
    EXPECT_EQ(notes.count("\"voided\""), 1) << "what was taken back says so";
}

TEST_F(DayExport, NothingIsWrittenWhereItCannotBe)
{
    PageOn on(desk);
    asked.answer(desk.file("no/such/folder.csv"));
    on.page.exportShown();
    waitFor([&] { return asked.asked().size() == 2; }); // the question, and what went wrong
    EXPECT_TRUE(asked.asked()[1].startsWith("Export what is shown|"));
    on.page.exportShown(); // and going back writes nothing
    EXPECT_FALSE(QFile::exists(desk.file("folder.csv")));
}

TEST_F(DayExport, WhatIsStoppedIsNoFailure)
{
    auto book = store::SqlStore::open(desk.session().path(), {.access = store::Access::Read});
    ASSERT_TRUE(book);
    const auto done =
        exportDays(**book, {}, dayWording(desk.session().formulary(), desk.preferences().wording()),
                   desk.file("stopped.csv"), [] { return true; });
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().code, ErrorCode::Cancelled);
    EXPECT_FALSE(QFile::exists(desk.file("stopped.csv")));
}

TEST_F(DayExport, WhatWasChangedIsNamedAndNotWrittenOut)
{
    store::testing::tamper(
        desk.session().path(),
        {QStringLiteral("UPDATE entry SET body = replace(body, 'note 240', 'not 240') "
                        "WHERE kind = 'noted' AND body LIKE '%note 240%'")});
    PageOn on(desk);
    on.choose("Not as it was entered, Dev 1");
    const QModelIndex row = on.page.list()->currentIndex();
    EXPECT_FALSE(row.data(DayModel::DetailRole).toString().contains("240"));
    EXPECT_TRUE(row.data(DayModel::DetailRole).toString().contains("is not as it was entered"))
        << row.data(DayModel::DetailRole).toString().toStdString();
    for (auto* button : on.page.findChildren<QPushButton*>()) {
        EXPECT_FALSE(button->isVisible() && button->text() == "&Take back…");
    }
    EXPECT_TRUE(on.shown().contains("Note, Dev 1")) << "the others are as they were";
    asked.answer(desk.file("changed.csv"));
    on.page.exportShown();
    waitFor([&] { return asked.asked().size() == 2; });
    EXPECT_TRUE(asked.asked()[1].startsWith("Export what is shown|"));
    EXPECT_FALSE(QFile::exists(desk.file("changed.csv")));
}

TEST_F(DayExport, PrintsTheRowsShownAfterAPreview)
{
    PageOn on(desk);
    on.page.filterBar()->setGroup(DayGroup::Mixing);
    on.settle();
    QSignalSpy ready(&on.page, &DayBookPage::printReady);
    on.page.printShown();
    waitFor([&] { return ready.count() == 1; });
    EXPECT_EQ(ready[0][0].toInt(), 3) << "a day and two mixings";
    auto* preview = on.page.findChild<QPrintPreviewDialog*>();
    ASSERT_NE(preview, nullptr);
    QTest::qWait(50); // it paints
    preview->reject();
    on.settle();
}

TEST_F(DayExport, PagesHaveEveryLineOnceAndHeadingsWithTheirEntries)
{
    DayPrint print{"Day book", "Everything", {}};
    for (int day = 0; day < 9; ++day) {
        print.lines.push_back({true, {}, QString::number(day), {}, false});
        for (int i = 0; i < day; ++i)
            print.lines.push_back({false, "10:00", QStringLiteral("%1-%2").arg(day).arg(i),
                                   i % 2 ? "detail" : QString(), false});
    }
    const auto pages = dayPages(print, 12);
    QStringList seen;
    for (const auto& page : pages) {
        EXPECT_TRUE(page.front().heading);
        EXPECT_FALSE(page.back().heading && &page != &pages.back()) << "no heading left alone";
        for (const DayPrintLine& line : page) {
            if (!line.heading)
                seen << line.title;
        }
    }
    QStringList wanted;
    for (const DayPrintLine& line : print.lines) {
        if (!line.heading)
            wanted << line.title;
    }
    EXPECT_EQ(seen, wanted);
    EXPECT_GT(pages.size(), 4u);
    const QString file = desk.file("days.pdf");
    {
        QPdfWriter pdf(file);
        paintDays(print, pdf);
    }
    EXPECT_GT(QFileInfo(file).size(), 2000);
}

} // namespace ullage::app
