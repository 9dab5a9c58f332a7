// The day book over the store: what each filter lets through, in order, and by which index.
#include "core/store/day_book.h"

#include "core/ledger/statistics_reader.h"
#include "core/store/journal_codec.h"
#include "tests/core/store/temp_book.h"

#include <algorithm>
#include <set>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

QByteArray line(const char* id, const char* batch, const char* at, const char* rest)
{
    return QByteArray(R"({"type":"event","id":")") + id + R"(","batch":")" + batch + R"(","at":")" +
           at + R"(","kind":)" + rest + "}\n";
}

const QByteArray kFixer = R"({"type":"solution","id":"fx","name":"Klärbad","role":"fixer"})"
                          "\n";
const QByteArray kSecond =
    R"({"type":"vessel","id":"b2","name":"Clear 2","capacity_ml":1030,"material":"pet"})"
    "\n";

// A week of two bottles.
const QByteArray kWeek =
    kHead + kSolution + kFixer + kVessel + kSecond +
    line("m1", "d1", "2026-06-01T10:00:00Z",
         R"("mixed","solution":"mq","vessel":"b1","volume_ml":1000,"name":"Dev 1")") +
    line("m2", "f1", "2026-06-01T10:00:00Z",
         R"("mixed","solution":"fx","vessel":"b2","volume_ml":1000,"name":"Fix 1","by":"Bo")") +
    line("r1", "d1", "2026-06-03T19:00:00Z",
         R"("processed","films":[{"format":"120","count":2}],"run":"run-1","by":"Ada")") +
    line("r2", "f1", "2026-06-03T19:00:00Z",
         R"("processed","films":[{"format":"120","count":2}],"run":"run-1","by":"Ada")") +
    line("rt", "d1", "2026-06-03T19:00:00Z",
         R"("noted","text":"run-times develop 600/605 run=run-1")") +
    R"({"type":"film","id":"fi1","run":"run-1","format":"120","name":"Ölhafen"})"
    "\n" +
    line("n1", "d1", "2026-06-04T08:00:00Z", R"("noted","text":"run-times are long today")") +
    line("t1", "f1", "2026-06-05T08:00:00Z", R"("clearing-test","seconds":60,"temperature_c":20)") +
    line("n2", "f1", "2026-06-02T08:00:00Z", R"("noted","text":"100 % \"clear\"")") +
    line("v1", "d1", "2026-06-06T08:00:00Z", R"("voided","voids":"n1","why":"wrong bottle")") +
    line("g1", "f1", "2026-06-07T08:00:00Z", R"("discarded","how":"collected","by":"Bo")");

class DayBookTest : public ::testing::Test
{
protected:
    DayBookTest()
    {
        const auto done = book.import(kWeek);
        EXPECT_TRUE(done) << done.error().text << done.error().field;
    }

    // Ids of everything, page by page of two.
    std::vector<std::string> ids(const DayFilter& filter)
    {
        DayBook days(*book.store);
        std::vector<std::string> found;
        std::optional<DayKey> after;
        for (int pages = 0; pages < 20; ++pages) {
            const auto page = days.page(filter, after, 2);
            EXPECT_TRUE(page) << page.error().text;
            for (const DayEntry& entry : page->entries) {
                found.push_back(entry.event.id);
            }
            if (!page->more) {
                break;
            }
            after = page->last;
        }
        const auto totals = days.count(filter);
        EXPECT_TRUE(totals);
        EXPECT_EQ(totals->entries, static_cast<int>(found.size()));
        return found;
    }
    std::vector<std::string> idsOfText(const std::string& text)
    {
        DayFilter filter;
        filter.words = dayWords(QString::fromStdString(text));
        return ids(filter);
    }
    using Ids = std::vector<std::string>;

    TempBook book;
};

QStringList planOf(SqlStore& store, const Query& query)
{
    Statement statement(store.connection(), "EXPLAIN QUERY PLAN " + query.sql);
    auto rows = statement.runWith(query.values);
    EXPECT_TRUE(rows);
    QStringList steps;
    while (*rows->next()) {
        steps << QString::fromStdString(rows->text(3));
    }
    return steps;
}

} // namespace

