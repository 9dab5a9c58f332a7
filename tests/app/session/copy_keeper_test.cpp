// Copies are made at the start, daily and on demand, and what fails is told with what to do.
#include "app/window/copy_words.h"
#include "tests/app/desk.h"

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

namespace ullage::app
{

namespace
{

// A session on the desk's book that keeps copies, with a clock of its own.
struct Kept {
    explicit Kept(Desk& desk, const QString& second = {}) : now(desk.now())
    {
        SessionOptions options;
        options.clock = [this] { return now; };
        options.copies = CopyPlaces{desk.file("copies"), second};
        session = std::make_unique<Session>(options);
        spy = std::make_unique<QSignalSpy>(&session->copies(), &CopyKeeper::changed);
    }
    bool told() { return !spy->isEmpty() || spy->wait(20'000); }
    const CopyStanding& standing() { return session->copies().standing(); }
    StandingText text() { return standingText(standing(), now, Wording{{}, QLocale("en_GB")}); }
    static qsizetype count(const QString& folder)
    {
        return QDir(folder).entryList({"*.ullage"}, QDir::Files).size();
    }

    chemistry::Instant now;
    std::unique_ptr<Session> session;
    std::unique_ptr<QSignalSpy> spy;
};

} // namespace

TEST(CopyKeeper, aCopyIsMadeAtTheStartAndOnceADay)
{
    Desk desk;
    Kept kept(desk);
    ASSERT_TRUE(kept.session->open(desk.bookPath()));
    ASSERT_TRUE(kept.told());
    EXPECT_EQ(Kept::count(desk.file("copies")), 1);
    EXPECT_EQ(kept.standing().lastGood, kept.now);
    EXPECT_TRUE(kept.text().line.startsWith("Backed up today")) << kept.text().line.toStdString();
    EXPECT_FALSE(kept.text().trouble);

    kept.spy->clear();
    kept.now += std::chrono::hours(23);
    kept.session->copies().lookAtTheClock();
    EXPECT_FALSE(kept.spy->wait(300));
    kept.now += std::chrono::hours(1);
    kept.session->copies().lookAtTheClock();
    ASSERT_TRUE(kept.told());
    EXPECT_EQ(Kept::count(desk.file("copies")), 2);
    EXPECT_EQ(kept.standing().lastGood, kept.now);

    // A clock set back does not put the next one off.
    kept.spy->clear();
    kept.now -= std::chrono::hours(24 * 400);
    kept.session->copies().lookAtTheClock();
    ASSERT_TRUE(kept.told());
    EXPECT_EQ(Kept::count(desk.file("copies")), 3);
}

// Another window on the same book makes one: this one knows of it too.
TEST(CopyKeeper, aCopyThatAnotherMakesIsTheNewestHereToo)
{
    Desk desk;
    Kept kept(desk);
    ASSERT_TRUE(kept.session->open(desk.bookPath()));
    ASSERT_TRUE(kept.told());
    const auto first = kept.now;
    EXPECT_EQ(kept.standing().lastGood, first);
    kept.spy->clear();
    const auto later = first + std::chrono::hours(2);
    ASSERT_TRUE(store::backUp(desk.bookPath(), desk.file("copies"), later));
    EXPECT_TRUE(QTest::qWaitFor([&] { return kept.standing().lastGood == later; }, 20'000));
    EXPECT_FALSE(kept.standing().failure);

    // And where the system does not tell of changes in a folder, in time.
    ASSERT_TRUE(store::backUp(desk.bookPath(), desk.file("copies"), later + std::chrono::hours(1)));
    kept.session->copies().lookForOthers();
    EXPECT_TRUE(QTest::qWaitFor(
        [&] { return kept.standing().lastGood == later + std::chrono::hours(1); }, 20'000));
}

// The rail says beside it that something is wrong: not twice.
TEST(CopyKeeper, thatSomethingIsWrongIsSaidOnce)
{
    CopyStanding standing;
    standing.fault = Error{.code = ErrorCode::NotAsEntered, .text = "changed", .entry = 3};
    const chemistry::Instant now = std::chrono::sys_days(std::chrono::year{2026} / 11 / 25);
    const Wording words{{}, QLocale("en_GB")};
    EXPECT_EQ(standingText(standing, now, words).line, "Something is wrong in the book");
    EXPECT_EQ(standingText(standing, now, words, FaultSaid::Already).line, QString());
    standing.lastGood = now - std::chrono::hours(48);
    EXPECT_TRUE(
        standingText(standing, now, words, FaultSaid::Already).line.startsWith("Last good copy "));
    EXPECT_TRUE(standingText(standing, now, words, FaultSaid::Already).trouble);
}

TEST(CopyKeeper, aNewBookWaitsADayAndTellsOfNoTrouble)
{
    Desk desk;
    Kept kept(desk);
    ASSERT_TRUE(kept.session->open(desk.file("new.ullage")));
    ASSERT_TRUE(kept.told());
    EXPECT_FALSE(kept.standing().lastGood);
    EXPECT_TRUE(kept.text().line.isEmpty());
    kept.spy->clear();
    kept.session->copies().copyNow();
    ASSERT_TRUE(kept.told());
    EXPECT_TRUE(kept.standing().lastGood);
}

TEST(CopyKeeper, aFailureIsToldWithWhatToDoAndTriedAgainInAnHour)
{
    Desk desk;
    QFile inTheWay(desk.file("copies"));
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    Kept kept(desk);
    ASSERT_TRUE(kept.session->open(desk.bookPath()));
    ASSERT_TRUE(kept.told());
    EXPECT_TRUE(kept.standing().failure);
    EXPECT_TRUE(kept.text().trouble);
    EXPECT_EQ(kept.text().line, "Not backed up");
    EXPECT_TRUE(kept.text().whatToDo.contains("Copy now"));

    ASSERT_TRUE(inTheWay.remove());
    kept.spy->clear();
    kept.now += std::chrono::hours(1);
    kept.session->copies().lookAtTheClock();
    ASSERT_TRUE(kept.told());
    EXPECT_FALSE(kept.standing().failure);
    EXPECT_TRUE(kept.standing().lastGood);
}

TEST(CopyKeeper, theSecondFolderIsUsedOnlyWhereItIs)
{
    Desk desk;
    const QString stick = desk.file("stick");
    Kept kept(desk, stick);
    ASSERT_TRUE(kept.session->open(desk.bookPath()));
    ASSERT_TRUE(kept.told());
    EXPECT_FALSE(QDir(stick).exists()) << "an empty mount point is not the stick";
    EXPECT_TRUE(kept.standing().lastGood);
    EXPECT_TRUE(kept.standing().secondFailure);
    EXPECT_TRUE(kept.text().line.contains("not in the second folder"));
    EXPECT_TRUE(kept.text().whatToDo.contains("stick"));

    ASSERT_TRUE(QDir().mkpath(stick));
    kept.spy->clear();
    kept.session->copies().copyNow();
    ASSERT_TRUE(kept.told());
    EXPECT_FALSE(kept.standing().secondFailure);
    EXPECT_EQ(Kept::count(stick), 1);
}

} // namespace ullage::app
