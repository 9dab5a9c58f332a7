#include "tests/app/cli/cli_kit.h"

#include <QDir>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

using namespace ullage;
using namespace ullage::app;
using namespace ullage::app::testing;
using namespace ullage::store::testing;

namespace
{

const QStringList kTime{"time", "--batch", "dev-1", "--base", "9:30@20", "--temperature"};

class FullDisk : public QIODevice
{
protected:
    qint64 readData(char*, qint64) override { return -1; }
    qint64 writeData(const char*, qint64) override
    {
        setErrorString(QStringLiteral("no space left"));
        return -1;
    }
};

} // namespace

TEST_F(CommandTest, TheReportSaysWhatRestsAndTheJournalsVerdictStaysOneOfTheFour)
{
    const QByteArray only = kHead + kSolution + kVessel + kMixed; // and nothing else
    ASSERT_EQ(run({"import", write("mixed.jsonl", only)}).code, kDone);
    const QStringList at{"--at", "2026-06-01T10:05:00Z"};
    const Answer table = run(QStringList{"report"} + at);
    EXPECT_TRUE(table.out.contains("Resting")) << table.out.constData();
    EXPECT_TRUE(table.out.contains("look again in 5 min")) << table.out.constData();
    const Answer json = run(QStringList{"report", "--json"} + at);
    const auto bottle = QJsonDocument::fromJson(json.out).array()[0].toObject();
    EXPECT_EQ(bottle["verdict"].toString(), "good");
}

TEST_F(CommandTest, ImportsReportsAndExports)
{
    const QString journal = write("season.jsonl", kStart);
    const Answer imported = run({"import", journal});
    EXPECT_EQ(imported.code, kDone) << imported.err.constData();
    EXPECT_TRUE(imported.out.isEmpty());
    EXPECT_TRUE(imported.err.contains("4"));

    const Answer report = run({"report", "--at", "2026-06-10T00:00:00Z", "--json"});
    ASSERT_EQ(report.code, kDone);
    EXPECT_TRUE(report.err.isEmpty());
    const auto array = QJsonDocument::fromJson(report.out).array();
    ASSERT_EQ(array.size(), 1);
    EXPECT_EQ(array[0].toObject()["volume_ml"].toDouble(), 980);

    EXPECT_EQ(run({"export", "-"}).out, kStart);
    EXPECT_EQ(run({"export", path("again.jsonl")}).code, kDone);
    EXPECT_EQ(read("again.jsonl"), kStart);
    EXPECT_EQ(run({"export", path("events.csv")}).code, kDone);
    EXPECT_EQ(read("events.csv").count("\r\n"), 3);
    const Answer check = run({"check"});
    EXPECT_EQ(check.code, kDone);
    EXPECT_TRUE(check.err.isEmpty());
    EXPECT_FALSE(check.out.isEmpty());
}

TEST_F(CommandTest, ImportsFromStandardInputIntoTheBookNamed)
{
    const QString book = path("other.ullage");
    EXPECT_EQ(run({"import", "-", "--book", book}, kStart).code, kDone);
    EXPECT_EQ(run({"--book=" + book, "export", "-"}).out, kStart);
    EXPECT_FALSE(QFile::exists(path("home.ullage")));
    EXPECT_EQ(run({"import", "-", "--book", book}, kStart).code, kDone);
    EXPECT_EQ(run({"export", "-", "--book", book}).out, kStart);
}

