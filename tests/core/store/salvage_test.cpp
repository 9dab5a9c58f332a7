// Whatever of a book is not destroyed comes out, and what is missing is named.
#include "core/store/salvage.h"
#include "tests/core/store/temp_book.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSqlDatabase>
#include <QSqlQuery>

#include <csignal>
#include <set>
#include <sys/wait.h>
#include <unistd.h>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

constexpr qint64 kPage = 4096;

QByteArray read(const QString& path)
{
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return file.readAll();
}

void write(const QString& path, const QByteArray& text)
{
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    ASSERT_EQ(file.write(text), text.size());
}

// Bottles, films and notes over many pages, long ones among them that have pages of their own.
QByteArray season()
{
    QByteArray text = kHead + kSolution + kVessel;
    for (int batch = 1; batch <= 12; ++batch) {
        const QByteArray name = "dev-" + QByteArray::number(batch);
        const QByteArray month = QByteArray::number(batch).rightJustified(2, '0');
        text += R"({"type":"event","id":"m)" + QByteArray::number(batch) + R"(","batch":")" + name +
                R"(","kind":"mixed","at":"2026-)" + month +
                R"(-01T10:00:00Z","solution":"mq","vessel":"b1","volume_ml":1000,"name":")" + name +
                "\"}\n";
        for (int note = 1; note <= 20; ++note) {
            const int length = note == 7 && batch % 4 == 0 ? 9000 : 20 + note * 13;
            text += R"({"type":"event","id":"n)" + QByteArray::number(batch) + '-' +
                    QByteArray::number(note) + R"(","batch":")" + name +
                    R"(","kind":"noted","at":"2026-)" + month +
                    "-02T10:" + QByteArray::number(note + 10) + R"(:00Z","text":")" +
                    QByteArray(length, static_cast<char>('a' + note % 26)) + "\"}\n";
        }
        text += R"({"type":"event","id":"d)" + QByteArray::number(batch) + R"(","batch":")" + name +
                R"(","kind":"discarded","at":"2026-)" + month + R"(-28T10:00:00Z","how":"can"})" +
                "\n";
    }
    return text;
}

struct Leaf {
    qint64 page = 0; ///< from 1
    std::set<std::int64_t> numbers;
};

// A varint of SQLite: seven bits a byte, the highest first, eight in the ninth.
std::int64_t varint(const QByteArray& page, int& at)
{
    std::uint64_t value = 0;
    for (int count = 0; count < 9; ++count) {
        const auto byte = static_cast<quint8>(page.at(at++));
        if (count == 8) {
            return static_cast<std::int64_t>(value << 8U | byte);
        }
        value = value << 7U | (byte & 0x7FU);
        if ((byte & 0x80U) == 0) {
            break;
        }
    }
    return static_cast<std::int64_t>(value);
}

// The pages that hold the rows of a table, and which rows.
std::vector<Leaf> leavesOf(const QString& path, const char* table)
{
    const auto file = Connection::open(path, FileMode::Frozen, 1000);
    EXPECT_TRUE(file);
    QSqlQuery query((*file)->database());
    EXPECT_TRUE(query.exec(
        QStringLiteral("SELECT pageno FROM dbstat WHERE name = '%1' AND pagetype = 'leaf' "
                       "ORDER BY pageno")
            .arg(QLatin1String(table))));
    const QByteArray whole = read(path);
    std::vector<Leaf> leaves;
    while (query.next()) {
        Leaf leaf;
        leaf.page = query.value(0).toLongLong();
        const QByteArray page = whole.mid((leaf.page - 1) * kPage, kPage);
        EXPECT_EQ(page.at(0), '\x0D');
        const auto word = [&](int at) {
            return static_cast<quint8>(page.at(at)) * 256 + static_cast<quint8>(page.at(at + 1));
        };
        for (int cell = 0; cell < word(3); ++cell) {
            int at = word(8 + 2 * cell);
            varint(page, at);
            leaf.numbers.insert(varint(page, at));
        }
        leaves.push_back(leaf);
    }
    return leaves;
}

