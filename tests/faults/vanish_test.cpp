// The path goes while the book is open: its folder is renamed or removed, or something else takes
// its place. Nothing is confirmed that cannot be found again, and what to do is said.
#include "app/words/error_words.h"
#include "tests/faults/fault_books.h"
#include "tests/faults/fault_kit.h"

#include <QFile>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace ullage::faults
{

namespace
{

class Vanish : public ::testing::Test
{
protected:
    void SetUp() override
    {
        ASSERT_TRUE(QDir().mkdir(place()));
        book = std::make_unique<TempBook>(path());
        ASSERT_TRUE(book->import(journalOfDraughts(2)));
    }
    // Tries a deed and an import; both are refused, in words that help.
    void expectRefused()
    {
        const auto deed = book->book->record("b", ledger::Noted{"late"}, {testNow(), {}});
        ASSERT_FALSE(deed) << "it would be in a file that nobody finds";
        const QString said = app::errorSentence(deed.error(), {});
        EXPECT_TRUE(said.contains(QLatin1String("Nothing was entered"))) << said.toStdString();
        EXPECT_FALSE(book->import(journalOfChemicals("late", 3)));
    }
    // Whatever was entered before is where the file is now, and no more.
    void expectAllIn(const QString& now)
    {
        book.reset();
        EXPECT_EQ(linesOf(now).size(), 5);
        EXPECT_EQ(soundness(now), "sound");
    }
    [[nodiscard]] QString place() const { return m_folder.filePath(QStringLiteral("place")); }
    [[nodiscard]] QString other() const { return m_folder.filePath(QStringLiteral("other")); }
    [[nodiscard]] QString path() const { return place() + QStringLiteral("/home.ullage"); }

    std::unique_ptr<TempBook> book;

private:
    QTemporaryDir m_folder;
};

} // namespace

TEST_F(Vanish, TheFolderIsRenamed)
{
    ASSERT_TRUE(QDir().rename(place(), other()));
    expectRefused();
    expectAllIn(other() + QStringLiteral("/home.ullage"));
    EXPECT_FALSE(QFile::exists(place()));
}

TEST_F(Vanish, TheFolderIsRenamedAndComesBack)
{
    ASSERT_TRUE(QDir().rename(place(), other()));
    expectRefused();
    ASSERT_TRUE(QDir().rename(other(), place()));
    EXPECT_TRUE(book->book->record("b", ledger::Noted{"after all"}, {testNow(), {}}));
    book.reset();
    EXPECT_EQ(linesOf(path()).size(), 6);
    EXPECT_EQ(soundness(path()), "sound");
}

TEST_F(Vanish, TheFolderIsRemoved)
{
    ASSERT_TRUE(QDir(place()).removeRecursively());
    expectRefused();
    book.reset();
    EXPECT_FALSE(QFile::exists(place())) << "nothing is made anew in silence";
}

TEST_F(Vanish, TheFileIsRenamed)
{
    ASSERT_TRUE(QFile::rename(path(), path() + QStringLiteral(".elsewhere")));
    expectRefused();
}

TEST_F(Vanish, AnotherBookTakesItsPlace)
{
    const QString kept = place() + QStringLiteral("/kept.ullage");
    ASSERT_TRUE(QFile::rename(path(), kept));
    {
        TempBook theirs(other());
        ASSERT_TRUE(theirs.import(kStart));
    }
    ASSERT_TRUE(QFile::rename(other(), path()));
    expectRefused();
    EXPECT_EQ(linesOf(path()).size(), 4) << "theirs is as it was";
    EXPECT_EQ(soundness(path()), "sound");
    book.reset();
    EXPECT_EQ(linesOf(kept).size(), 5) << "ours too, with what was confirmed";
    EXPECT_EQ(soundness(kept), "sound");
}

} // namespace ullage::faults
