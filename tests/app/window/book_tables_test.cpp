// Tables of the book through the File menu, and what stands in them.
#include "app/window/book_tables.h"

#include "app/window/table_place.h"
#include "core/ledger/entry.h"
#include "tests/app/time_zone.h"
#include "tests/app/window/window_kit.h"

#include <QFile>

#include <algorithm>

namespace ullage::app
{

namespace
{

class BookTables : public testing::Test
{
protected:
    BookTables()
    {
        desk.pass(-10);
        dev = desk.mix("starter-mq-borax", "starter-glass-1000", 900, "=Dev 1");
        desk.pass(10);
        desk.run(dev, 4);
    }
    QByteArrayList lines(BookTable which)
    {
        auto store = store::SqlStore::open(desk.bookPath(), {.access = store::Access::Read});
        EXPECT_TRUE(store);
        const auto table = bookTable(which, **store, desk.now(), desk.preferences().wording());
        EXPECT_TRUE(table) << bookTableName(which).toStdString();
        if (!table)
            return {};
        for (const auto& row : table->rows)
            EXPECT_EQ(static_cast<qsizetype>(row.size()), table->headings.size())
                << bookTableName(which).toStdString();
        QByteArrayList found = csvOf(*table).split('\n');
        EXPECT_EQ(found.takeLast(), QByteArray());
        return found;
    }

    Desk desk;
    std::string dev;
    const InZone zone{"Europe/Berlin"};
};

} // namespace

TEST_F(BookTables, HaveTheBottlesAsTheShelfHasThem)
{
    const QByteArrayList found = lines(BookTable::Bottles);
    ASSERT_EQ(found.size(), 2);
    EXPECT_TRUE(
        found[0].startsWith("Bottle,Solution,Stands in,\"Volume, ml\",\"Mixed (Europe/Berlin, "
                            "UTC+01:00, UTC+02:00)\",Films done,"))
        << found[0].toStdString();
    EXPECT_TRUE(found[1].startsWith("'=Dev 1,")) << found[1].toStdString();
    EXPECT_TRUE(found[1].contains(",900,2026-11-15 16:30:00,4,")) << found[1].toStdString();
}

TEST_F(BookTables, KeepABottleThatEndedWhereAllAreWanted)
{
    desk.record(dev, ledger::Discarded{});
    EXPECT_EQ(lines(BookTable::Bottles).size(), 1);
    const QByteArrayList all = lines(BookTable::AllBottles);
    ASSERT_EQ(all.size(), 2);
    EXPECT_TRUE(all[1].endsWith(",,2026-11-25 16:30:00\r")) << all[1].toStdString();
}

TEST_F(BookTables, HaveWhatStandsInTheCupboardInItsUnit)
{
    ledger::Packet packet;
    packet.id = "fix";
    packet.solution = "starter-acid-fixer";
    packet.form = formulary::Form::Liquid;
    packet.volume = chemistry::Millilitres(1250);
    packet.makes = chemistry::Millilitres(5000);
    packet.useBy = "2028-03-31";
    packet.cost = ledger::Decimal::from("9.80");
    packet.currency = "EUR";
    packet.place = "shelf";
    ledger::Container can;
    can.id = "can";
    can.name = "Can 1";
    can.holds = ledger::Waste::Fixer;
    can.capacity = chemistry::Millilitres(10000);
    ASSERT_TRUE(desk.door().add(std::vector<ledger::CupboardLine>{packet, can}));
    const QByteArrayList found = lines(BookTable::Cupboard);
    ASSERT_EQ(found.size(), 2);
    EXPECT_TRUE(found[1].contains(",1250,ml,,")) << found[1].toStdString();
    EXPECT_TRUE(found[1].endsWith(",9.80,EUR,shelf\r")) << found[1].toStdString();
    const QByteArrayList cans = lines(BookTable::Cans);
    ASSERT_EQ(cans.size(), 2);
    EXPECT_TRUE(cans[1].startsWith("Can 1,Fixer,10000,0,0,")) << cans[1].toStdString();
}

TEST_F(BookTables, CountFilmsByMonthAndSolution)
{
    const QByteArrayList months = lines(BookTable::Months);
    ASSERT_EQ(months.size(), 2);
    EXPECT_EQ(months[1], "2026-11,4\r");
    const QByteArrayList solutions = lines(BookTable::BySolution);
    ASSERT_EQ(solutions.size(), 2);
    EXPECT_TRUE(solutions[1].endsWith(",4,0,,\r")) << solutions[1].toStdString();
    EXPECT_EQ(lines(BookTable::Ends).size(), 1) << "none ended yet";
    desk.record(dev, ledger::Discarded{});
    const QByteArrayList ends = lines(BookTable::Ends);
    EXPECT_EQ(ends.size(), 6) << "each cause";
    EXPECT_EQ(std::count_if(ends.begin(), ends.end(),
                            [](const QByteArray& line) { return line.endsWith(",1\r"); }),
              1);
}

TEST_F(BookTables, AreAllReadOfAnyBook)
{
    for (int i = 0; i < kBookTables; ++i)
        EXPECT_FALSE(lines(static_cast<BookTable>(i)).isEmpty());
    EXPECT_GT(lines(BookTable::Solutions).size(), 3);
}

TEST_F(BookTables, AreExportedFromTheMenuThoseOfThePageFirst)
{
    Window at(desk);
    at.window.showPage(Page::Cupboard);
    const TablePlace* place = at.controller.findChild<TablePlace*>();
    ASSERT_NE(place, nullptr);
    EXPECT_EQ(place->offered().front(), BookTable::Cupboard);
    at.window.showPage(Page::Shelf);
    EXPECT_EQ(place->offered().front(), BookTable::Bottles);
    at.asked.answerWay(0);
    at.asked.answer(desk.file("bottles"));
    at.action("Export a table")->trigger();
    ASSERT_TRUE(QTest::qWaitFor([&] { return at.asked.asked().size() >= 3; }, 10'000));
    EXPECT_EQ(at.asked.asked()[1], "Export a table|bottles-in-use.csv");
    EXPECT_TRUE(at.asked.asked()[2].contains("1 row")) << at.asked.asked()[2].toStdString();
    QFile file(desk.file("bottles.csv"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().contains("'=Dev 1,"));
}

TEST_F(BookTables, NeverTakeThePlaceOfTheBook)
{
    const QByteArray before = desk.journal();
    Window at(desk);
    at.asked.answerWay(0);
    at.asked.answer(desk.bookPath());
    at.action("Export a table")->trigger();
    EXPECT_EQ(at.asked.asked().size(), 3);
    EXPECT_EQ(desk.journal(), before);
}

} // namespace ullage::app
