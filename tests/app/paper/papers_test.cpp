#include "app/paper/papers.h"

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

    std::vector<MonthBatch> batches()
    {
        std::vector<MonthBatch> all;
        const auto kept = book->batches(now(), true);
        if (!kept)
            qFatal("no batches");
        for (const ledger::Batch& batch : *kept)
            all.push_back({batch, ledger::happened(*book->events(batch.id))});
        return all;
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
    const auto cupboard = months.book->cupboard(JournalBook::now());
    ASSERT_TRUE(cupboard);
    const auto batches = months.batches();
    const MonthFigures november = monthFigures(batches, *cupboard, {2026, 11, 1});
    EXPECT_DOUBLE_EQ(november.developed, 5); // 2 + 3; the fixer's are the same films
    EXPECT_EQ(november.byPerson, (std::map<QString, double>{{"Ada", 2}, {"Ben", 3}}));
    EXPECT_EQ(november.bySolution, (std::map<std::string, double>{{"mq", 5}, {"fix", 5}}));
    ASSERT_EQ(november.mixed.size(), 1U);
    EXPECT_EQ(november.mixed[0]->batch.id, "fix-1");
    ASSERT_EQ(november.ended.size(), 1U);
    EXPECT_EQ(november.ended[0]->batch.id, "fix-1");
    const auto spent = november.spent.sums();
    ASSERT_EQ(spent.size(), 2U);
    EXPECT_EQ(spent.at("EUR").text(), "10.05"); // 9.80 + 0.25
    EXPECT_EQ(spent.at("USD").text(), "3.00");
    const MonthFigures december = monthFigures(batches, *cupboard, {2026, 12, 1});
    EXPECT_DOUBLE_EQ(december.developed, 1);
    EXPECT_EQ(december.spent.sums().at("EUR").text(), "5.00");
    EXPECT_TRUE(december.mixed.empty());
}

TEST(Papers, theMonthsReportHasItsTotals)
{
    JournalBook months;
    const auto cupboard = months.book->cupboard(JournalBook::now());
    ASSERT_TRUE(cupboard);
    const auto document = monthPaper(months.batches(), *cupboard, months.book->formulary(),
                                     {2026, 11, 1}, JournalBook::about());
    EXPECT_EQ(document.title, "November 2026");
    const PaperTable& people = tableOf(document, 0);
    EXPECT_TRUE(people.total);
    EXPECT_EQ(people.rows,
              (std::vector<QStringList>{{"Ada", "2"}, {"Ben", "3"}, {"Together", "5"}}));
    EXPECT_TRUE(allWords(document).contains("10.05\u00a0EUR + 3.00\u00a0USD"))
        << allWords(document).toStdString();
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
                  months.book->formulary(), JournalBook::about());
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
    const auto document = shoppingPaper(plan, formulary, JournalBook::about());
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
