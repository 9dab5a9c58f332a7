// The session's copies, the day book's reader and the window's jobs, while somebody works.
#include "app/session/session.h"
#include "app/session/store_thread.h"
#include "app/window/book_jobs.h"
#include "tests/core/store/temp_book.h"

#include <QEventLoop>
#include <QFile>
#include <QThread>

using namespace ullage;
using namespace ullage::app;
using namespace ullage::store::testing;

namespace
{

constexpr int kDeeds = 15;

void settle(int milliseconds)
{
    QEventLoop loop;
    QTimer::singleShot(milliseconds, &loop, &QEventLoop::quit);
    loop.exec();
}

class SessionThreads : public ::testing::Test
{
protected:
    SessionThreads() : session(options()) {}
    void SetUp() override
    {
        store::testing::TempBook made(path());
        ASSERT_TRUE(made.import(kStart));
    }
    void work()
    {
        for (int deed = 0; deed < kDeeds; ++deed) {
            const auto done = session.doing([&](ledger::Book& book) {
                return book.record("dev-1", ledger::Noted{"seen"}, {testNow(), {}});
            });
            EXPECT_TRUE(done) << done.error().text;
            settle(1);
        }
    }
    [[nodiscard]] QString path() const { return m_folder.filePath(QStringLiteral("home.ullage")); }
    [[nodiscard]] QString file(const char* name) const
    {
        return m_folder.filePath(QString::fromLatin1(name));
    }

private:
    SessionOptions options()
    {
        SessionOptions made;
        made.clock = testNow;
        made.lookMs = 5;
        made.copies = CopyPlaces{file("copies"), {}};
        made.lastSeen = file("seen");
        made.idleMs = 20;
        made.wholeCheck = [seen = made.lastSeen](const QString& path, const store::Watch& watch) {
            return checkWhole(path, seen, watch);
        };
        return made;
    }
    QTemporaryDir m_folder;

public:
    Session session;
};

} // namespace

TEST_F(SessionThreads, CopiesWhileSomebodyWorks)
{
    for (int time = 0; time < 3; ++time) {
        ASSERT_TRUE(session.open(path()));
        work();
        session.copies().copyNow();
    }
    const auto good = [this] { return session.copies().standing().lastGood.has_value(); };
    for (int waited = 0; !good() && waited < 100; ++waited) {
        settle(50);
    }
    EXPECT_TRUE(good());
    session.close();
}

TEST_F(SessionThreads, ReadsTheDayBookWhileSomebodyWorks)
{
    ASSERT_TRUE(session.open(path()));
    std::int64_t most = 0;
    int answers = 0;
    {
        StoreThread reader;
        reader.setBook(path());
        for (int time = 0; time < 20; ++time) {
            reader.post(
                [&](store::SqlStore& store) {
                    const auto last = store.lastEntry();
                    QMetaObject::invokeMethod(&session, [&, last] {
                        most = std::max(most, last.value_or(0));
                        ++answers;
                    });
                },
                [](const Error& error) { ADD_FAILURE() << error.text; });
            work();
            if (time % 8 == 7) {
                reader.setBook(path()); // lets go and takes it again
            }
        }
    }
    settle(10);
    EXPECT_GT(answers, 0);
    EXPECT_GT(most, 4);
}

TEST_F(SessionThreads, RunsAJobOnAThreadAndHearsOfItsEnd)
{
    ASSERT_TRUE(session.open(path()));
    QByteArray lines = kHead;
    for (int i = 0; i < 200; ++i) {
        lines +=
            R"({"type":"chemical","id":"c)" + QByteArray::number(i) + R"(","name":"borax"})" + "\n";
    }
    const BookJob import = [&lines, book = path()] {
        TempBook other(book);
        return other.import(lines).map([](const store::Imported& done) { return done.added; });
    };
    const auto fault = std::make_shared<std::optional<Error>>();
    const auto check = std::make_shared<store::BookCheck>();
    const std::vector<BookJob> jobs{import, exportJob(path(), file("all.jsonl")),
                                    copyJob(path(), file("copy.ullage"), testNow(), fault),
                                    checkJob(path(), file("seen"), check)};
    for (const BookJob& job : jobs) {
        const auto result = std::make_shared<Result<int>>(0);
        bool ended = false;
        QThread* const thread = QThread::create([job, result] { *result = job(); });
        QObject::connect(thread, &QThread::finished, &session, [&] {
            EXPECT_TRUE(*result) << result->error().text;
            ended = true;
        });
        thread->start();
        for (int waited = 0; !ended && waited < 2000; ++waited) {
            settle(5);
            session.lookForChanges();
        }
        EXPECT_TRUE(ended);
        thread->wait();
        delete thread;
    }
    EXPECT_EQ(session.entries(), 4 + 200);
}
