// A damaged book at the command line: said with its entries, never shown as what was entered, and
// never with the exit code of success.
#include "tests/app/cli/cli_kit.h"
#include "tests/core/store/damaged_book.h"

#include <QJsonArray>
#include <QJsonDocument>

using namespace ullage::app;
using namespace ullage::app::testing;
namespace st = ullage::store::testing;

namespace
{

class DamageTest : public CommandTest
{
protected:
    // Two bottles of the same developer in two vessels, in the usual book.
    DamageTest()
    {
        const QByteArray second =
            R"({"type":"vessel","id":"b2","name":"Amber 2","capacity_ml":520,"material":"glass"})"
            "\n"
            R"({"type":"event","id":"e3","batch":"dev-2","kind":"mixed",)"
            R"("at":"2026-06-04T10:00:00Z","solution":"mq","vessel":"b2","volume_ml":500})"
            "\n";
        EXPECT_EQ(run({"import", write("start.jsonl", st::kStart + second)}).code, kDone);
    }
    [[nodiscard]] QString book() { return path("home.ullage"); }
};

} // namespace

// One bad byte in a definition: what does not rest on it is read, and the entry is named.
TEST_F(DamageTest, ABadByteInADefinitionHidesOnlyWhatRestsOnIt)
{
    st::tamper(book(), {"UPDATE entry SET body = replace(body, 'Amber 2', 'Amber ' || char(1)) "
                        "WHERE id = 'b2'"});
    const Answer report = run({"report"});
    EXPECT_EQ(report.code, kStoreFailed);
    EXPECT_TRUE(report.out.contains("Dev 1")) << report.out.constData();
    EXPECT_EQ(report.out.count("Not shown"), 1) << report.out.constData();
    EXPECT_TRUE(report.err.contains("entry 5 (vessel “b2”) is not as it was entered."))
        << report.err.constData();
    EXPECT_TRUE(report.err.contains("dev-2")) << "which bottle that hides";

    const Answer check = run({"check"});
    EXPECT_EQ(check.code, kStoreFailed);
    EXPECT_TRUE(check.err.contains("entry 5 (vessel “b2”)")) << check.err.constData();

    const Answer lines = run({"export", "-"});
    EXPECT_EQ(lines.code, kStoreFailed);
    EXPECT_TRUE(lines.err.contains("entry 5 (vessel “b2”)")) << lines.err.constData();
    EXPECT_TRUE(lines.out.contains("\"id\":\"e3\""));
    EXPECT_FALSE(lines.out.contains("\"id\":\"b2\""));
}

TEST_F(DamageTest, AChangedEventIsNotShown)
{
    st::tamper(book(), {"UPDATE entry SET body = replace(body, '\"volume_ml\":500', "
                        "'\"volume_ml\":510'), volume_ml = 510 WHERE id = 'e3'"});
    const Answer report = run({"report"});
    EXPECT_EQ(report.code, kStoreFailed);
    EXPECT_TRUE(report.out.contains("Dev 1"));
    // It has its row, and nothing of what was changed in it.
    EXPECT_TRUE(report.out.contains("dev-2")) << report.out.constData();
    EXPECT_EQ(report.out.count("Not shown"), 1) << report.out.constData();
    EXPECT_FALSE(report.out.contains("510"));
    // By what a person knows it by, not by its id.
    EXPECT_TRUE(report.err.contains("entry 6 (Mixed, dev-2, ")) << report.err.constData();
    EXPECT_FALSE(report.err.contains("e3")) << report.err.constData();
    EXPECT_TRUE(report.err.contains(" is not as it was entered.")) << report.err.constData();

    // A page with sums leaves nothing out: it says of which bottle, and what to do.
    const Answer page = run({"paper", "month", path("month.pdf"), "--month", "2026-06"});
    EXPECT_EQ(page.code, kStoreFailed);
    EXPECT_TRUE(page.err.contains("entry 6 (Mixed, dev-2, ")) << page.err.constData();
    EXPECT_TRUE(page.err.contains("ullage check")) << page.err.constData();
    EXPECT_FALSE(QFile::exists(path("month.pdf")));
}

// All that is wrong, each by its name: the bottle of a batch, the kind and the moment of an entry.
TEST_F(DamageTest, CheckNamesWhatAPersonKnows)
{
    st::tamper(book(), {"UPDATE entry SET body = replace(body, 'Dev 1', 'Dev 7') WHERE id = 'e1'",
                        "DELETE FROM entry WHERE id = 'e2'"});
    const Answer check = run({"check"});
    EXPECT_EQ(check.code, kStoreFailed);
    EXPECT_TRUE(check.err.contains("entry 3 (Mixed, Dev 1, ")) << check.err.constData();
    EXPECT_TRUE(check.err.contains("entry 4 is missing. They lay between "))
        << check.err.constData();
    EXPECT_TRUE(check.err.contains("the batch “Dev 1” has other events")) << check.err.constData();
    EXPECT_FALSE(check.err.contains("“e1”")) << check.err.constData();
    EXPECT_FALSE(check.err.contains("dev-1")) << check.err.constData();
}

