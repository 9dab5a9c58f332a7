// The power goes at any moment: whatever the disk kept of what was not yet synced, the book opens,
// has every deed that was confirmed, and of the next one all or nothing.
#include "tests/faults/fault_books.h"
#include "tests/faults/fault_kit.h"
#include "tests/faults/power_vfs.h"

#include <QFile>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace ullage::faults
{

namespace
{

int cuts() { return rounds("ULLAGE_POWER_CUTS", 150); }

std::int64_t entriesIn(TempBook& book)
{
    const auto last = book.store->lastEntry();
    EXPECT_TRUE(last);
    return last.value_or(-1);
}

// One evening, as the disk saw it; after every deed the number of entries is confirmed.
void work(PowerVfs& vfs, const QString& path, const char* synchronous)
{
    for (int part = 0; part < 3; ++part) {
        TempBook book(path);
        ASSERT_TRUE(book.store->connection().run(
            QStringLiteral("PRAGMA synchronous = %1").arg(QLatin1String(synchronous))));
        if (part == 0) {
            ASSERT_TRUE(book.import(journalOfDraughts(3)));
            vfs.confirm(entriesIn(book));
        }
        for (int deed = 0; deed < 8; ++deed) {
            if (deed % 4 == 3) {
                const auto mark = QByteArray("c") + QByteArray::number(part) + 'x' +
                                  QByteArray::number(deed) + 'x';
                ASSERT_TRUE(book.import(journalOfChemicals(mark, 60)));
            } else {
                const QByteArray line = R"({"type":"event","id":"n)" + QByteArray::number(part) +
                                        '-' + QByteArray::number(deed) +
                                        R"(","batch":"b","kind":"noted",)"
                                        R"("at":"2020-08-01T10:00:00Z","text":"as before"})"
                                        "\n";
                ASSERT_TRUE(book.import(kHead + line));
            }
            vfs.confirm(entriesIn(book));
            if (deed == 5) {
                ASSERT_TRUE(book.store->connection().text("PRAGMA wal_checkpoint(TRUNCATE)"));
            }
        }
    }
}

// How the book stands after a cut: what is wrong, or empty.
std::string wrong(const std::map<std::string, std::string>& files, const QString& folder,
                  const QString& name, std::int64_t confirmed, const std::vector<std::int64_t>& all)
{
    for (const auto& [file, content] : files) {
        QFile out(folder + '/' + QString::fromStdString(file));
        EXPECT_TRUE(out.open(QIODevice::WriteOnly));
        out.write(content.data(), static_cast<qint64>(content.size()));
    }
    const QString path = folder + '/' + name;
    if (confirmed < 0) {
        // Nothing was said to be kept; but nobody may be left with a file that cannot be used.
        const auto made = SqlStore::open(path, {.access = Access::Create});
        return made ? std::string() : "cannot be made: " + made.error().text;
    }
    std::int64_t entries = -1;
    {
        const auto store = SqlStore::open(path);
        if (!store) {
            return "cannot be opened: " + store.error().text;
        }
        entries = (*store)->lastEntry().value_or(-1);
    }
    const auto found = std::find(all.begin(), all.end(), entries);
    const auto least = std::find(all.begin(), all.end(), confirmed);
    if (found == all.end()) {
        return "part of a deed: " + std::to_string(entries) + " entries";
    }
    if (found < least) {
        return "lost: " + std::to_string(confirmed) + " confirmed, " + std::to_string(entries) +
               " there";
    }
    if (found > least + 1) {
        return "more than was asked for";
    }
    const std::string check = soundness(path);
    return check == "sound" ? std::string() : check;
}

std::vector<std::int64_t> deedsOf(const std::vector<DiskStep>& steps)
{
    std::vector<std::int64_t> all;
    for (const DiskStep& step : steps) {
        if (step.kind == DiskStep::Confirm) {
            all.push_back(step.offset);
        }
    }
    return all;
}

// The first thing that is wrong in so many cuts; empty if nothing is.
std::string firstWrong(const std::vector<DiskStep>& steps, const QString& name, int count,
                       unsigned seed)
{
    std::mt19937 random(seed);
    const auto all = deedsOf(steps);
    for (int i = 0; i < count; ++i) {
        const std::size_t end = random() % (steps.size() + 1);
        const QTemporaryDir folder;
        const auto found = wrong(afterCut(steps, end, random), folder.path(), name,
                                 confirmedBefore(steps, end), all);
        if (!found.empty()) {
            return "cut " + std::to_string(i) + " before step " + std::to_string(end) + " of " +
                   std::to_string(steps.size()) + ": " + found;
        }
    }
    return {};
}

std::vector<DiskStep> recorded(const char* synchronous)
{
    const QTemporaryDir folder;
    PowerVfs vfs;
    work(vfs, folder.filePath(QStringLiteral("home.ullage")), synchronous);
    return vfs.steps();
}

} // namespace

TEST(PowerCut, KeepsWhatWasConfirmedAndNothingByHalves)
{
    const auto steps = recorded("FULL");
    ASSERT_GT(steps.size(), 200u);
    EXPECT_EQ(firstWrong(steps, QStringLiteral("home.ullage"), cuts(), 1), "");
}

// The test can fail: a program that does not wait for the disk loses deeds.
TEST(PowerCut, WouldShowWhatIsNotSynced)
{
    const auto steps = recorded("OFF");
    EXPECT_NE(firstWrong(steps, QStringLiteral("home.ullage"), 400, 2), "");
}

TEST(PowerCut, LeavesAnOlderBookThatCanStillBeBroughtUpToDate)
{
    const int last = schemaSteps().back().version;
    for (int version = 1; version < last; ++version) {
        SCOPED_TRACE(version);
        const QTemporaryDir folder;
        const QString path = folder.filePath(QStringLiteral("old.ullage"));
        makeOlderBook(path, version, journalOfDraughts(30));
        std::vector<DiskStep> steps;
        std::int64_t entries = 0;
        {
            PowerVfs vfs;
            vfs.confirm(0);
            const auto store = SqlStore::open(path);
            ASSERT_TRUE(store) << store.error().text;
            entries = (*store)->lastEntry().value_or(-1);
            steps = vfs.steps();
        }
        // Whenever the power goes, the same entries are there: that is the one deed.
        for (DiskStep& step : steps) {
            step.offset = step.kind == DiskStep::Confirm ? entries : step.offset;
        }
        std::size_t read = 0; // from here on the file is known to the record
        while (read < steps.size() && steps[read].kind != DiskStep::SyncFolder) {
            ++read;
        }
        std::mt19937 random(static_cast<unsigned>(version));
        for (int i = 0; i < cuts() / last; ++i) {
            const std::size_t end = read + 1 + random() % (steps.size() - read);
            const QTemporaryDir after;
            EXPECT_EQ(wrong(afterCut(steps, end, random), after.path(),
                            QStringLiteral("old.ullage"), entries, {entries}),
                      "")
                << "cut before step " << end;
        }
    }
}

} // namespace ullage::faults