TEST_F(DayBookTest, NewestFirstWithRunsAsOneRow)
{
    EXPECT_EQ(ids({}), (Ids{"g1", "t1", "n1", "r1", "n2", "m2", "m1"}));
}

TEST_F(DayBookTest, ARowKnowsItsBottlesFilmsAndWhatTookItBack)
{
    DayBook days(*book.store);
    const auto page = days.page({}, {}, 10);
    ASSERT_TRUE(page);
    const DayEntry& note = page->entries[2];
    ASSERT_TRUE(note.taken);
    EXPECT_EQ(note.taken->voiding, "v1");
    EXPECT_EQ(note.taken->why, "wrong bottle");
    EXPECT_EQ(note.name, "Dev 1");
    const DayEntry& run = page->entries[3];
    ASSERT_EQ(run.baths.size(), 2u);
    EXPECT_EQ(run.baths[0].name, "Dev 1");
    EXPECT_EQ(run.baths[1].name, "Fix 1");
    ASSERT_EQ(run.films.size(), 1u);
    EXPECT_EQ(run.films[0].name, "Ölhafen");
    EXPECT_EQ(run.event.by, "Ada");
    EXPECT_FALSE(run.taken);
    ASSERT_FALSE(page->more);
}

TEST_F(DayBookTest, ARunIsTakenBackWhenAllOfItIs)
{
    DayBook days(*book.store);
    ASSERT_TRUE(book.book->voidEvent("r1", "half"));
    EXPECT_FALSE(days.page({}, {}, 10)->entries[3].taken);
    EXPECT_TRUE(days.page({}, {}, 10)->entries[3].baths[0].taken);
    ASSERT_TRUE(book.book->undo());
    EXPECT_FALSE(days.page({}, {}, 10)->entries[3].baths[0].taken) << "the taking back is undone";
}

// Also under an id that was given anew since: as it was then.
TEST_F(DayBookTest, WhatHappenedInTheCupboardKnowsItsThing)
{
    const auto done = book.import(
        kHead +
        R"({"type":"supply","id":"s1","name":"Gloves","unit":"pairs","amount":50})"
        "\n"
        R"({"type":"event","id":"x1","kind":"taken","at":"2026-06-08T08:00:00Z","item":"s1","amount":13})"
        "\n"
        R"({"type":"supply","id":"s2","name":"Gloves, large","unit":"pairs","amount":50,"replaces":"s1"})"
        "\n");
    ASSERT_TRUE(done) << done.error().text << done.error().field;
    DayBook days(*book.store);
    const auto page = days.page({}, {}, 10);
    ASSERT_TRUE(page);
    const auto& entries = page->entries;
    ASSERT_EQ(entries[0].event.id, "x1");
    ASSERT_TRUE(entries[0].thing);
    EXPECT_EQ(std::get<ledger::Supply>(entries[0].thing->what).name, "Gloves");
    EXPECT_FALSE(entries[1].thing) << "of a bottle";
}

// Entered on the third, and put right to the fifth.
TEST_F(DayBookTest, ARunWhoseDateWasCorrectedStandsAtItsNewDay)
{
    const char* const films = R"("processed","films":[{"format":"120","count":2}],"run":"run-1")";
    const auto again = book.import(
        kHead + line("r1c", "d1", "2026-06-05T19:00:00Z", films) +
        line("r2c", "f1", "2026-06-05T19:00:00Z", films) +
        line("v2", "d1", "2026-06-08T08:00:00Z", R"("voided","voids":"r1","why":"wrong day")") +
        line("v3", "f1", "2026-06-08T08:00:00Z", R"("voided","voids":"r2","why":"wrong day")"));
    ASSERT_TRUE(again) << again.error().text << again.error().field;
    EXPECT_EQ(ids({}), (Ids{"g1", "r1c", "t1", "n1", "n2", "m2", "m1"}));
    EXPECT_EQ(ids({.batch = "d1"}), (Ids{"r1c", "n1", "m1"}));
    EXPECT_EQ(ids({.kinds = {"processed"}}), (Ids{"r1c"}));
    EXPECT_EQ(idsOfText("ölhafen"), (Ids{"r1c"}));
    DayBook days(*book.store);
    const auto page = days.page({.kinds = {"processed"}}, {}, 10);
    ASSERT_TRUE(page);
    EXPECT_EQ(page->entries[0].baths.size(), 2u);
    EXPECT_FALSE(page->entries[0].taken);
    ASSERT_TRUE(book.book->voidEvent("r1c", "no"));
    ASSERT_TRUE(book.book->voidEvent("r2c", "no"));
    EXPECT_EQ(ids({.kinds = {"processed"}}), (Ids{"r1"})) << "nothing of it stands any more";
}