TEST_F(CommandTest, ARefusedImportNamesFileLineFieldAndRangeAndLeavesNothing)
{
    QByteArray wrong = kStart;
    wrong.replace("\"used_ml\":600", "\"used_ml\":1200");
    const QString journal = write("wrong.jsonl", wrong);
    Answer refused = run({"import", journal});
    EXPECT_EQ(refused.code, kRefused);
    EXPECT_TRUE(refused.out.isEmpty());
    for (const char* part : {"wrong.jsonl:5:", "used_ml", "1200", "1000 ml"}) {
        EXPECT_TRUE(refused.err.contains(part)) << part << " in " << refused.err.constData();
    }
    EXPECT_EQ(QDir(path("")).entryList(QDir::Files), QStringList{"wrong.jsonl"});

    ASSERT_EQ(run({"import", "-"}, kHead + kVessel).code, kDone);
    refused = run({"import", journal});
    EXPECT_EQ(refused.code, kRefused);
    EXPECT_EQ(run({"export", "-"}).out, kHead + kVessel);
    for (const QByteArray& broken :
         {kStart.chopped(20), "\xff\xfe" + kStart, QByteArray(2 << 20, 'x'), QByteArray()}) {
        EXPECT_EQ(run({"import", "-"}, broken).code, kRefused);
    }
    EXPECT_EQ(run({"import", path("nowhere.jsonl")}).code, kRefused);
    EXPECT_EQ(run({"export", "-"}).out, kHead + kVessel);
}

TEST_F(CommandTest, TellsWrongUsageFromBadInput)
{
    ASSERT_EQ(run({"import", "-"}, kStart).code, kDone);
    for (const QStringList& words : {QStringList{"brew"},
                                     {"label"},
                                     {"calendar"},
                                     {"report", "extra"},
                                     {"report", "--films", "2"},
                                     {"import"},
                                     {"import", "a", "b"},
                                     {"export"},
                                     {"export", path("book.txt")},
                                     {"time"},
                                     {"time", "--batch", "dev-1"},
                                     {"backup"},
                                     {"restore"},
                                     {"check", "--json"},
                                     {"report", "--book", "postgresql://localhost/x"}}) {
        const Answer answer = run(words);
        EXPECT_EQ(answer.code, kWrongUsage) << words.join(' ').toStdString();
        EXPECT_TRUE(answer.out.isEmpty());
        EXPECT_FALSE(answer.err.isEmpty());
    }
    EXPECT_EQ(run({"import", path("events.csv")}).code, kRefused) << "no such sheet";
    EXPECT_EQ(run({"report", "--at", "yesterday"}).code, kRefused);
    EXPECT_EQ(run({"report", "--at", "2026-02-30"}).code, kRefused);
}

// Every command answered with the lines of all of them.
TEST_F(CommandTest, ACommandsHelpIsItsOwn)
{
    const Answer report = run({"report", "--help"});
    EXPECT_EQ(report.code, kDone);
    EXPECT_TRUE(report.out.startsWith("ullage report ")) << report.out.toStdString();
    EXPECT_TRUE(report.out.contains("--book FILE")) << report.out.toStdString();
    EXPECT_FALSE(report.out.contains("ullage time")) << report.out.toStdString();
    const Answer import = run({"import", "--help"});
    EXPECT_TRUE(import.out.contains(".jsonl")) << import.out.toStdString();
    EXPECT_TRUE(import.out.contains("--mapping")) << import.out.toStdString();
    EXPECT_FALSE(import.out.contains("ullage export")) << import.out.toStdString();
    EXPECT_TRUE(run({"frobnicate"}).err.contains("ullage salvage")) << "there is none: all of them";
}

TEST_F(CommandTest, SaysTheTimeFactorByFactor)
{
    ASSERT_EQ(run({"import", "-"}, kStart).code, kDone);
    for (const char* degrees : {"20", "20.0", "20C", "68F"}) {
        const Answer time = run(kTime + QStringList{degrees, "--json"});
        ASSERT_EQ(time.code, kDone) << time.err.constData();
        const auto object = QJsonDocument::fromJson(time.out).object();
        EXPECT_EQ(object["base_s"].toDouble(), 570);
        EXPECT_DOUBLE_EQ(object["wear"].toDouble(), 1.2);
        EXPECT_EQ(object["strip"].toDouble(), 1);
        EXPECT_NEAR(object["temperature_c"].toDouble(), 20, 1e-12);
        EXPECT_NEAR(object["seconds"].toDouble(), 684, 1e-9);
        EXPECT_EQ(object["warnings"].toArray(), QJsonArray{"discard"}); // past its keeping
    }
    EXPECT_TRUE(run(kTime + QStringList{"20"}).out.contains("11:25"));
    for (const char* degrees : {"200", "5", "warm", "nan", ""}) {
        const Answer refused = run(kTime + QStringList{degrees});
        EXPECT_EQ(refused.code, kRefused) << degrees;
        EXPECT_TRUE(refused.out.isEmpty());
    }
    for (const char* base : {"9@20", "9:30", "9:30@20@20", "@20", "9:30@", "9:99@20", "0:01@20"}) {
        EXPECT_EQ(run({"time", "--batch", "dev-1", "--base", base, "--temperature", "20"}).code,
                  kRefused)
            << base;
    }
    EXPECT_EQ(run({"time", "--batch", "none", "--base", "9:30@20", "--temperature", "20"}).code,
              kRefused);
    EXPECT_EQ(run(kTime + QStringList{"20", "--films", "-1"}).code, kRefused);
}

