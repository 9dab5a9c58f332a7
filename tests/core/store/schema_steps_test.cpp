#include "core/store/book_file.h"
#include "tests/core/store/temp_book.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

std::vector<SchemaStep> withStep(const char* sql)
{
    auto steps = schemaSteps();
    steps.push_back({steps.back().version + 1, QString::fromLatin1(sql)});
    return steps;
}

// The version that this program's books have.
const int kThis = schemaSteps().back().version;

QStringList filesBeside(const TempBook& book)
{
    return QDir(book.inFolder("")).entryList(QDir::Files, QDir::Name);
}

} // namespace

TEST(SchemaSteps, PartsStatementsOnlyAtTheLineThatSaysSo)
{
    const QString sql = "-- a comment; only\n"
                        "CREATE TRIGGER t BEFORE UPDATE ON x\nBEGIN\n    SELECT 1;\n    SELECT "
                        "'-- next';\nEND\n"
                        "  -- next  \n"
                        "-- nothing but words\n\n"
                        "-- next\n"
                        "INSERT INTO x VALUES (';\n-- next one')\n"
                        "-- next\n";
    EXPECT_EQ(splitStatements(sql),
              (QStringList{"-- a comment; only\nCREATE TRIGGER t BEFORE UPDATE ON x\nBEGIN\n    "
                           "SELECT 1;\n    SELECT '-- next';\nEND",
                           "INSERT INTO x VALUES (';\n-- next one')"}));
    EXPECT_EQ(splitStatements(""), QStringList());
}

TEST(SchemaSteps, RiseFromOneWithoutAGap)
{
    int version = 0;
    for (const SchemaStep& step : schemaSteps()) {
        EXPECT_EQ(step.version, ++version);
        EXPECT_FALSE(splitStatements(step.sql).isEmpty());
    }
}

TEST(SchemaSteps, BringAnOlderBookUpToDateAfterAVerifiedCopy)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    book.book.reset();
    book.store.reset();
    StoreOptions options;
    options.access = Access::Read; // an older book has to be brought up to date all the same
    options.steps = withStep("CREATE TABLE more (a TEXT) STRICT");
    {
        const auto upgraded = SqlStore::open(book.path(), options);
        ASSERT_TRUE(upgraded) << upgraded.error().text;
        EXPECT_EQ((*upgraded)->outcome(), SchemaOutcome::Upgraded);
        EXPECT_EQ(*(*upgraded)->connection().number("PRAGMA user_version"), kThis + 1);
        EXPECT_EQ(*(*upgraded)->connection().number("SELECT count(*) FROM more"), 0);
    }
    const QString copy = book.path() + QStringLiteral(".schema-%1").arg(kThis);
    ASSERT_TRUE(QFile::exists(copy));
    EXPECT_EQ(inspect(copy)->version, kThis);
    EXPECT_EQ(TempBook(copy).text(), kStart);
    const auto older = SqlStore::open(book.path());
    ASSERT_FALSE(older);
    EXPECT_EQ(older.error().code, ErrorCode::NewerBook);
}

TEST(SchemaSteps, AStepThatFailsLeavesTheBookAsItWas)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    book.book.reset();
    book.store.reset();
    StoreOptions options;
    options.steps = withStep("CREATE TABLE more (a TEXT) STRICT\n-- next\nDROP TABLE nowhere");
    for (int i = 0; i < 2; ++i) {
        const auto failed = SqlStore::open(book.path(), options);
        ASSERT_FALSE(failed);
        EXPECT_EQ(failed.error().code, ErrorCode::StoreFailed);
    }
    EXPECT_TRUE(filesBeside(book).contains(QStringLiteral("home.ullage.schema-%1").arg(kThis)));
    book.open();
    EXPECT_EQ(*book.store->connection().number("PRAGMA user_version"), kThis);
    EXPECT_EQ(book.text(), kStart);
}

TEST(SchemaSteps, NothingIsDoneWithoutTheCopy)
{
    TempBook book;
    ASSERT_TRUE(book.import(kStart));
    book.book.reset();
    book.store.reset();
    // A file's name of 250 letters leaves room for a log's ending, and none for a copy's.
    const QString path = book.inFolder("b").append(QString(249, u'b'));
    ASSERT_TRUE(QFile::rename(book.path(), path));
    StoreOptions options;
    options.steps = withStep("CREATE TABLE more (a TEXT) STRICT");
    const auto failed = SqlStore::open(path, options);
    ASSERT_FALSE(failed);
    EXPECT_EQ(inspect(path)->version, kThis);
    QDir folder = QFileInfo(path).dir();
    EXPECT_EQ(folder.entryList({QStringLiteral("*schema*")}), QStringList());
    ASSERT_TRUE(SqlStore::open(path)); // as it was
}
