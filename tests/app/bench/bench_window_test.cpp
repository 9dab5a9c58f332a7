// Whole runs in the whole window, on a book that is a file: by a clock the test turns, by the real
// one at ten-fold speed, and with the program killed while the film lies in the developer.
#include "bench_window.h"

#include "core/ledger/run_times.h"
#include "core/store/journal_codec.h"
#include "core/store/journal_writer.h"
#include "core/store/sql_store.h"

#include <QBuffer>
#include <QImage>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTranslator>

#include <gtest/gtest.h>

#include <cmath>

namespace ullage::app
{
namespace
{

using chemistry::Seconds;
using ledger::RunPhase;
using Stage = BenchPage::Stage;
using namespace std::chrono_literals;

/// What a later start of the program finds in the book.
struct Found {
    ledger::Batch dev;
    ledger::Batch fix;
    std::vector<QJsonObject> films; ///< as the journal has them
    std::optional<ledger::RunTimes> times;
};

Found readAgain(const QString& folder, chemistry::Instant now)
{
    Session session(SessionOptions{.clock = [now] { return now; }});
    const auto opened = session.open(folder + QStringLiteral("/home.ullage"));
    EXPECT_TRUE(opened);
    Found found;
    for (const Bottle& bottle : session.bottles())
        (bottle.batch.name == "Dev 1" ? found.dev : found.fix) = bottle.batch;
    auto store = store::SqlStore::open(folder + QStringLiteral("/home.ullage"),
                                       {.access = store::Access::Read});
    EXPECT_TRUE(store);
    QBuffer journal;
    journal.open(QIODevice::WriteOnly);
    EXPECT_TRUE(store::exportJournal(**store, journal));
    for (const QByteArray& line : journal.data().split('\n')) {
        const QJsonObject object = QJsonDocument::fromJson(line).object();
        if (object[QStringLiteral("type")] == QStringLiteral("film"))
            found.films.push_back(object);
        if (object[QStringLiteral("type")] == QStringLiteral("run-times")) {
            const auto entry = store::decodeStored(line);
            EXPECT_TRUE(entry);
            found.times = std::get<ledger::RunTimes>(entry->what);
        }
    }
    return found;
}

void logByKeys(BenchWindow& at)
{
    ASSERT_EQ(at.page().stage(), Stage::Finish);
    at.tabTo("lost");
    at.key(Qt::Key_A, Qt::ControlModifier);
    at.type("20 ml");
    at.tabTo("air");
    at.key(Qt::Key_Down); // squeezed out
    at.tabTo("log");
    at.key(Qt::Key_Space);
    EXPECT_EQ(at.page().stage(), Stage::Plan);
    EXPECT_FALSE(at.page().isRunInHand());
}

void expectLogged(const Found& found)
{
    EXPECT_NEAR(found.dev.filmsDone.value(), 2, 1e-9);
    EXPECT_NEAR(found.dev.volume.value(), 980, 1e-9);
    EXPECT_NEAR(found.dev.standing.air.volume.value(), 0, 1e-9) << "squeezed out";
    EXPECT_NEAR(found.fix.filmsDone.value(), 2, 1e-9);
    EXPECT_NEAR(found.fix.volume.value(), 1000, 1e-9);
    EXPECT_NEAR(found.fix.standing.air.volume.value(), 30, 1e-9);
    ASSERT_EQ(found.films.size(), 2u);
    EXPECT_EQ(found.films[0][QStringLiteral("name")].toString(), QStringLiteral("Harbour"));
    EXPECT_EQ(found.films[1][QStringLiteral("name")].toString(), QStringLiteral("Ferry"));
    ASSERT_TRUE(found.times);
    for (const QJsonObject& film : found.films)
        EXPECT_EQ(film[QStringLiteral("run")].toString().toStdString(), found.times->run);
}

TEST(BenchWindow, TwoFilmsFromTheShelfIntoTheBottlesByTheKeyboardAlone)
{
    QTemporaryDir folder;
    auto steady = 1'000ms;
    chemistry::Instant wall = std::chrono::sys_days(std::chrono::year{2026} / 6 / 3) + 18h;
    BenchWindow at(folder.path(), {[&] { return steady; }, [&] { return wall; }}, Seconds(570),
                   false);
    const std::string dev = at.mix(kDeveloper, "starter-glass-1000", "Dev 1");
    at.mix(kFixer, "starter-glass-1000-b", "Fix 1");
    const auto pass = [&](double seconds) {
        for (double left = seconds; left > 1e-9; left -= 1) {
            const std::chrono::milliseconds step(std::llround(std::min(1.0, left) * 1000));
            steady += step;
            wall += step;
            at.page().tick();
        }
    };
    at.planTwoFilms();
    ASSERT_EQ(at.window().page(), Page::Bench);
    ASSERT_EQ(at.page().stage(), Stage::Run);
    EXPECT_EQ(at.page().run()->state().bath(dev)->batch, dev) << "the bottle chosen on the shelf";

    at.key(Qt::Key_F);
    EXPECT_TRUE(at.page().isFullView());
    at.key(Qt::Key_Escape);
    EXPECT_FALSE(at.page().isFullView());
    at.key(Qt::Key_Space);
    for (int step = 0; step < 10; ++step) {
        ASSERT_EQ(at.page().run()->current(), std::size_t(step));
        pass(at.page().run()->target().value());
        if (step == 1) { // held for half a minute, and five seconds over
            at.key(Qt::Key_Space);
            EXPECT_EQ(at.page().run()->phase(), RunPhase::Held);
            pass(30);
            at.key(Qt::Key_Space);
            pass(5);
        }
        at.key(Qt::Key_Return);
    }
    EXPECT_NEAR(at.session().bottle(QString::fromStdString(dev))->batch.filmsDone.value(), 0, 1e-9)
        << "nothing is counted until it is logged";
    logByKeys(at);

    const Found found = readAgain(folder.path(), wall);
    expectLogged(found);
    ASSERT_EQ(found.times->steps.size(), 10u);
    EXPECT_EQ(found.times->steps[0], (ledger::StepDone{"pre-wet", Seconds(180), Seconds(180)}));
    EXPECT_EQ(found.times->steps[1], (ledger::StepDone{"develop", Seconds(570), Seconds(605)}));
    EXPECT_EQ(found.times->steps[8], (ledger::StepDone{"wash", Seconds(300), Seconds(300)}));
}

TEST(BenchWindow, AnotherLanguageInTheMiddleOfARunChangesItsWordsAndNothingElse)
{
    struct Shouting : QTranslator {
        [[nodiscard]] bool isEmpty() const override { return false; }
        QString translate(const char*, const char* text, const char*, int) const override
        {
            return QString::fromUtf8(text).toUpper();
        }
    } shouting;
    QTemporaryDir folder;
    auto steady = 1'000ms;
    chemistry::Instant wall = std::chrono::sys_days(std::chrono::year{2026} / 6 / 3) + 18h;
    BenchWindow at(folder.path(), {[&] { return steady; }, [&] { return wall; }}, Seconds(570),
                   false);
    at.mix(kDeveloper, "starter-glass-1000", "Dev 1");
    at.mix(kFixer, "starter-glass-1000-b", "Fix 1");
    at.planTwoFilms();
    at.key(Qt::Key_Space);
    steady += 47s;
    wall += 47s;
    QApplication::installTranslator(&shouting);
    emit at.window().languageChosen(QStringLiteral("de"));
    ASSERT_EQ(at.page().stage(), Stage::Run);
    EXPECT_EQ(at.page().run()->phase(), RunPhase::Running);
    EXPECT_NEAR(at.page().run()->elapsed().value(), 47, 1e-6);
    EXPECT_EQ(at.window().page(), Page::Bench);
    EXPECT_EQ(at.page().findChild<QPushButton*>(QStringLiteral("hold"))->text(),
              QStringLiteral("HOLD"));
    QApplication::removeTranslator(&shouting);
    QApplication::processEvents();
}

TEST(BenchWindow, NothingButRedShinesOnAnyPageOfTheDarkRoom)
{
    QTemporaryDir folder;
    const chemistry::Instant wall = std::chrono::sys_days(std::chrono::year{2026} / 6 / 3) + 18h;
    BenchWindow at(folder.path(), {[] { return 1'000ms; }, [=] { return wall; }}, Seconds(570),
                   false);
    at.mix(kDeveloper, "starter-glass-1000", "Dev 1");
    at.mix(kFixer, "starter-glass-1000-b", "Fix 1");
    at.page().setDarkRoom(true);
    for (const Page page :
         {Page::Shelf, Page::Bench, Page::DayBook, Page::Cupboard, Page::Formulary}) {
        at.window().showPage(page);
        QApplication::processEvents();
        const QImage image = at.window().grab().toImage().convertToFormat(QImage::Format_RGB32);
        if (qEnvironmentVariableIsSet("ULLAGE_PICTURES"))
            image.save(qEnvironmentVariable("ULLAGE_PICTURES") +
                       QStringLiteral("/room-%1.png").arg(int(page)));
        int other = 0;
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x)
                other = std::max({other, qGreen(image.pixel(x, y)), qBlue(image.pixel(x, y))});
        EXPECT_LE(other, 8) << int(page);
    }
    at.page().setDarkRoom(false);
}

TEST(BenchWindow, TwoFilmsByTheRealClockAtTenfoldSpeed)
{
    QTemporaryDir folder;
    const auto from =
        std::chrono::time_point_cast<std::chrono::milliseconds>(std::chrono::system_clock::now());
    const BenchClocks clocks = tenfold(from);
    BenchWindow at(folder.path(), clocks, Seconds(20), true);
    at.mix(kDeveloper, "starter-glass-1000", "Dev 1");
    at.mix(kFixer, "starter-glass-1000-b", "Fix 1");
    at.planTwoFilms();
    ASSERT_EQ(at.page().stage(), Stage::Run);
    at.key(Qt::Key_Space);
    auto began = clocks.wall();
    std::vector<double> took; // each step, however late this machine is
    while (at.page().stage() == Stage::Run) {
        ASSERT_TRUE(QTest::qWaitFor([&] { return at.page().run()->left() <= Seconds(0); }, 10'000));
        at.key(Qt::Key_Return);
        const auto ended = clocks.wall();
        took.push_back(std::chrono::duration<double>(ended - began).count());
        began = ended;
    }
    logByKeys(at);
    const Found found = readAgain(folder.path(), clocks.wall());
    expectLogged(found);
    const double planned[]{5, 20, 3, 8, 3};
    ASSERT_EQ(found.times->steps.size(), std::size(planned));
    ASSERT_EQ(took.size(), std::size(planned));
    for (std::size_t i = 0; i < std::size(planned); ++i) {
        EXPECT_EQ(found.times->steps[i].planned, Seconds(planned[i]));
        EXPECT_GE(found.times->steps[i].real.value(), planned[i]);
        EXPECT_LT(found.times->steps[i].real.value(), took[i] + 8) << "the window was late";
    }
}

TEST(BenchWindow, KilledWhileTheFilmIsInTheDeveloperAndTakenUpAtTheRightSecond)
{
    QTemporaryDir folder;
    const auto from =
        std::chrono::time_point_cast<std::chrono::milliseconds>(std::chrono::system_clock::now());
    QProcess victim;
    victim.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    victim.start(QStringLiteral(ULLAGE_BENCH_VICTIM),
                 {folder.path(), QString::number(from.time_since_epoch().count())});
    QByteArray said;
    while (!said.contains('\n') && victim.waitForReadyRead(30'000))
        said += victim.readAll();
    ASSERT_TRUE(said.startsWith("developing ")) << said.toStdString();
    const chemistry::Instant began(std::chrono::milliseconds(said.mid(11).trimmed().toLongLong()));
    victim.kill(); // as a power cut would: nothing is told, nothing is tidied
    ASSERT_TRUE(victim.waitForFinished(10'000));
    ASSERT_EQ(victim.exitStatus(), QProcess::CrashExit);
    QTest::qWait(400);

    const BenchClocks clocks = tenfold(from);
    BenchWindow at(folder.path(), clocks, Seconds(60), true);
    EXPECT_EQ(at.window().page(), Page::Bench) << "it is what the user came for";
    ASSERT_TRUE(at.page().isRunInHand());
    ASSERT_EQ(at.page().stage(), Stage::Plan);
    at.tabTo("bannerGoOn");
    at.key(Qt::Key_Space);
    ASSERT_EQ(at.page().stage(), Stage::Run);
    EXPECT_EQ(at.page().run()->current(), 1u);
    const auto away = [&] { return std::chrono::duration<double>(clocks.wall() - began).count(); };
    const double before = away();
    const double elapsed = at.page().run()->elapsed().value();
    EXPECT_GT(before, 14) << "ten-fold: a second and a half at the least";
    EXPECT_GE(elapsed, before - 1);
    EXPECT_LE(elapsed, away() + 1);

    double poured = 0; // when the developer was left, however late this machine is
    while (at.page().stage() == Stage::Run) {
        ASSERT_TRUE(QTest::qWaitFor([&] { return at.page().run()->left() <= Seconds(0); }, 20'000));
        at.key(Qt::Key_Return);
        poured = poured > 0 ? poured : away();
    }
    logByKeys(at);
    const Found found = readAgain(folder.path(), clocks.wall());
    expectLogged(found);
    ASSERT_EQ(found.times->steps.size(), 5u);
    EXPECT_EQ(found.times->steps[1].planned, Seconds(60));
    EXPECT_GE(found.times->steps[1].real.value(), 60);
    EXPECT_LE(found.times->steps[1].real.value(), poured + 1);
}

} // namespace
} // namespace ullage::app