TEST_F(CommandTest, SaysWhereAFigureIsABoundOrExtrapolated)
{
    QByteArray found = kMixed;
    found.replace("\"volume_ml\":1000",
                  R"("volume_ml":300,"history":"unknown","assumed_films_per_litre":2)");
    ASSERT_EQ(run({"import", "-"}, kHead + kSolution + kVessel + found).code, kDone);
    const Answer report = run({"report", "--at", "2026-06-10T00:00:00Z"});
    EXPECT_TRUE(report.out.contains("at most 2")) << report.out.constData();
    EXPECT_TRUE(report.out.contains("extrapolated")) << report.out.constData();
    const Answer time = run(kTime + QStringList{"20"});
    ASSERT_EQ(time.code, kDone) << time.err.constData();
    EXPECT_TRUE(time.out.contains("wear, at least")) << time.out.constData();

    QByteArray known = kMixed;
    known.replace("1000", "900");
    const QString other = path("known.ullage");
    ASSERT_EQ(run({"import", "-", "--book", other}, kHead + kSolution + kVessel + known).code,
              kDone);
    const Answer plain = run({"report", "--at", "2026-06-10T00:00:00Z", "--book", other});
    EXPECT_FALSE(plain.out.contains("at most")) << plain.out.constData();
    EXPECT_FALSE(plain.out.contains("extrapolated")) << plain.out.constData();
}

TEST_F(CommandTest, AMissingOrForeignBookIsTheStoresFault)
{
    for (const QStringList& words : {QStringList{"report"},
                                     {"check"},
                                     {"export", "-"},
                                     {"backup", path("copy")},
                                     kTime + QStringList{"20"}}) {
        const Answer answer = run(words);
        EXPECT_EQ(answer.code, kStoreFailed) << words.join(' ').toStdString();
        EXPECT_TRUE(answer.out.isEmpty());
        EXPECT_TRUE(answer.err.contains("home.ullage")) << answer.err.constData();
    }
    EXPECT_TRUE(QDir(path("")).entryList(QDir::Files).isEmpty());
    const QString foreign = write("foreign", QByteArray(4000, 'x'));
    EXPECT_EQ(run({"import", "-", "--book", foreign}, kStart).code, kStoreFailed);
    EXPECT_EQ(read("foreign"), QByteArray(4000, 'x'));
    EXPECT_EQ(run({"import", "-", "--book", path("no/folder/x.ullage")}, kStart).code,
              kStoreFailed);
}

TEST_F(CommandTest, AStoreThatFailsInTheMiddleOfAnImportIsNotTheJournalsFault)
{
    ASSERT_EQ(run({"import", "-"}, kHead + kVessel).code, kDone);
    auto connection = store::Connection::open(path("home.ullage"), store::FileMode::Write, 100);
    ASSERT_TRUE((*connection)
                    ->run("CREATE TRIGGER stop BEFORE INSERT ON entry WHEN NEW.id = 'e1' BEGIN "
                          "SELECT RAISE(ABORT, 'stopped'); END"));
    EXPECT_EQ(run({"import", "-"}, kStart).code, kStoreFailed);
    EXPECT_EQ(run({"export", "-"}).out, kHead + kVessel);
}