// Through another bottle, of another film: one row, with what it says now.
TEST_F(DayBookTest, ARunCorrectedToAnotherBottleShowsThatOneAlone)
{
    ASSERT_TRUE(book.import(kHead + line("m3", "d2", "2026-06-01T11:00:00Z",
                                         R"("mixed","solution":"mq","vessel":"b1","volume_ml":500,)"
                                         R"("name":"Dev 2")")));
    const auto events = *book.book->events("d1");
    const auto r1 = std::find_if(events.begin(), events.end(),
                                 [](const ledger::Event& event) { return event.id == "r1"; });
    ASSERT_NE(r1, events.end());
    ledger::Event instead = *r1;
    instead.batch = "d2";
    ledger::Event fixing = instead;
    fixing.batch = "f1";
    const ledger::FilmRecord film{.id = {},
                                  .run = "run-1",
                                  .format = "120",
                                  .name = "Ölhafen bei Nacht",
                                  .notes = {},
                                  .replaces = "fi1"};
    ASSERT_TRUE(book.book->correct({"r1", "r2"}, {instead, fixing}, "misread", {film}));
    DayBook days(*book.store);
    const auto run = [&] { return days.page({.kinds = {"processed"}}, {}, 10)->entries; };
    ASSERT_EQ(run().size(), 1u);
    ASSERT_EQ(run()[0].baths.size(), 2u);
    EXPECT_EQ(run()[0].baths[0].name, "Dev 2");
    EXPECT_FALSE(run()[0].baths[0].taken);
    EXPECT_EQ(run()[0].event.batch, "d2");
    ASSERT_EQ(run()[0].films.size(), 1u);
    EXPECT_EQ(run()[0].films[0].name, "Ölhafen bei Nacht");
    EXPECT_EQ(run()[0].films[0].id, "fi1") << "as marks name it";
    EXPECT_EQ(days.lines(run()[0])->size(), 4u) << "two baths, both lines of the film";
    EXPECT_TRUE(days.page({.batch = "d1", .kinds = {"processed"}}, {}, 10)->entries.empty());
    const auto entries = *book.book->events("d2");
    const std::vector<std::string> both{entries.back().id, book.book->events("f1")->back().id};
    ASSERT_TRUE(book.book->voidEvents(both, "never"));
    ASSERT_EQ(run().size(), 1u);
    EXPECT_TRUE(run()[0].taken);
    ASSERT_EQ(run()[0].baths.size(), 2u) << "brought back is what stood last";
    EXPECT_EQ(run()[0].baths[0].name, "Dev 2");
    ASSERT_TRUE(book.book->undo());
    ASSERT_TRUE(book.book->undo());
    ASSERT_EQ(run()[0].baths.size(), 2u);
    EXPECT_EQ(run()[0].baths[0].name, "Dev 1");
    EXPECT_EQ(run()[0].films[0].name, "Ölhafen");
}

