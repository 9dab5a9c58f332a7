// Several threads, each with a store and a Book of its own, on one file.
#include "core/store/backup.h"
#include "core/store/day_book.h"
#include "core/store/integrity.h"
#include "tests/core/store/temp_book.h"

#include <atomic>
#include <thread>

using namespace ullage;
using namespace ullage::store;
using namespace ullage::store::testing;

namespace
{

constexpr int kDeeds = 12;

QByteArray note(int thread, int deed)
{
    return kHead + R"({"type":"event","id":"n)" + QByteArray::number(thread) + '-' +
           QByteArray::number(deed) +
           R"(","batch":"dev-1","kind":"noted","at":"2026-08-01T10:00:00Z","text":"seen"})" + "\n";
}

} // namespace

TEST(StoreThreads, WriteAndReadOneBookAtOnce)
{
    TempBook home;
    ASSERT_TRUE(home.import(kStart));
    std::atomic<int> confirmed = 0;
    std::atomic<bool> done = false;
    std::vector<std::thread> threads;
    for (int thread = 0; thread < 3; ++thread) {
        threads.emplace_back([&, thread] {
            TempBook own(home.path());
            for (int deed = 0; deed < kDeeds; ++deed) {
                confirmed += own.import(note(thread, deed)) ? 1 : 0;
            }
        });
    }
    std::thread reader([&] {
        const auto own = SqlStore::open(home.path(), {.access = Access::Read});
        ASSERT_TRUE(own);
        while (!done) {
            const auto check = checkBook(**own);
            EXPECT_TRUE(check && check->findings.empty());
        }
    });
    std::thread copier([&] {
        const QTemporaryDir folder;
        for (int i = 0; i < 4; ++i) {
            const auto own = SqlStore::open(home.path());
            ASSERT_TRUE(own);
            const QString copy = folder.filePath(QString::number(i));
            const auto made = copyVerified((*own)->connection(), copy);
            EXPECT_TRUE(made) << made.error().text;
        }
    });
    for (std::thread& thread : threads) {
        thread.join();
    }
    done = true;
    reader.join();
    copier.join();
    EXPECT_GT(confirmed, 0);
    EXPECT_EQ(home.store->lastEntry().value_or(0), 4 + confirmed);
}
