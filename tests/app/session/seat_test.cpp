// Which window of a machine is which, and who else is at the book.
#include "app/session/seat.h"

#include "app/session/presence.h"
#include "tests/app/desk.h"

#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace ullage::app
{

TEST(Seat, isTheFirstFreeOneOfTheMachineAtTheBook)
{
    const QTemporaryDir folder;
    const QString seats = folder.filePath("seats");
    auto one = std::make_unique<Seat>(seats, "here", "/a.ullage");
    const Seat two(seats, "here", "/a.ullage");
    const Seat other(seats, "here", "/b.ullage");
    EXPECT_EQ(one->name(), "here/1");
    EXPECT_EQ(two.name(), "here/2");
    EXPECT_EQ(other.name(), "here/1");
    one.reset();
    EXPECT_EQ(Seat(seats, "here", "/a.ullage").name(), "here/1");
    EXPECT_EQ(Seat(seats, "here", "/a.ullage").name(), "here/1") << "it went with the window";
}

TEST(Seat, whereNoLockFileCanBeMadeItIsOneThatNobodyHad)
{
    const QTemporaryDir folder;
    QFile file(folder.filePath("seats"));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    const Seat one(file.fileName(), "here", "/a.ullage");
    const Seat two(file.fileName(), "here", "/a.ullage");
    EXPECT_TRUE(one.name().startsWith("here/"));
    EXPECT_NE(one.name(), two.name());
}

TEST(Presence, aRecordThatNoLongerChangesIsNobodys)
{
    Desk desk;
    desk.session().close();
    const auto open = [&] {
        return std::move(*store::SqlStore::open(
            desk.bookPath(), {.access = store::Access::Create,
                              .volume = [](const QString&) { return store::Volume::Network; }}));
    };
    std::chrono::milliseconds now{0};
    const auto steady = [&] { return now; };
    const auto noTable = [] { return QByteArray(); };
    const auto ours = open();
    const auto theirs = open();
    Presence us(*ours, "a", noTable, steady);
    Presence them(*theirs, "b", noTable, steady);
    EXPECT_FALSE(us.lookAround());
    EXPECT_TRUE(them.lookAround());
    EXPECT_TRUE(us.lookAround());
    for (int minute = 0; minute < 5; ++minute) {
        now += std::chrono::minutes(1);
        EXPECT_TRUE(us.lookAround()) << "they renew it";
        EXPECT_TRUE(them.lookAround());
    }
    now += std::chrono::minutes(1);
    EXPECT_TRUE(us.lookAround());
    now += std::chrono::minutes(2);
    EXPECT_FALSE(us.lookAround()) << "they were killed";
}

} // namespace ullage::app