TEST_F(DamageTest, EveryBottleThatIsNotShownHasARow)
{
    st::tamper(book(), {"UPDATE entry SET body = replace(body, '\"volume_ml\":500', "
                        "'\"volume_ml\":510'), volume_ml = 510 WHERE id = 'e3'",
                        "UPDATE entry SET body = replace(body, '\"count\":2', '\"count\":1') "
                        "WHERE id = 'e2'"});
    const Answer report = run({"report"});
    EXPECT_EQ(report.code, kStoreFailed);
    EXPECT_EQ(report.out.count("Not shown"), 2) << report.out.constData();
    EXPECT_TRUE(report.err.contains("Dev 1")) << report.err.constData();
    EXPECT_TRUE(report.err.contains("dev-2")) << report.err.constData();

    const Answer json = run({"report", "--json"});
    EXPECT_EQ(json.code, kStoreFailed);
    const QJsonArray rows = QJsonDocument::fromJson(json.out).array();
    ASSERT_EQ(rows.size(), 2) << json.out.constData();
    EXPECT_EQ(rows[0]["name"], "Dev 1") << "in order of mixing";
    EXPECT_EQ(rows[1]["batch"], "dev-2");
    for (const QJsonValue& row : rows) {
        EXPECT_TRUE(row["verdict"].isNull());
        EXPECT_TRUE(row["volume_ml"].isNull());
        EXPECT_EQ(row["reasons"][0]["code"], "not-as-entered");
    }
    EXPECT_EQ(rows[1]["reasons"][0]["entry"], 6);
}

TEST_F(DamageTest, ARemovedLastEventIsSaid)
{
    st::tamper(book(),
               {"DELETE FROM entry WHERE id = 'e3'", "DELETE FROM batch WHERE id = 'dev-2'"});
    for (const QStringList& words :
         {QStringList{"report"}, {"export", "-"}, {"check"}, {"report", "--json"}}) {
        const Answer answer = run(words);
        EXPECT_EQ(answer.code, kStoreFailed) << words.front().toStdString();
        EXPECT_TRUE(answer.err.contains("entry 6 is missing.")) << answer.err.constData();
    }
}

TEST_F(DamageTest, AGuardThatWasDroppedOrChangedIsFound)
{
    for (const char* deed :
         {"DROP TRIGGER entry_is_kept",
          "CREATE TRIGGER entry_is_kept BEFORE DELETE ON entry BEGIN SELECT 1; END",
          "DROP INDEX entry_by_kind"}) {
        const auto connection =
            ullage::store::Connection::open(book(), ullage::store::FileMode::Write, 5000);
        ASSERT_TRUE(connection);
        ASSERT_TRUE((*connection)->run(deed)) << deed;
        const Answer check = run({"check"});
        EXPECT_EQ(check.code, kStoreFailed) << deed;
        const char* name = QByteArray(deed).contains("TRIGGER") ? "entry_is_kept" : "entry_by_kind";
        EXPECT_TRUE(check.err.contains(name)) << check.err.constData();
    }
}

TEST_F(DamageTest, AnExportOfLessLeavesAGoodOneAlone)
{
    const QString file = path("all.jsonl");
    ASSERT_EQ(run({"export", file}).code, kDone);
    const QByteArray good = read("all.jsonl");
    st::tamper(book(), {"UPDATE entry SET body = replace(body, 'Dev 1', 'Dev 7') WHERE id = 'e1'"});
    EXPECT_EQ(run({"export", file}).code, kStoreFailed);
    EXPECT_EQ(read("all.jsonl"), good);
    EXPECT_EQ(run({"export", path("rest.jsonl")}).code, kStoreFailed);
    EXPECT_TRUE(read("rest.jsonl").contains("\"id\":\"e3\""));
    EXPECT_FALSE(read("rest.jsonl").contains("Dev 7"));
}

TEST_F(DamageTest, NothingIsImportedIntoADamagedBook)
{
    st::tamper(book(), {"DELETE FROM entry WHERE id = 'e3'"});
    const Answer answer = run({"import", write("more.jsonl", st::kStart)});
    EXPECT_EQ(answer.code, kStoreFailed);
    EXPECT_TRUE(answer.err.contains("entry 6 is missing.")) << answer.err.constData();
}

TEST_F(DamageTest, WhatWasSeenLastIsAskedAndCanBeAccepted)
{
    remember(path("seen"));
    EXPECT_EQ(run({"check"}).code, kDone);
    const QByteArray older = read("home.ullage");
    const QByteArray note = st::kHead +
                            R"({"type":"event","id":"n","batch":"dev-1","kind":"noted",)"
                            R"("at":"2026-06-05T10:00:00Z","text":"more"})"
                            "\n";
    ASSERT_EQ(run({"import", write("more.jsonl", note)}).code, kDone);
    write("home.ullage", older);
    for (const char* word : {"report", "check"}) {
        const Answer answer = run({word});
        EXPECT_EQ(answer.code, kStoreFailed) << word;
        EXPECT_TRUE(answer.err.contains("with 7 entries; now it has 6")) << answer.err.constData();
    }
    EXPECT_EQ(run({"check", "--accept"}).code, kDone);
    EXPECT_EQ(run({"report"}).code, kDone);
}

TEST_F(DamageTest, ACheckCanBeStopped)
{
    int asked = 0;
    onProgress([&](const QString&, const ullage::store::Progress&) { return ++asked < 2; });
    const Answer answer = run({"check"});
    EXPECT_EQ(answer.code, kRefused);
    EXPECT_FALSE(answer.err.isEmpty());
    EXPECT_EQ(asked, 2);
}

// What is planned does without the bottle, and says so.
TEST_F(DamageTest, PlansGoOnWithoutABottleThatIsNotShown)
{
    st::tamper(book(), {"UPDATE entry SET body = replace(body, '\"volume_ml\":500', "
                        "'\"volume_ml\":510'), volume_ml = 510 WHERE id = 'e3'"});
    const Answer calendar = run({"calendar", "-"});
    EXPECT_EQ(calendar.code, kStoreFailed);
    EXPECT_TRUE(calendar.out.contains("BEGIN:VEVENT")) << "of Dev 1";
    EXPECT_FALSE(calendar.out.contains("dev-2"));
    EXPECT_TRUE(calendar.err.contains("dev-2")) << calendar.err.constData();
}