TEST_F(CommandTest, ReportsThatTheOutputIsFull)
{
    ASSERT_EQ(run({"import", "-"}, kStart).code, kDone);
    for (const QStringList& words : {QStringList{"export", "-"}, {"report", "--json"}, {"check"}}) {
        FullDisk disk;
        disk.open(QIODevice::WriteOnly | QIODevice::Unbuffered);
        const Answer answer = run(words, {}, disk, [] { return QByteArray(); });
        EXPECT_EQ(answer.code, kStoreFailed) << words.join(' ').toStdString();
        EXPECT_TRUE(answer.err.contains("no space left")) << answer.err.constData();
    }
}

TEST_F(CommandTest, BacksUpAndRestores)
{
    ASSERT_EQ(run({"import", "-"}, kStart).code, kDone);
    const QString copy = path("copy.ullage");
    const Answer made = run({"backup", copy});
    EXPECT_EQ(made.code, kDone) << made.err.constData();
    EXPECT_EQ(run({"backup", copy}).code, kRefused);
    ASSERT_EQ(run({"import", "-"}, kHead + R"({"type":"chemical","name":"borax"})").code, kDone);
    EXPECT_EQ(run({"restore", copy}).code, kRefused);
    EXPECT_NE(run({"export", "-"}).out, kStart);
    EXPECT_EQ(run({"restore", copy, "--replace"}).code, kDone);
    EXPECT_EQ(run({"export", "-"}).out, kStart);
    EXPECT_TRUE(run({"export", "-", "--book", path("home.ullage.replaced")}).out.contains("borax"));
    EXPECT_EQ(run({"restore", copy, "--book", path("new.ullage")}).code, kDone);
    EXPECT_EQ(run({"export", "-", "--book", path("new.ullage")}).out, kStart);
}

TEST_F(CommandTest, BackupLeavesOthersPartsAndSaysWhatIsWrong)
{
    ASSERT_EQ(run({"import", "-"}, kStart).code, kDone);
    write("mine.part", "mine");
    EXPECT_EQ(run({"backup", path("mine")}).code, kDone);
    EXPECT_EQ(read("mine.part"), "mine");
    {
        auto connection = store::Connection::open(path("home.ullage"), store::FileMode::Write, 100);
        ASSERT_TRUE((*connection)->run("DROP TRIGGER entry_stays"));
        ASSERT_TRUE((*connection)->run("UPDATE entry SET body = '{\"type\":1}' WHERE id = 'mq'"));
    }
    const Answer answer = run({"backup", path("faulty")});
    EXPECT_NE(answer.code, kDone);
    EXPECT_TRUE(answer.err.contains("check")) << answer.err.constData();
    EXPECT_TRUE(QFile::exists(path("faulty"))) << "the copy is made all the same";
}

TEST_F(CommandTest, RestoreLeavesAFolderWhereItIs)
{
    ASSERT_EQ(run({"import", "-"}, kStart).code, kDone);
    ASSERT_EQ(run({"backup", path("copy")}).code, kDone);
    const QString folder = path("folder");
    ASSERT_TRUE(QDir().mkpath(folder + "/in it"));
    EXPECT_EQ(run({"restore", path("copy"), "--replace", "--book", folder}).code, kStoreFailed);
    EXPECT_TRUE(QDir(folder + "/in it").exists());
}

TEST_F(CommandTest, SalvagesWhatCanBeReadAndListsTheRest)
{
    ASSERT_EQ(run({"import", "-"}, kStart).code, kDone);
    QByteArray book = read("home.ullage");
    const qsizetype at = book.lastIndexOf("\"run\":\"run-1\"");
    ASSERT_GT(at, 0);
    book[at + 1] = '\xFF';
    write("home.ullage", book);
    const Answer answer = run({"salvage", path("home.ullage"), path("new.ullage")});
    EXPECT_EQ(answer.code, kDone) << answer.err.constData();
    EXPECT_TRUE(answer.out.startsWith("3 entries")) << answer.out.constData();
    EXPECT_TRUE(answer.out.contains("missing after")) << answer.out.constData();
    EXPECT_TRUE(answer.out.contains("missing: entry 4 (event e2)")) << answer.out.constData();
    EXPECT_EQ(read("home.ullage"), book);
    EXPECT_EQ(run({"check", "--book", path("new.ullage")}).code, kDone);
    EXPECT_EQ(run({"salvage", path("home.ullage"), path("new.ullage")}).code, kRefused);
    EXPECT_EQ(run({"salvage", path("home.ullage")}).code, kWrongUsage);
    EXPECT_EQ(run({"salvage", path("none"), path("other.ullage")}).code, kStoreFailed);
}

