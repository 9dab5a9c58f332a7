#include "app/paper/book_papers.h"
#include "app/paper/papers.h"

#include "app/words/local_calendar.h"
#include "core/ledger/statistics_reader.h"
#include "tests/app/paper/label_samples.h"
#include "tests/app/paper/paper_journal.h"

#include <QBuffer>

namespace ullage::app
{

using namespace testing;

namespace
{

class JournalBook
{
public:
    JournalBook()
    {
        auto store = store::SqlStore::open(m_folder.filePath("months.ullage"),
                                           {.access = store::Access::Create});
        if (!store)
            qFatal("no book");
        m_store = std::move(*store);
        auto opened = ledger::Book::open(
            *m_store, [] { return now(); }, [this] { return "id-" + std::to_string(++m_ids); });
        if (!opened)
            qFatal("no book on the store");
        book = std::move(*opened);
        QByteArray text = kTwoMonths;
        QBuffer buffer(&text);
        buffer.open(QIODevice::ReadOnly);
        const auto read = store::importJournal(*book, *m_store, buffer, QStringLiteral("months"));
        if (!read)
            qFatal("line %d: %s %s", read.error().line, read.error().field.c_str(),
                   read.error().text.c_str());
    }

    static chemistry::Instant now()
    {
        return std::chrono::sys_days(std::chrono::year{2026} / 12 / 7) + std::chrono::hours(10);
    }
    static PaperAbout about() { return {QStringLiteral("home"), now(), britishWording()}; }

