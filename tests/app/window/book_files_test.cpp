// Books and journals through the File menu.
#include "tests/app/window/window_kit.h"

#include <QFile>
#include <QStandardPaths>

namespace ullage::app
{

TEST(BookFiles, exportsAndImportsOnAThread)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    const QString file = desk.file("out.jsonl");
    Window at(desk);
    const auto told = [&](int count) {
        return QTest::qWaitFor([&] { return at.asked.asked().size() >= count; }, 10'000);
    };
    at.asked.answer(file);
    emit at.window.exportRequested();
    ASSERT_TRUE(told(2));
    QFile written(file);
    ASSERT_TRUE(written.open(QIODevice::ReadOnly));
    EXPECT_EQ(written.readAll(), desk.journal());

    at.asked.answer(desk.file("second.ullage"));
    emit at.window.newBookRequested();
    EXPECT_EQ(at.bottle("Dev 1"), nullptr);
    at.asked.answer(file);
    emit at.window.importRequested();
    ASSERT_TRUE(told(5));
    EXPECT_NE(at.bottle("Dev 1"), nullptr);
}

TEST(BookFiles, aFileThatIsNoBookIsRefusedAndTheOpenOneStays)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    Window at(desk);
    QFile other(desk.file("letter.txt"));
    ASSERT_TRUE(other.open(QIODevice::WriteOnly));
    other.write("A letter, and a rather long one, that is not a book of this program.");
    other.close();
    at.asked.answer(other.fileName());
    emit at.window.openBookRequested();
    EXPECT_EQ(at.asked.asked().size(), 2);
    EXPECT_NE(at.bottle("Dev 1"), nullptr);
    EXPECT_EQ(desk.preferences().lastBook(), QString());
}

TEST(BookFiles, aNewBookIsOfferedAmongTheUsersDocuments)
{
    Desk desk;
    Window at(desk);
    emit at.window.newBookRequested();
    ASSERT_EQ(at.asked.asked().size(), 1);
    const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    EXPECT_EQ(at.asked.asked().front(), "New book|" + documents + "/darkroom.ullage");
}

TEST(BookFiles, aNewBookNeverOverwrites)
{
    Desk desk;
    desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
    const QByteArray before = desk.journal();
    Window at(desk);
    at.asked.answer(desk.bookPath());
    emit at.window.newBookRequested();
    EXPECT_EQ(at.asked.asked().size(), 2);
    EXPECT_EQ(desk.journal(), before);
}

} // namespace ullage::app
