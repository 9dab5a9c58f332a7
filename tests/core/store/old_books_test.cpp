// A book of each schema step that ever was, as a file: it is read for good, and nothing of it
// changes.
#include "core/store/integrity.h"
#include "tests/core/store/temp_book.h"

#include <QDir>
#include <QFile>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

const QString kOldBooks = QStringLiteral(ULLAGE_JOURNALS "/../core/store/old_books");

QByteArray read(const QString& path)
{
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return file.readAll();
}

} // namespace

class OldBooks : public ::testing::TestWithParam<int>
{
};

TEST_P(OldBooks, AreBroughtUpToDateWithEveryLineAsItWas)
{
    const QString name = QStringLiteral("version-%1").arg(GetParam());
    const TempBook folder;
    const QString path = folder.inFolder(name + ".ullage");
    ASSERT_TRUE(QFile::copy(QDir(kOldBooks).filePath(name + ".ullage"), path));
    TempBook book(path);
    ASSERT_TRUE(book.store);
    EXPECT_EQ(book.store->outcome(), SchemaOutcome::Upgraded);
    EXPECT_EQ(book.text(), kHead + read(QDir(kOldBooks).filePath(name + ".jsonl")));
    const auto check = checkBook(*book.store);
    ASSERT_TRUE(check);
    for (const Error& finding : check->findings)
        ADD_FAILURE() << finding.subject << ' ' << finding.field << ' ' << finding.text;
    const auto batches = book.book->batches(testNow(), true);
    ASSERT_TRUE(batches) << batches.error().text;
    ASSERT_EQ(batches->size(), 2U);
    EXPECT_EQ(batches->front().name, "Dev 1");
    EXPECT_DOUBLE_EQ(batches->front().volume.value(), 980);
    ASSERT_TRUE(book.import(kHead + R"({"type":"chemical","id":"c","name":"borax"})" + "\n"));
}

// One file a step that is no longer the newest.
INSTANTIATE_TEST_SUITE_P(Version, OldBooks, ::testing::Range(1, schemaSteps().back().version),
                         ::testing::PrintToStringParamName());
