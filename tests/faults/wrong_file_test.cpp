// What is no book, or a newer one, is refused by every command in time, with a reason, and is not
// touched; nothing appears beside it.
#include "app/cli/command_line.h"
#include "tests/faults/fault_books.h"
#include "tests/faults/fault_kit.h"

#include <QFile>
#include <QFileInfo>

#include <sys/stat.h>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace ullage::faults
{

namespace
{

const QList<QStringList> kCommands{
    {"report"}, {"report", "--all", "--json"}, {"check"}, {"import", "-"}, {"export", "-"}};
const QStringList kBackup{"backup", "copy-of-it.ullage"};

enum class Newer { No, Yes };

std::int64_t versionOf(const QString& path)
{
    const auto connection = Connection::open(path, FileMode::Write, 1000);
    EXPECT_TRUE(connection) << connection.error().text;
    return connection ? (*connection)->number("PRAGMA user_version").value_or(0) : 0;
}

void put(const QString& path, const QByteArray& content)
{
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    ASSERT_EQ(file.write(content), content.size());
}

// Every command refuses `path`; what restores from it refuses too. Of a newer book a copy can be
// had: it is whole whatever is in it.
void expectRefused(const QString& folder, const QString& path, const char* reason,
                   Newer newer = Newer::No)
{
    ChildRules rules;
    rules.seconds = 60; // a pipe must not keep anyone waiting
    inChild(rules, [&] {
        ASSERT_TRUE(QDir::setCurrent(folder)); // for the copy
        auto commands = kCommands;
        if (newer == Newer::No) {
            commands += kBackup;
        }
        for (const QStringList& words : commands) {
            const Called refused = call(path, words, kStart);
            EXPECT_EQ(refused.code, 3) << words.join(' ').toStdString();
            EXPECT_TRUE(refused.err.contains(reason))
                << words.join(' ').toStdString() << ": " << refused.err.constData();
            EXPECT_TRUE(refused.out.isEmpty()) << refused.out.constData();
        }
        if (newer == Newer::Yes) {
            const Called copied = call(path, kBackup);
            EXPECT_EQ(copied.code, 0) << copied.err.constData();
            EXPECT_EQ(linesOf(kBackup.back()), linesOf(path));
            EXPECT_EQ(versionOf(kBackup.back()), 99);
            EXPECT_TRUE(QFile::remove(kBackup.back()));
        }
        const QString sound = folder + QStringLiteral("/sound.ullage");
        const Called refused = call(sound, {"restore", path, "--replace"});
        EXPECT_EQ(refused.code, 3) << refused.err.constData();
        EXPECT_FALSE(refused.err.isEmpty());
    });
}

class WrongFile : public ::testing::Test
{
protected:
    void SetUp() override
    {
        TempBook made(folder() + QStringLiteral("/sound.ullage"));
        ASSERT_TRUE(made.import(kStart));
    }
    void expectRefusedUntouched(const char* reason, Newer newer = Newer::No)
    {
        const auto before = contentsOf(folder());
        expectRefused(folder(), path(), reason, newer);
        EXPECT_EQ(changedSince(before, folder()), "");
    }
    [[nodiscard]] QString folder() const { return m_folder.path(); }
    [[nodiscard]] QString path() const { return m_folder.filePath(QStringLiteral("it.ullage")); }

private:
    QTemporaryDir m_folder;
};

} // namespace

TEST_F(WrongFile, ALetter)
{
    put(path(), "Dear harbour master, this is a letter and no book at all.\n");
    expectRefusedUntouched("not a book");
}

TEST_F(WrongFile, ALongLetter)
{
    put(path(), QByteArray("no book \n").repeated(20'000));
    expectRefusedUntouched("not a book");
}

TEST_F(WrongFile, AJournal)
{
    put(path(), kStart);
    expectRefusedUntouched("not a book");
}

TEST_F(WrongFile, OneByte)
{
    put(path(), "S");
    expectRefusedUntouched("not a book");
}

TEST_F(WrongFile, TheBeginningOfABook)
{
    put(path(), contentsOf(folder()).at(folder() + QStringLiteral("/sound.ullage")).first(60));
    expectRefusedUntouched("not a book");
}

TEST_F(WrongFile, AnotherProgramsDatabase)
{
    {
        const auto connection = Connection::open(path(), FileMode::Create, 1000);
        ASSERT_TRUE(connection);
        ASSERT_TRUE((*connection)->run("CREATE TABLE entry (body TEXT)"));
        ASSERT_TRUE((*connection)->run("INSERT INTO entry VALUES ('theirs')"));
    }
    expectRefusedUntouched("not a book");
}

TEST_F(WrongFile, AFolder)
{
    ASSERT_TRUE(QDir().mkdir(path()));
    expectRefusedUntouched("folder");
}

TEST_F(WrongFile, ALinkToNothing)
{
    ASSERT_TRUE(QFile::link(folder() + QStringLiteral("/nowhere"), path()));
    expectRefused(folder(), path(), "link");
    EXPECT_TRUE(QFileInfo(path()).isSymLink());
    EXPECT_FALSE(QFileInfo::exists(folder() + QStringLiteral("/nowhere")));
}

TEST_F(WrongFile, APipe)
{
    ASSERT_EQ(::mkfifo(QFile::encodeName(path()).constData(), 0600), 0);
    expectRefused(folder(), path(), "not a book");
    struct stat is {
    };
    ASSERT_EQ(::stat(QFile::encodeName(path()).constData(), &is), 0);
    EXPECT_TRUE(S_ISFIFO(is.st_mode));
}

TEST_F(WrongFile, ADevice)
{
    expectRefused(folder(), QStringLiteral("/dev/null"), "not a book");
    expectRefused(folder(), QStringLiteral("/dev/full"), "not a book");
}

TEST_F(WrongFile, NoName)
{
    app::Arguments arguments;
    const auto misuse = app::parse({"check", "--book", ""}, arguments);
    ASSERT_TRUE(misuse) << "wrong usage: there is no book to speak of";
    EXPECT_TRUE(misuse->sentence.contains(QLatin1String("--book")))
        << misuse->sentence.toStdString();
}

TEST_F(WrongFile, ABookOfANewerProgram)
{
    {
        TempBook made(path());
        ASSERT_TRUE(made.import(kStart));
        ASSERT_TRUE(made.store->connection().run("PRAGMA user_version = 99"));
        ASSERT_TRUE(made.store->connection().run("CREATE TABLE later (a)"));
    }
    expectRefusedUntouched("newer program", Newer::Yes);
}

// What was written last stands in its log alone; that counts, and stays.
TEST_F(WrongFile, ABookOfANewerProgramThatWasKilled)
{
    const QString kept = folder() + QStringLiteral("/kept");
    {
        TempBook made(path());
        ASSERT_TRUE(made.import(kStart));
        ASSERT_TRUE(made.store->connection().run("PRAGMA user_version = 99"));
        ASSERT_TRUE(QFile::copy(path(), kept));
        ASSERT_TRUE(QFile::copy(path() + QStringLiteral("-wal"), kept + QStringLiteral("-wal")));
    }
    ASSERT_TRUE(QFile::remove(path()));
    ASSERT_TRUE(QFile::rename(kept, path()));
    ASSERT_TRUE(QFile::rename(kept + QStringLiteral("-wal"), path() + QStringLiteral("-wal")));
    expectRefused(folder(), path(), "newer program", Newer::Yes);
    EXPECT_EQ(linesOf(path()).size(), 4);
    EXPECT_EQ(versionOf(path()), 99);
}

} // namespace ullage::faults