    PaperDocument month(QDate first, chemistry::Instant at = now())
    {
        PaperAbout asked = about();
        asked.now = at;
        auto made = paperOf(*book, {PaperKind::Month, {}, first}, asked);
        if (!made)
            qFatal("no report: %s", made.error().field.c_str());
        return std::move(*made);
    }

private:
    QTemporaryDir m_folder;
    int m_ids = 0;
    std::unique_ptr<store::SqlStore> m_store;

public:
    std::unique_ptr<ledger::Book> book; ///< stands on the store
};

const PaperTable& tableOf(const PaperDocument& document, std::size_t which)
{
    for (const PaperBlock& block : document.blocks) {
        if (const auto* table = std::get_if<PaperTable>(&block); table && which-- == 0)
            return *table;
    }
    throw std::out_of_range("no such table");
}

QString allWords(const PaperDocument& document)
{
    QStringList words{document.title, document.under};
    for (const PaperBlock& block : document.blocks) {
        if (const auto* heading = std::get_if<PaperHeading>(&block))
            words << heading->text;
        else if (const auto* text = std::get_if<PaperWords>(&block))
            words << text->text;
        else if (const auto* table = std::get_if<PaperTable>(&block)) {
            for (const QStringList& row : table->rows)
                words << row.join(u' ');
        }
    }
    return words.join(u'\n');
}

} // namespace

TEST(Papers, aMonthAddsUpAsByHand)
{
    JournalBook months;
    const auto document = months.month({2026, 11, 1});
    EXPECT_EQ(document.title, "November 2026");
    // Five films developed; the fixer's are the same films. It did five and cost 3.00.
    const PaperTable& people = tableOf(document, 0);
    EXPECT_TRUE(people.total);
    EXPECT_EQ(people.rows,
              (std::vector<QStringList>{
                  {"Ben", "3", "1.80"}, {"Ada", "2", "1.20"}, {"Together", "5", "3.00"}}));
    EXPECT_EQ(people.columns.back().title, "Costs, USD");
    const PaperTable& solutions = tableOf(document, 1);
    ASSERT_EQ(solutions.rows.size(), 3U);
    EXPECT_EQ(solutions.rows[0][0], "Acid fixer");
    EXPECT_EQ(solutions.rows[0].mid(5), (QStringList{"3.00", "0.60"}));
    EXPECT_EQ(solutions.rows[1].mid(5), (QStringList{"", ""})) << "still in use";
    const PaperTable& mixed = tableOf(document, 2);
    ASSERT_EQ(mixed.rows.size(), 2U);
    EXPECT_EQ(mixed.rows[0].first(), "Fix 1");
    EXPECT_EQ(mixed.rows[0].last(), "3.00");
    const PaperTable& ended = tableOf(document, 3);
    EXPECT_EQ(ended.rows[0].mid(3), (QStringList{"5", "3.00", "0.60"}));
    const QString words = allWords(document);
    // 9.80, 0.25 and 2.00 of what is used up by now; the gloves have no price.
    EXPECT_TRUE(words.contains("Together 12.05\u00a0EUR + 3.00\u00a0USD")) << words.toStdString();
    EXPECT_TRUE(words.contains("1 thing bought without a price")) << words.toStdString();
    EXPECT_TRUE(words.contains("1 bottle still in use, not counted yet. Cost so far: not known."))
        << words.toStdString();
}

TEST(Papers, theNextMonthHasWhatIsItsOwn)
{
    JournalBook months;
    const auto document = months.month({2026, 12, 1});
    EXPECT_EQ(tableOf(document, 0).rows,
              (std::vector<QStringList>{{"Ada", "1", ""}, {"Together", "1", ""}}));
    EXPECT_TRUE(allWords(document).contains("Together 5.00\u00a0EUR."));
    EXPECT_TRUE(allWords(document).contains("Nothing was mixed") ||
                tableOf(document, 2).none == "Nothing was mixed.");
}

TEST(Papers, aMonthThatIsOverIsToldAsItWasAtItsEnd)
{
    JournalBook months;
    const auto early = months.month({2026, 11, 1}, JournalBook::now());
    const auto later = months.month({2026, 11, 1}, JournalBook::now() + std::chrono::hours(900));
    EXPECT_EQ(tableOf(early, 1).rows, tableOf(later, 1).rows);
}

TEST(Papers, aReportThatIsGivenUpIsNone)
{
    JournalBook months;
    PaperRequest request{PaperKind::Month, {}, {2026, 11, 1}};
    request.progress = [](int, int) { return false; };
    const auto made = paperOf(*months.book, request, JournalBook::about());
    ASSERT_FALSE(made);
    EXPECT_EQ(made.error().code, ErrorCode::Cancelled);
}

TEST(Papers, statisticsHaveTheirMonthsAndSums)
{
    JournalBook months;
    ledger::StatisticsRequest request;
    request.calendar = localCalendar();
    request.now = JournalBook::now();
    const auto so = months.book->statistics(request);
    ASSERT_TRUE(so && *so);
    const auto document =
        statisticsPaper(**so, months.book->formulary(), "all of it", JournalBook::about());
    EXPECT_EQ(document.title, "Statistics · all of it");
    const PaperTable& table = tableOf(document, 0);
    ASSERT_EQ(table.rows.size(), 4U); // October to December, and the sum
    EXPECT_EQ(table.rows[1].first(), "November 2026");
    EXPECT_EQ(table.rows[3][1], "6");
}

TEST(Papers, theShelfListHasEveryBottleThatEndsSoonestFirst)
{
    StarterShelf shelf;
    const auto bottles = shelf.bottles();
    const auto document = shelfPaper(bottles, JournalBook::about());
    const PaperTable& table = tableOf(document, 0);
    ASSERT_EQ(table.rows.size(), bottles.size());
    EXPECT_EQ(table.rows.front()[1], "MQ borax developer, 1+1"); // keeps a day
    EXPECT_TRUE(allWords(document).contains("not for drinking"));
    const auto none = shelfPaper({}, JournalBook::about());
    EXPECT_FALSE(tableOf(none, 0).none.isEmpty());
}

TEST(Papers, theCardTellsFiguresCurvesEventsAndCautions)
{
    JournalBook months;
    const auto batch = months.book->batch("dev-1", JournalBook::now());
    ASSERT_TRUE(batch);
    const auto document =
        cardPaper({*batch, ledger::assess(*batch)}, ledger::happened(*months.book->events("dev-1")),
                  {{}, false}, months.book->formulary(), JournalBook::about());
    EXPECT_EQ(tableOf(document, 0).rows.back(), (QStringList{"Cost so far", "not known"}));
    EXPECT_EQ(document.title, "Dev 1");
    const PaperTable& events = tableOf(document, 1);
    EXPECT_EQ(events.rows.size(), 4U); // mixed and three loads; what was taken back is not
    EXPECT_EQ(events.rows[1][2], "Ada");
    int charts = 0;
    for (const PaperBlock& block : document.blocks) {
        const auto* chart = std::get_if<PaperChart>(&block);
        if (!chart)
            continue;
        ++charts;
        for (const PaperCurve& curve : chart->curves) {
            for (const QPointF& point : curve.points) {
                EXPECT_GE(point.x(), 0);
                EXPECT_LE(point.x(), chart->xMax + 1e-9);
                EXPECT_LE(point.y(), chart->yMax + 1e-9);
            }
        }
    }
    EXPECT_EQ(charts, 2);
    EXPECT_TRUE(allWords(document).contains("food or drink bottle"));
}

// It said of a bottle that was found when it had been mixed.
TEST(Papers, theCardOfABottleFoundSaysSo)
{
    JournalBook months;
    auto batch = months.book->batch("dev-1", JournalBook::now());
    ASSERT_TRUE(batch);
    const auto titleOf = [&] {
        return tableOf(cardPaper({*batch, ledger::assess(*batch)}, {}, {{}, false},
                                 months.book->formulary(), JournalBook::about()),
                       0)
            .rows.front()
            .front();
    };
    EXPECT_EQ(titleOf(), "Mixed");
    batch->historyUnknown = true;
    batch->dateKnown = true;
    EXPECT_EQ(titleOf(), "Mixed");
    batch->dateKnown = false;
    EXPECT_EQ(titleOf(), "Found");
}

TEST(Papers, theCardTellsWhatTheBottleCost)
{
    JournalBook months;
    const auto card = paperOf(*months.book, {PaperKind::Card, "fix-1", {}}, JournalBook::about());
    ASSERT_TRUE(card);
    const auto& rows = tableOf(*card, 0).rows;
    ASSERT_GT(rows.size(), 2U);
    EXPECT_EQ(rows[rows.size() - 2], (QStringList{"Cost so far", "3.00\u00a0USD"}));
    EXPECT_EQ(rows.back(), (QStringList{"For each film done", "0.60\u00a0USD"}));
}

TEST(Papers, theShoppingListAddsUpAndSaysWhatHasNoPrice)
{
    formulary::Formulary formulary;
    formulary::Solution solution;
    solution.id = "mq";
    solution.name = "MQ borax";
    formulary.add(solution);
    cupboard::Plan plan;
    const auto each = ledger::Decimal::from("9.80");
    plan.toBuy = {{"mq", 3, chemistry::Millilitres(1000), JournalBook::now(), each, "EUR"},
                  {"mq", 1, chemistry::Millilitres(500), JournalBook::now(), {}, {}}};
    plan.cost.add(*each, "EUR", 3);
    plan.costKnown = false;
    const auto document = shoppingPaper(plan, {.weeks = 26}, formulary, JournalBook::about());
    const PaperTable& table = tableOf(document, 0);
    ASSERT_EQ(table.rows.size(), 3U);
    EXPECT_TRUE(table.columns[0].tick);
    EXPECT_EQ(table.rows[0].last(), "29.40\u00a0EUR"); // 3 × 9.80
    EXPECT_EQ(table.rows[2].last(), "29.40\u00a0EUR");
    EXPECT_EQ(table.rows[1][5], "not known");
    EXPECT_TRUE(allWords(document).contains("no price"));
}

TEST(Papers, theHandOverListSumsVolumeAndSilverAndLeavesLinesToSign)
{
    ledger::CanHere fixer;
    fixer.can.name = "Can 1";
    fixer.can.holds = ledger::Waste::Fixer;
    fixer.stock.volume = chemistry::Millilitres(1000);
    fixer.stock.silver = 3.5;
    const auto day = JournalBook::now() - std::chrono::hours(24 * 10);
    fixer.stock.handed = {{"h", day, "a firm", chemistry::Millilitres(2000), 5, "42"}};
    fixer.stock.poured = {
        {"before", day - std::chrono::hours(24), "fix-0", chemistry::Millilitres(2000), 5.0},
        {"since", day + std::chrono::hours(24), "fix-1", chemistry::Millilitres(1000), 3.5}};
    ledger::CanHere developer;
    developer.can.name = "Can 2";
    developer.can.holds = ledger::Waste::Developer;
    developer.stock.volume = chemistry::Millilitres(500);
    const auto document = handOverPaper({fixer, developer}, {}, JournalBook::about());
    const PaperTable& table = tableOf(document, 0);
    ASSERT_EQ(table.rows.size(), 3U);
    EXPECT_EQ(table.rows[2][2], "1,500\u00a0ml");
    EXPECT_EQ(table.rows[2][3], "3.5 g");
    const PaperTable& poured = tableOf(document, 1);
    ASSERT_EQ(poured.rows.size(), 1U); // only since it was handed over
    EXPECT_EQ(poured.rows[0][1], "fix-1");
    const QString words = allWords(document);
    EXPECT_TRUE(words.contains("09\u00a001\u00a004*")) << words.toStdString();
    int blanks = 0;
    for (const PaperBlock& block : document.blocks)
        blanks += std::holds_alternative<PaperBlank>(block) ? 1 : 0;
    EXPECT_EQ(blanks, 3);
}

} // namespace ullage::app