// The book of the season, closed, as one file.
class Salvage : public ::testing::Test
{
protected:
    void SetUp() override
    {
        TempBook book(m_book.inFolder("season.ullage"));
        ASSERT_TRUE(book.import(season()));
        path = book.path();
        whole = book.text();
        const QString file = m_book.inFolder("copy.ullage");
        ASSERT_TRUE(copyVerified(book.store->connection(), file));
        copy = readCopy(file);
        entries = copy.entries;
        book.book.reset();
        book.store.reset();
        sound = read(path);
    }
    void destroy(const Leaf& leaf, const QByteArray& how)
    {
        QByteArray damaged = sound;
        damaged.replace((leaf.page - 1) * kPage, kPage, how);
        write(path, damaged);
        wreck = damaged;
    }
    Result<Salvaged> salvaged(const std::vector<Copy>& copies, const StepWatch& watch = {})
    {
        QFile::remove(fresh());
        auto done = salvage(path, fresh(), copies, testNow(), watch);
        EXPECT_EQ(read(path), wreck) << "the original is never written";
        return done;
    }
    QString fresh() { return m_book.inFolder("fresh.ullage"); }
    QStringList left() { return QDir(m_book.inFolder("")).entryList({"fresh*"}, QDir::Files); }
    QByteArray line(std::int64_t number) { return whole.split('\n').at(number); }

    TempBook m_book;
    QString path;
    QByteArray whole;
    QByteArray sound;
    QByteArray wreck;
    Copy copy;
    std::int64_t entries = 0;
};

} // namespace

TEST_F(Salvage, WithAnyOneLeafDestroyedEveryEntryElsewhereComesOut)
{
    const auto leaves = leavesOf(path, "entry");
    ASSERT_GT(leaves.size(), 10U);
    const std::vector<QByteArray> ways{QByteArray(kPage, '\xAA'), QByteArray(kPage, '\0')};
    for (std::size_t i = 0; i < leaves.size(); ++i) {
        const Leaf& leaf = leaves[i];
        destroy(leaf, ways[i % ways.size()]);
        const auto done = salvaged({});
        ASSERT_TRUE(done) << leaf.page << ' ' << done.error().text;
        const auto lost = static_cast<std::int64_t>(leaf.numbers.size());
        EXPECT_EQ(done->entries, entries - lost) << leaf.page;
        ASSERT_EQ(static_cast<std::int64_t>(done->missing.size()), lost) << leaf.page;
        for (const Missing& missing : done->missing) {
            EXPECT_TRUE(leaf.numbers.contains(missing.first));
            EXPECT_TRUE(
                line(missing.first).contains('"' + QByteArray::fromStdString(missing.id) + '"'));
        }
        QByteArray expected;
        for (std::int64_t number = 0; number <= entries; ++number) {
            expected += leaf.numbers.contains(number) ? QByteArray() : line(number) + '\n';
        }
        EXPECT_EQ(TempBook(fresh()).text(), expected) << leaf.page;
    }
}

TEST_F(Salvage, TheCopyFillsInWhatIsLost)
{
    for (const Leaf& leaf : leavesOf(path, "entry")) {
        destroy(leaf, QByteArray(kPage, '\xAA'));
        const auto done = salvaged({copy});
        ASSERT_TRUE(done) << done.error().text;
        EXPECT_EQ(done->fromCopy, static_cast<std::int64_t>(leaf.numbers.size()));
        EXPECT_EQ(done->copies, QStringList{copy.path});
        EXPECT_TRUE(done->missing.empty());
        EXPECT_TRUE(done->faults.empty());
        EXPECT_EQ(TempBook(fresh()).text(), whole) << leaf.page;
    }
}

TEST_F(Salvage, WhatWasEnteredAfterTheCopyIsNamedAsMissing)
{
    TempBook book(path);
    ASSERT_TRUE(book.import(kHead + R"({"type":"chemical","id":"late","name":"borax"})" + "\n"));
    book.book.reset();
    book.store.reset();
    sound = read(path);
    destroy(leavesOf(path, "entry").back(), QByteArray(kPage, '\xAA'));
    const auto done = salvaged({copy});
    ASSERT_TRUE(done);
    EXPECT_EQ(done->entries, entries);
    ASSERT_EQ(done->missing.size(), 1U);
    EXPECT_EQ(done->missing.front().type, "chemical");
    EXPECT_EQ(done->missing.front().id, "late");
}

TEST_F(Salvage, OtherPagesMayBeLostToo)
{
    for (const char* table : {"action", "batch", "note", "sqlite_autoindex_entry_1"}) {
        const auto file = Connection::open(path, FileMode::Frozen, 1000);
        const auto page = (*file)->number(
            QStringLiteral("SELECT min(pageno) FROM dbstat WHERE name = '%1' AND pagetype = 'leaf'")
                .arg(QLatin1String(table)));
        ASSERT_TRUE(page);
        destroy({*page, {}}, QByteArray(kPage, '\xAA'));
        const auto done = salvaged({});
        ASSERT_TRUE(done) << table << done.error().text;
        EXPECT_EQ(done->entries, entries) << table;
        EXPECT_TRUE(done->missing.empty()) << table;
        EXPECT_TRUE(TempBook(fresh()).text().endsWith(whole.mid(kHead.size()))) << table;
        write(path, sound);
    }
}

