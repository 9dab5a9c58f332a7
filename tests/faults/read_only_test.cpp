// A book that may only be read, in a folder that may or may not be written: it is shown as it is,
// nothing is changed or left beside it, and every change is refused with what to do.
//
// Root may write everything, so where the tests are run by root the child is another user.
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

const ChildRules kNobody{.nobody = true};

void mode(const QString& path, mode_t bits)
{
    ASSERT_EQ(::chmod(QFile::encodeName(path).constData(), bits), 0) << path.toStdString();
}

// A folder with a book in it that belongs to nobody; what it may be used for is said after.
class ReadOnly : public ::testing::Test
{
protected:
    void SetUp() override
    {
        {
            TempBook made(book());
            ASSERT_TRUE(made.import(kStart));
        }
        sound = call(book(), {"report", "--json"}).out;
        ASSERT_FALSE(sound.isEmpty());
        ASSERT_TRUE(QDir().mkdir(elsewhere()));
    }
    void TearDown() override
    {
        mode(folder(), 0755);
        mode(elsewhere(), 0755);
    }
    void allow(mode_t file, mode_t place)
    {
        giveToNobody(m_folder.path());
        mode(book(), file);
        mode(folder(), place);
        before = contentsOf(folder());
    }
    // Reads in every way, tries to write in every way, as somebody who may not.
    // SQLite reads by an index beside the book; who may make it but may not write the book itself
    // has no right to do away with it, for others may be reading by it.
    void expectReadsAndKeeps(bool mayLeaveIndex = false)
    {
        const bool ran = inChild(kNobody, [&] {
            const Called report = call(book(), {"report", "--json"});
            EXPECT_EQ(report.code, 0) << report.err.constData();
            EXPECT_EQ(report.out, sound);
            EXPECT_EQ(call(book(), {"check"}).code, 0);
            const Called all = call(book(), {"export", "-"});
            EXPECT_EQ(all.code, 0) << all.err.constData();
            EXPECT_EQ(all.out.count('\n'), kStart.count('\n'));
            const Called copied =
                call(book(), {"backup", elsewhere() + QStringLiteral("/copy.ullage")});
            EXPECT_EQ(copied.code, 0) << copied.err.constData();
            const Called refused = call(book(), {"import", "-"}, journalOfChemicals("c", 3));
            EXPECT_EQ(refused.code, 3);
            EXPECT_TRUE(refused.err.contains("may not be written")) << refused.err.constData();
        });
        EXPECT_TRUE(ran);
        if (!mayLeaveIndex) {
            EXPECT_EQ(changedSince(before, folder()), "");
            return;
        }
        const auto after = contentsOf(folder());
        EXPECT_EQ(after.at(book()), before.at(book()));
        for (const auto& [name, content] : after) {
            EXPECT_TRUE(before.contains(name) || name == book() + QStringLiteral("-shm") ||
                        (name == book() + QStringLiteral("-wal") && content.isEmpty()))
                << name.toStdString();
        }
        EXPECT_EQ(soundness(elsewhere() + QStringLiteral("/copy.ullage")), "sound");
    }

    [[nodiscard]] QString folder() const { return m_folder.filePath(QStringLiteral("place")); }
    [[nodiscard]] QString book() const { return folder() + QStringLiteral("/home.ullage"); }
    [[nodiscard]] QString elsewhere() const { return m_folder.filePath(QStringLiteral("other")); }

    QByteArray sound;
    std::map<QString, QByteArray> before;

private:
    static QString made(const QTemporaryDir& in)
    {
        QDir(in.path()).mkdir(QStringLiteral("place"));
        return in.path();
    }
    QTemporaryDir m_folder;
    QString m_made = made(m_folder);
};

} // namespace

TEST_F(ReadOnly, TheFileAlone)
{
    allow(0444, 0755);
    expectReadsAndKeeps(true);
}

TEST_F(ReadOnly, TheFolderAlone)
{
    allow(0644, 0555);
    expectReadsAndKeeps();
}

TEST_F(ReadOnly, FileAndFolder)
{
    allow(0444, 0555);
    expectReadsAndKeeps();
}

