#include "app/cli/demo_book.h"

#include "core/store/integrity.h"
#include "tests/core/store/temp_book.h"

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QThread>
#include <QTranslator>

#include <csignal>
#include <set>

using namespace ullage;
using namespace ullage::app;
using chemistry::Instant;

namespace
{

constexpr std::int64_t kDayMs = 86'400'000;

Instant moment(int year, int month, int day, int minute)
{
    return std::chrono::sys_days(std::chrono::year(year) / month / day) +
           std::chrono::minutes(minute);
}

} // namespace

namespace
{

// A language in which what the demo's people wrote stands in brackets.
class DemoInBrackets : public QTranslator
{
public:
    DemoInBrackets() { QCoreApplication::installTranslator(this); }
    ~DemoInBrackets() override { QCoreApplication::removeTranslator(this); }
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* context, const char* source, const char*,
                                    int) const override
    {
        return QLatin1String(context) == QLatin1String("Demo")
                   ? u'[' + QString::fromUtf8(source) + u']'
                   : QString();
    }
};

} // namespace

// Only what the starter's names are, and what films are called, stays.
TEST(DemoBook, SpeaksTheLanguageInWhichItIsOpened)
{
    const DemoInBrackets language;
    const auto journal = demoJournal(moment(2026, 11, 25, 600));
    ASSERT_TRUE(journal);
    int worded = 0;
    for (const QByteArray& text : journal->split('\n')) {
        const QJsonObject line = QJsonDocument::fromJson(text).object();
        const QString id = line["id"].toString();
        for (const char* field : {"name", "notes", "note", "text", "how", "place", "method", "unit",
                                  "document", "tank"}) {
            const QString words = line[QLatin1String(field)].toString();
            const bool stays = qstrcmp(field, "name") == 0 &&
                               (id.startsWith("starter-") || line["type"] == "film");
            if (!words.isEmpty()) {
                EXPECT_NE(words.startsWith(u'['), stays) << field << ": " << text.constData();
                worded += !stays;
            }
        }
        EXPECT_FALSE(id.contains(u'[')) << text.constData();
    }
    EXPECT_GT(worded, 300);
}

// What things cost by month is told by the days on which they were bought.
TEST(DemoBook, WhatHasAPriceHasADay)
{
    const auto journal = demoJournal(moment(2026, 11, 25, 600));
    ASSERT_TRUE(journal);
    std::set<QString> months;
    for (const QByteArray& text : journal->split('\n')) {
        const QJsonObject line = QJsonDocument::fromJson(text).object();
        if (line.contains("cost")) {
            const QString bought = line["bought"].toString();
            EXPECT_FALSE(bought.isEmpty()) << text.constData();
            EXPECT_LE(bought, QStringLiteral("2026-11-25"));
            months.insert(bought.left(7));
        }
    }
    EXPECT_GE(months.size(), 12u) << "all the year round";
}

// Whatever the day and the hour, the demo's last work is of this week.
TEST(DemoBook, IsOfThisWeekWithEveryVerdictAndAMistakeVoided)
{
    for (const Instant now : {moment(2026, 11, 25, 600), moment(2028, 2, 29, 0),
                              moment(2027, 3, 28, 1439), moment(2031, 1, 1, 90)}) {
        const QTemporaryDir folder;
        const auto path = createDemoBook(folder.path(), [now] { return now; });
        ASSERT_TRUE(path) << path.error().line << ' ' << path.error().field << ' '
                          << path.error().text;
        const store::testing::TempBook book(*path);
        const auto batches = book.book->batches(now, true);
        ASSERT_TRUE(batches);
        EXPECT_GE(batches->size(), 24u);
        double films = 0;
        std::set<ledger::Verdict> verdicts;
        for (const ledger::Batch& batch : *batches) {
            films += batch.filmsDone.value();
            if (batch.inUse()) {
                verdicts.insert(ledger::assess(batch).verdict);
            }
        }
        EXPECT_GE(films, 300);
        EXPECT_EQ(verdicts.size(), 4u);
        const auto cupboard = book.book->cupboard(now);
        ASSERT_TRUE(cupboard);
        std::set<ledger::Keeps> keeps;
        for (const ledger::ItemHere& here : cupboard->items) {
            keeps.insert(here.life.keeps);
        }
        EXPECT_EQ(keeps.size(), 3u) << "something past its day, something that ends soon";
        EXPECT_EQ(cupboard->works.size(), 2u);
        ASSERT_EQ(cupboard->cans.size(), 2u);
        for (const ledger::CanHere& here : cupboard->cans) {
            EXPECT_GT(here.stock.volume.value(), 0) << here.can.name;
            EXPECT_EQ(here.stock.handed.size(), 1u) << here.can.name;
        }
        const auto last =
            book.store->connection().number("SELECT max(at_ms) FROM entry WHERE type = 'event'");
        const auto daysAgo = now.time_since_epoch().count() / kDayMs - *last / kDayMs;
        EXPECT_GE(daysAgo, 0);
        EXPECT_LT(daysAgo, 7);
        const auto voided =
            book.store->connection().number("SELECT count(*) FROM entry WHERE kind = 'voided'");
        EXPECT_GE(*voided, 1);
        const auto check = store::checkBook(*book.store);
        ASSERT_TRUE(check);
        EXPECT_TRUE(check->findings.empty());
    }
}

// The program itself: its folder is its own, and goes with it however it is ended.
TEST(DemoBook, NothingOfItIsLeftWhenItIsTold)
{
    for (const int signal : {SIGTERM, SIGINT}) {
        const QTemporaryDir place;
        QProcess program;
        auto environment = QProcessEnvironment::systemEnvironment();
        environment.insert("TMPDIR", place.path());
        environment.insert("HOME", place.path());
        environment.insert("XDG_CONFIG_HOME", place.filePath("config"));
        environment.insert("XDG_DATA_HOME", place.filePath("data"));
        environment.insert("QT_QPA_PLATFORM", "offscreen");
        program.setProcessEnvironment(environment);
        program.start(ULLAGE_PROGRAM, {"demo"});
        ASSERT_TRUE(program.waitForStarted());
        const QDir folder(place.path());
        const auto demos = [&] {
            return folder.entryList({"ullage-*"}, QDir::Dirs | QDir::NoDotAndDotDot);
        };
        QElapsedTimer patience;
        patience.start();
        const auto isThere = [&] {
            return !demos().isEmpty() &&
                   QFile::exists(folder.filePath(demos().front() + "/demo.ullage"));
        };
        while (!isThere() && patience.elapsed() < 60'000)
            QThread::msleep(20);
        ASSERT_TRUE(isThere()) << program.readAllStandardError().constData();
        ASSERT_EQ(::kill(static_cast<pid_t>(program.processId()), signal), 0);
        ASSERT_TRUE(program.waitForFinished(60'000));
        EXPECT_EQ(program.exitStatus(), QProcess::NormalExit);
        EXPECT_TRUE(demos().isEmpty()) << demos().join(u' ').toStdString();
    }
}