TEST_F(Salvage, ACutOffFileGivesWhatIsLeftOfIt)
{
    for (const int part : {3, 2}) {
        wreck = sound.left(sound.size() / kPage / part * (part - 1) * kPage + 100);
        write(path, wreck);
        const auto alone = salvaged({});
        ASSERT_TRUE(alone) << alone.error().text;
        EXPECT_GT(alone->entries, 20);
        EXPECT_LT(alone->entries, entries);
        const auto filled = salvaged({copy});
        ASSERT_TRUE(filled);
        EXPECT_EQ(TempBook(fresh()).text(), whole);
    }
}

TEST_F(Salvage, WhereNothingCanBeReadTheCopyIsAllThereIs)
{
    wreck = QByteArray(kPage, '\xAA') + sound.mid(kPage);
    write(path, wreck);
    EXPECT_FALSE(salvaged({}));
    EXPECT_TRUE(left().isEmpty());
    const auto done = salvaged({copy});
    ASSERT_TRUE(done);
    EXPECT_TRUE(done->unreadable);
    EXPECT_EQ(done->fromCopy, entries);
    EXPECT_EQ(TempBook(fresh()).text(), whole);
}

TEST_F(Salvage, AChangedEntryIsTakenFromTheCopy)
{
    const qsizetype at = sound.indexOf("\"id\":\"n3-5\"");
    ASSERT_GT(at, 0);
    wreck = sound;
    wreck[at + 1] = '\xFF';
    write(path, wreck);
    const auto alone = salvaged({});
    ASSERT_TRUE(alone) << alone.error().text;
    EXPECT_EQ(alone->missing.size(), 1U);
    const auto done = salvaged({copy});
    ASSERT_TRUE(done);
    EXPECT_EQ(done->fromCopy, 1);
    EXPECT_EQ(TempBook(fresh()).text(), whole);
}

TEST_F(Salvage, ACopyOfAnotherWayIsNotMixedIn)
{
    TempBook other(m_book.inFolder("other.ullage"));
    QByteArray text = season();
    text.replace("\"id\":\"n", "\"id\":\"other");
    ASSERT_TRUE(other.import(text));
    ASSERT_TRUE(copyVerified(other.store->connection(), m_book.inFolder("other copy")));
    destroy(leavesOf(path, "entry").at(5), QByteArray(kPage, '\xAA'));
    const auto done = salvaged({readCopy(m_book.inFolder("other copy"))});
    ASSERT_TRUE(done);
    EXPECT_EQ(done->fromCopy, 0);
    EXPECT_FALSE(done->missing.empty());
}

TEST_F(Salvage, RefusesWhatIsThereAndWhatWasNeverABook)
{
    wreck = sound;
    EXPECT_EQ(salvage(path, copy.path, {}, testNow()).error().code, ErrorCode::IdTaken);
    EXPECT_EQ(salvage(path, path, {}, testNow()).error().code, ErrorCode::IdTaken);
    EXPECT_FALSE(salvage(m_book.inFolder("none"), fresh(), {}, testNow()));
    EXPECT_FALSE(salvage(m_book.inFolder(""), fresh(), {}, testNow()));
    write(m_book.inFolder("letter"), "Dear");
    EXPECT_FALSE(salvage(m_book.inFolder("letter"), fresh(), {}, testNow()));
    EXPECT_TRUE(left().isEmpty());
}

TEST_F(Salvage, KilledAtAnyStepLeavesNoHalfBookAndTheOriginal)
{
    destroy(leavesOf(path, "entry").at(3), QByteArray(kPage, '\xAA'));
    for (int step = 0;; ++step) {
        const pid_t child = ::fork();
        if (child == 0) {
            int count = 0;
            (void)salvage(path, fresh(), {copy}, testNow(), [&](const char*) {
                if (count++ == step) {
                    ::kill(::getpid(), SIGKILL);
                }
            });
            ::_exit(0);
        }
        int status = 0;
        ::waitpid(child, &status, 0);
        EXPECT_EQ(read(path), wreck);
        if (QFile::exists(fresh())) {
            EXPECT_EQ(TempBook(fresh()).text(), whole);
            QFile::remove(fresh());
        }
        if (!WIFSIGNALED(status)) {
            EXPECT_GT(step, 3);
            break;
        }
    }
}