TEST_F(ReadOnly, AFileThatMayNotEvenBeRead)
{
    allow(0000, 0755);
    inChild(kNobody, [&] {
        for (const QStringList& words : {QStringList{"report"}, QStringList{"check"},
                                         QStringList{"export", "-"}, QStringList{"import", "-"}}) {
            const Called refused = call(book(), words, kStart);
            EXPECT_EQ(refused.code, 3) << words.join(' ').toStdString();
            EXPECT_TRUE(refused.err.contains("may not")) << refused.err.constData();
        }
    });
    mode(book(), 0644);
    EXPECT_EQ(changedSince(before, folder()), "");
}

TEST_F(ReadOnly, AFolderThatMayNotBeEntered)
{
    allow(0644, 0000);
    inChild(kNobody, [&] {
        for (const QStringList& words :
             {QStringList{"report"}, QStringList{"check"}, QStringList{"import", "-"}}) {
            const Called refused = call(book(), words, kStart);
            EXPECT_EQ(refused.code, 3) << words.join(' ').toStdString();
            EXPECT_FALSE(refused.err.isEmpty());
        }
    });
    mode(folder(), 0755);
    EXPECT_EQ(changedSince(before, folder()), "");
}

// No copy, restored book, journal or new book can be made there; what to do is said.
TEST_F(ReadOnly, NothingNewInTheFolder)
{
    const QString copy = elsewhere() + QStringLiteral("/copy.ullage");
    ASSERT_EQ(call(book(), {"backup", copy}).code, 0);
    allow(0644, 0555);
    inChild(kNobody, [&] {
        const QString inside = folder() + QStringLiteral("/new");
        for (const QStringList& words :
             {QStringList{"backup", inside + QStringLiteral(".ullage")},
              QStringList{"restore", copy, "--replace"},
              QStringList{"export", inside + QStringLiteral(".jsonl")}}) {
            const Called refused = call(book(), words);
            EXPECT_EQ(refused.code, 3) << words.join(' ').toStdString();
            EXPECT_FALSE(refused.err.isEmpty()) << words.join(' ').toStdString();
        }
        const Called refused = call(inside + QStringLiteral(".ullage"), {"import", "-"}, kStart);
        EXPECT_EQ(refused.code, 3);
        EXPECT_FALSE(refused.err.isEmpty());
    });
    EXPECT_EQ(changedSince(before, folder()), "");
}

// What a killed program left in its log is read too, or the reading is refused: an older state is
// never shown as if it were all.
TEST_F(ReadOnly, ALogThatIsNotYetInTheFile)
{
    const QString kept = elsewhere() + QStringLiteral("/kept");
    {
        TempBook open(book());
        ASSERT_TRUE(open.import(journalOfChemicals("late", 2)));
        // As a kill would leave them.
        ASSERT_TRUE(QFile::copy(book(), kept));
        ASSERT_TRUE(QFile::copy(book() + QStringLiteral("-wal"), kept + QStringLiteral("-wal")));
    }
    ASSERT_TRUE(QFile::remove(book()));
    ASSERT_TRUE(QFile::rename(kept, book()));
    ASSERT_TRUE(QFile::rename(kept + QStringLiteral("-wal"), book() + QStringLiteral("-wal")));
    allow(0444, 0555);
    inChild(kNobody, [&] {
        const Called all = call(book(), {"export", "-"});
        if (all.code == 0) {
            EXPECT_EQ(all.out.count('\n'), kStart.count('\n') + 2);
        } else {
            EXPECT_EQ(all.code, 3);
            EXPECT_FALSE(all.err.isEmpty());
        }
    });
    EXPECT_EQ(changedSince(before, folder()), "");
}

// An older book cannot be brought up to date there: it is read all the same, or refused; in any
// case it stays as it was.
TEST_F(ReadOnly, AnOlderBook)
{
    ASSERT_TRUE(QFile::remove(book()));
    makeOlderBook(book(), 1, kStart);
    allow(0444, 0555);
    inChild(kNobody, [&] {
        const Called report = call(book(), {"report", "--json"});
        if (report.code == 0) {
            EXPECT_EQ(report.out, sound);
        } else {
            EXPECT_EQ(report.code, 3);
            EXPECT_FALSE(report.err.isEmpty());
        }
    });
    EXPECT_EQ(changedSince(before, folder()), "");
}

} // namespace ullage::faults