TEST_F(CommandTest, CheckTellsWhatIsWrongAndFails)
{
    ASSERT_EQ(run({"import", "-"}, kStart).code, kDone);
    {
        auto connection = store::Connection::open(path("home.ullage"), store::FileMode::Write, 100);
        ASSERT_TRUE((*connection)->run("UPDATE batch SET name = 'other'"));
    }
    const Answer check = run({"check"});
    EXPECT_EQ(check.code, kStoreFailed);
    EXPECT_TRUE(check.err.contains("Dev 1")) << "as it was entered: " << check.err.constData();
}

TEST_F(CommandTest, AnEmptyBookHasAnEmptyReport)
{
    ASSERT_EQ(run({"import", "-"}, kHead).code, kDone);
    const Answer json = run({"report", "--json"});
    EXPECT_EQ(json.code, kDone);
    EXPECT_EQ(QJsonDocument::fromJson(json.out).array().size(), 0);
    EXPECT_TRUE(json.out.startsWith("["));
    EXPECT_EQ(run({"report"}).code, kDone);
}

TEST_F(CommandTest, ABookThatIsNoneIsRefusedInWordsAndLeftAsItIs)
{
    const auto said = [&](const QString& book) {
        const Answer answer = run({"import", "-", "--book", book}, kStart);
        EXPECT_EQ(answer.code, kStoreFailed) << book.toStdString();
        return answer.err;
    };
    EXPECT_TRUE(said(path("")).contains("folder"));
    QFile::link(path("nowhere"), path("link"));
    EXPECT_TRUE(said(path("link")).contains("link"));
    EXPECT_TRUE(QFileInfo(path("link")).isSymLink());
    EXPECT_TRUE(run({"report", "--book", path("none")}).err.contains("no such book"));
    EXPECT_EQ(QDir(path("")).entryList(QDir::Files | QDir::System), QStringList{"link"});
    Arguments arguments;
    EXPECT_TRUE(parse({"report", "--book", ""}, arguments));
    arguments = {};
    EXPECT_TRUE(parse({"report", "--book="}, arguments));
}

TEST_F(CommandTest, TheBookIsNeverItsOwnJournal)
{
    ASSERT_EQ(run({"import", "-"}, kStart).code, kDone);
    const QString same = path("same.jsonl");
    ASSERT_TRUE(QFile::link(path("home.ullage"), same));
    for (const char* command : {"import", "export"}) {
        const Answer answer = run({QString::fromLatin1(command), same});
        EXPECT_EQ(answer.code, kRefused);
        EXPECT_TRUE(answer.err.contains("the open book itself")) << answer.err.constData();
    }
    EXPECT_EQ(run({"export", "-"}).out, kStart);
}

// Made by this command, but somebody else entered something meanwhile: then it is no longer only
// the refused import's.
TEST_F(CommandTest, ARefusedImportTakesAwayOnlyABookThatNobodyUses)
{
    QByteArray wrong = kStart;
    wrong.replace("\"used_ml\":600", "\"used_ml\":1200");
    EXPECT_EQ(run({"import", "-"}, wrong).code, kRefused);
    EXPECT_EQ(QDir(path("")).entryList(QDir::Files), QStringList());
    ASSERT_EQ(run({"import", "-"}, kHead).code, kDone);
    EXPECT_EQ(run({"import", "-"}, wrong).code, kRefused);
    EXPECT_EQ(QDir(path("")).entryList(QDir::Files), QStringList{"home.ullage"});
}
