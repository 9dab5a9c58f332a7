// Every file of the corpus, the finds of the fuzzers among them, goes through its target.
#include "tests/fuzz/fuzz_targets.h"

#include <QDir>
#include <QFile>

#include <gtest/gtest.h>

namespace
{

using Target = void (*)(const QByteArray&);

void replay(const char* folder, Target target)
{
    const QDir place(QStringLiteral(ULLAGE_TESTS) + QLatin1Char('/') + QLatin1String(folder));
    const auto names = place.entryList(QDir::Files);
    ASSERT_FALSE(names.isEmpty()) << place.path().toStdString();
    for (const QString& name : names) {
        SCOPED_TRACE(place.filePath(name).toStdString());
        QFile file(place.filePath(name));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        EXPECT_NO_THROW(target(file.readAll()));
    }
}

} // namespace

TEST(Corpus, Json) { replay("fuzz/corpus/json", ullage::fuzz::scanJson); }

TEST(Corpus, Lines)
{
    replay("fuzz/corpus/line", ullage::fuzz::decodeOneLine);
    replay("fuzz/corpus/json", ullage::fuzz::decodeOneLine);
}

TEST(Corpus, Journals)
{
    replay("fuzz/corpus/journal", ullage::fuzz::readJournal);
    replay("fuzz/corpus/line", ullage::fuzz::readJournal);
}

TEST(Corpus, Typed) { replay("fuzz/corpus/quantity", ullage::fuzz::readTyped); }

TEST(Corpus, When) { replay("fuzz/corpus/moment", ullage::fuzz::readWhen); }