TEST_F(DayBookTest, Filters)
{
    EXPECT_EQ(ids({.batch = "d1"}), (Ids{"n1", "r1", "m1"}));
    EXPECT_EQ(ids({.batch = "f1"}), (Ids{"g1", "t1", "r2", "n2", "m2"}));
    EXPECT_EQ(ids({.kinds = {"noted"}}), (Ids{"n1", "n2"}));
    EXPECT_EQ(ids({.kinds = {"noted", "mixed", "discarded"}}), (Ids{"g1", "n1", "n2", "m2", "m1"}));
    EXPECT_EQ(ids({.batch = "f1", .kinds = {"noted", "mixed"}}), (Ids{"n2", "m2"}));
    EXPECT_EQ(ids({.person = "Bo"}), (Ids{"g1", "m2"}));
    EXPECT_EQ(ids({.kinds = {"mixed"}, .person = "Bo"}), (Ids{"m2"}));
    EXPECT_EQ(ids({.kinds = {"voided"}}), Ids{}) << "shown by striking out what it took back";
    using namespace std::chrono;
    const auto day = [](unsigned number) {
        return chemistry::Instant(sys_days(year(2026) / 6 / number));
    };
    EXPECT_EQ(ids({.from = day(3), .until = day(5)}), (Ids{"n1", "r1"}));
    EXPECT_EQ(ids({.kinds = {"noted"}, .until = day(3)}), (Ids{"n2"}));
    EXPECT_EQ(ids({.batch = "nothing"}), Ids{});
}

TEST_F(DayBookTest, WordsAreFoundWhereTheyAreShown)
{
    EXPECT_EQ(idsOfText("CLEAR"), (Ids{"n2"}));
    EXPECT_EQ(idsOfText("100 %"), (Ids{"n2"})) << "no wildcard";
    EXPECT_EQ(idsOfText("\"clear\""), (Ids{"n2"}));
    EXPECT_EQ(idsOfText("0_%"), Ids{});
    EXPECT_EQ(idsOfText("fix 1"), (Ids{"g1", "t1", "r1", "n2", "m2"})) << "the run went through it";
    EXPECT_EQ(idsOfText("ölhafen"), (Ids{"r1"}));
    EXPECT_EQ(idsOfText("ada"), (Ids{"r1"}));
    EXPECT_EQ(idsOfText("collected"), (Ids{"g1"}));
    EXPECT_EQ(idsOfText("volume_ml"), Ids{}) << "names of fields are not words";
    DayFilter worded{.words = {{"zzz", {"clearing-test"}, {"mq"}, {}, {}}}};
    EXPECT_EQ(ids(worded), (Ids{"t1", "n1", "r1", "m1"}));
    EXPECT_EQ(idsOfText("KLÄRBAD collected"), (Ids{"g1"})) << "every word, wherever it stands";
    EXPECT_EQ(idsOfText("wrong"), (Ids{"n1"})) << "why it was taken back";
}

TEST_F(DayBookTest, ASearchCanBeGivenUp)
{
    DayBook days(*book.store);
    DayFilter filter;
    filter.words = dayWords("clear");
    const auto page = days.page(filter, {}, 10, [] { return true; });
    ASSERT_TRUE(page);
    EXPECT_TRUE(page->stopped);
    EXPECT_TRUE(days.count(filter, [] { return true; })->stopped);
}

TEST_F(DayBookTest, PeopleAndBottles)
{
    DayBook days(*book.store);
    EXPECT_EQ(*days.people(), (Ids{"Ada", "Bo"}));
    const auto bottles = *days.bottles(10);
    ASSERT_EQ(bottles.size(), 2u);
    EXPECT_EQ(bottles[0].name, "Dev 1");
    EXPECT_EQ(days.bottles(1)->size(), 1u);
}

TEST_F(DayBookTest, LinesOfARowAreThoseOfTheJournal)
{
    DayBook days(*book.store);
    const auto page = *days.page({}, {}, 10);
    std::vector<std::string> seen;
    for (const DayEntry& entry : page.entries) {
        const auto lines = days.lines(entry);
        ASSERT_TRUE(lines);
        for (const auto& [seq, text] : *lines) {
            EXPECT_TRUE(book.text().contains(text + '\n'));
            seen.push_back(decodeStored(text)->id());
        }
    }
    EXPECT_EQ(seen, (Ids{"g1", "t1", "n1", "v1", "r1", "r2", "fi1", "n2", "m2", "m1"}));
}

