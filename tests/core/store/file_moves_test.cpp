// Files change places whole, and nobody's file is taken away.
#include "core/store/file_moves.h"

#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include <gtest/gtest.h>

using namespace ullage;
using namespace ullage::store;

namespace
{

class FileMoves : public ::testing::Test
{
protected:
    QString path(const char* name) { return m_folder.filePath(QString::fromLatin1(name)); }
    QString write(const char* name, const QByteArray& text)
    {
        QFile file(path(name));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
        return path(name);
    }
    static QByteArray read(const QString& path)
    {
        QFile file(path);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("none");
    }

private:
    QTemporaryDir m_folder;
};

} // namespace

TEST_F(FileMoves, ANewPartIsNobodysAndKnownByItsName)
{
    const QString target = write("book", "whole");
    const auto one = newPart(target);
    const auto other = newPart(target);
    ASSERT_TRUE(one && other);
    EXPECT_NE(*one, *other);
    EXPECT_TRUE(isPart(*one));
    EXPECT_FALSE(isPart("mine.part"));
    EXPECT_FALSE(isPart("book"));
    EXPECT_FALSE(newPart(path("no folder/book")));
}

TEST_F(FileMoves, AMoveNeverGoesOverAFileOrALink)
{
    const QString from = write("new", "new");
    const QString to = write("old", "old");
    const QString nowhere = path("link");
    ASSERT_TRUE(QFile::link(path("nothing"), nowhere));
    for (const QString& taken : {to, nowhere}) {
        const auto refused = moveNew(from, taken);
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.error().code, ErrorCode::IdTaken);
    }
    EXPECT_EQ(read(to), "old");
    EXPECT_TRUE(QFileInfo(nowhere).isSymLink());
    ASSERT_TRUE(moveNew(from, path("free")));
    EXPECT_EQ(read(path("free")), "new");
    EXPECT_EQ(freeName(nowhere), nowhere + "-2");
}

TEST_F(FileMoves, TwoFilesChangePlaces)
{
    const QString fresh = write("fresh", "new");
    const QString old = write("old", "old");
    ASSERT_TRUE(changePlaces(fresh, old));
    EXPECT_EQ(read(old), "new");
    EXPECT_EQ(read(fresh), "old");
    EXPECT_FALSE(changePlaces(fresh, path("nothing")));
    EXPECT_EQ(read(fresh), "old");
}