// Neither sorts nor walks the whole book, however long it is.
TEST_F(DayBookTest, PagesGoByAnIndex)
{
    const DayKey after{1'780'000'000'000, 5};
    const auto now = testNow();
    const std::vector<std::pair<DayFilter, QString>> cases{
        {{}, "entry_by_time"},
        {{.from = now}, "entry_by_time"},
        {{.batch = "d1"}, "entry_by_batch"},
        {{.batch = "d1", .kinds = {"noted", "mixed"}, .until = now}, "entry_by_batch"},
        {{.person = "Ada"}, "entry_by_person"},
        {{.kinds = {"noted"}}, "entry_by_kind"},
        {{.kinds = {"noted", "mixed"}}, "entry_by_kind"},
    };
    for (const auto& [filter, index] : cases) {
        for (const auto& key : {std::optional<DayKey>(), std::optional(after)}) {
            for (const Query& query : {dayRows(filter, key, 100), daySliceEnd(filter, key, 9)}) {
                const QStringList plan = planOf(*book.store, query);
                const QString all = plan.join('\n');
                if (query.sql.contains("OFFSET") && !filter.kinds.empty()) {
                    continue; // slices go by no kind
                }
                EXPECT_TRUE(all.contains(index)) << all.toStdString();
                EXPECT_FALSE(all.contains("SCAN e\n") || all.endsWith("SCAN e"))
                    << all.toStdString();
                EXPECT_FALSE(all.contains("FOR ORDER BY") && index != "entry_by_kind")
                    << all.toStdString();
            }
        }
    }
}

TEST_F(DayBookTest, StatisticsOfABookAreThoseOfItsBatches)
{
    ledger::StatisticsRequest request;
    request.now = testNow();
    request.calendar.startOf = [](std::chrono::year_month_day day) -> chemistry::Instant {
        return std::chrono::sys_days(day);
    };
    request.calendar.monthOf = [](chemistry::Instant at) {
        const std::chrono::year_month_day day(std::chrono::floor<std::chrono::days>(at));
        return day.year() / day.month();
    };
    int told = 0;
    request.progress = [&](int done, int all) {
        EXPECT_EQ(done, ++told);
        EXPECT_EQ(all, 2);
        return true;
    };
    const auto read = readStatistics(*book.store, request);
    ASSERT_TRUE(read && *read);
    EXPECT_DOUBLE_EQ((*read)->developed.value(), 2);
    EXPECT_EQ((*read)->solutions.size(), 2u);
    request.progress = [](int, int) { return false; };
    EXPECT_FALSE(*readStatistics(*book.store, request));
}

// A book of before is brought up to date with the people its lines name.
TEST(DayBookSteps, PeopleOfAnOlderBookAreFound)
{
    TempBook fresh;
    const QString path = fresh.inFolder("older.ullage");
    StoreOptions first;
    first.access = Access::Create;
    first.steps = {schemaSteps().front()};
    {
        auto store = SqlStore::open(path, first);
        ASSERT_TRUE(store);
        Connection& connection = (*store)->connection();
        ASSERT_TRUE(connection.run("INSERT INTO action (mode, what, subject) VALUES (3, 'x', '')"));
        int seq = 0;
        for (const char* more : {R"(,"by":"Ada")", "", R"(,"by":7)"}) {
            const QString id = QString::number(++seq);
            const QString body = QStringLiteral(R"({"type":"event","id":"%1","batch":"b",)"
                                                R"("kind":"opened","at":"2026-06-01T10:00:00Z"%2})")
                                     .arg(id, QLatin1String(more));
            ASSERT_TRUE(connection.run(
                QStringLiteral("INSERT INTO entry (type, id, action, batch, kind, at_ms, body) "
                               "VALUES ('event', '%1', 1, 'b', 'opened', 5, '%2')")
                    .arg(id, body)));
        }
    }
    auto upgraded = SqlStore::open(path);
    ASSERT_TRUE(upgraded) << upgraded.error().text;
    EXPECT_EQ((*upgraded)->outcome(), SchemaOutcome::Upgraded);
    EXPECT_EQ(*DayBook(**upgraded).people(), std::vector<std::string>{"Ada"});
    EXPECT_FALSE((*upgraded)->connection().run("UPDATE entry SET person = 'Bo'")) << "for good";
}
