// Twenty thousand events, page by page, without a wait on the window's thread.
#include "tests/app/daybook/day_driver.h"

#include "core/store/journal_reader.h"

#include <QAbstractItemModelTester>
#include <QElapsedTimer>
#include <QFile>
#include <QScrollBar>
#include <QSignalSpy>
#include <QUuid>

namespace ullage::app
{

namespace
{

constexpr int kBatches = 400;
constexpr int kNotes = 49; // and the mixing: 50 events each

// Entered once; a book of this size takes a moment to make.
const QByteArray& bigJournal()
{
    static const QByteArray text = [] {
        QByteArray made = R"({"type":"book","format":"ullage-journal","version":1})"
                          "\n"
                          R"({"type":"solution","id":"mq","name":"MQ","role":"developer"})"
                          "\n"
                          R"({"type":"vessel","id":"v","name":"V","capacity_ml":1030,)"
                          R"("material":"glass"})"
                          "\n";
        const auto start = QDateTime(QDate(2024, 1, 1), QTime(0, 0), Qt::UTC);
        for (int batch = 0; batch < kBatches; ++batch) {
            for (int i = 0; i <= kNotes; ++i) {
                const QString id = QStringLiteral("%1-%2").arg(batch).arg(i);
                const QString at = start.addSecs(batch * 200'000 + i * 3600).toString(Qt::ISODate);
                const QString what = i == 0
                                         ? QStringLiteral(R"("mixed","solution":"mq","vessel":"v",)"
                                                          R"("volume_ml":1000,"name":"Dev %1")")
                                               .arg(batch)
                                         : QStringLiteral(R"("noted","text":"note %1")").arg(id);
                made += QStringLiteral(R"({"type":"event","id":"%1","batch":"b%2","at":"%3",)"
                                       R"("kind":%4})")
                            .arg(id)
                            .arg(batch)
                            .arg(at, what)
                            .toUtf8() +
                        '\n';
            }
        }
        return made;
    }();
    return text;
}

class BigBook : public testing::Test
{
protected:
    // Made once: that takes a moment.
    static void SetUpTestSuite()
    {
        made = std::make_unique<QTemporaryDir>();
        auto store =
            store::SqlStore::open(made->filePath("big.ullage"), {.access = store::Access::Create});
        auto book = ledger::Book::open(**store, later, [] { return std::string("x"); });
        QBuffer text;
        text.setData(bigJournal());
        text.open(QIODevice::ReadOnly);
        const auto done = store::importJournal(**book, **store, text, "big.jsonl");
        ASSERT_TRUE(done) << done.error().text;
    }
    static void TearDownTestSuite() { made.reset(); }
    static chemistry::Instant later()
    {
        return std::chrono::sys_days(std::chrono::year(2027) / 1 / 1);
    }

    BigBook()
    {
        EXPECT_TRUE(QFile::copy(made->filePath("big.ullage"), folder.filePath("big.ullage")));
        thread = std::make_unique<StoreThread>();
        model = std::make_unique<DayModel>(*thread);
        model->setWords(
            [](const store::DayEntry& entry) {
                return dayLine(entry, formulary::Formulary(), Wording());
            },
            QLocale());
    }
    ~BigBook() override { thread.reset(); }

    void open() const { thread->setBook(folder.filePath("big.ullage")); }
    void wait() const
    {
        waitFor([this] { return !model->isWaiting(); });
    }

    static inline std::unique_ptr<QTemporaryDir> made;
    QTemporaryDir folder;
    std::unique_ptr<StoreThread> thread;
    std::unique_ptr<DayModel> model;
};

} // namespace

TEST_F(BigBook, ReadsAPageAtATimeInOrderAndWhole)
{
    open();
    model->setFilter({});
    EXPECT_EQ(model->rowCount(), 0) << "nothing is waited for";
    wait();
    EXPECT_EQ(model->entriesRead(), DayModel::kPage);
    EXPECT_EQ(model->entry(1)->event.id, "399-49") << "the newest";
    EXPECT_TRUE(model->index(0).data(DayModel::IsDayRole).toBool());
    EXPECT_FALSE(model->index(0).flags() & Qt::ItemIsSelectable);
    while (model->canFetchMore({})) {
        const int before = model->entriesRead();
        model->fetchMore({});
        EXPECT_FALSE(model->canFetchMore({})) << "one page at a time";
        wait();
        ASSERT_LE(model->entriesRead(), before + DayModel::kPage);
    }
    EXPECT_EQ(model->entriesRead(), kBatches * (kNotes + 1));
    std::set<std::string> seen;
    const store::DayEntry* last = nullptr;
    for (int row = 0; row < model->rowCount(); ++row) {
        const store::DayEntry* entry = model->entry(row);
        if (!entry) {
            EXPECT_TRUE(model->entry(row + 1)) << "no day without an entry";
            continue;
        }
        EXPECT_TRUE(seen.insert(entry->event.id).second) << "twice";
        ASSERT_TRUE(!last || entry->key.atMs <= last->key.atMs);
        last = entry;
    }
    EXPECT_EQ(last->event.id, "0-0");
}

// The tester asks for more the moment rows are there, as a view may.
TEST_F(BigBook, KeepsTheRulesOfModels)
{
    QAbstractItemModelTester tester(model.get(),
                                    QAbstractItemModelTester::FailureReportingMode::Fatal);
    open();
    model->setFilter({.kinds = {"mixed"}});
    waitFor([&] { return model->entriesRead() == kBatches; });
    QTest::qWait(50);
    EXPECT_EQ(model->entriesRead(), kBatches) << "no page twice";
    model->setFilter({.batch = "b7"});
    waitFor([&] { return model->entriesRead() == kNotes + 1; });
    model->clear();
}

TEST_F(BigBook, FilterAndSearchGoThroughAllOfIt)
{
    open();
    model->setFilter({.batch = "b7"});
    wait();
    EXPECT_EQ(model->entriesRead(), kNotes + 1);
    model->setFilter({.kinds = {"mixed"}});
    wait();
    EXPECT_EQ(model->entriesRead(), DayModel::kPage);
    model->fetchMore({});
    wait();
    EXPECT_EQ(model->entriesRead(), kBatches);
    model->setFilter({.words = {{"NOTE 3-17", {}, {}, {}, {}}}});
    wait();
    ASSERT_EQ(model->entriesRead(), 1) << "near the end of the book";
    EXPECT_EQ(model->entry(1)->event.id, "3-17");
    model->setFilter({.words = store::dayWords("nowhere")});
    wait();
    EXPECT_EQ(model->entriesRead(), 0);
    EXPECT_FALSE(model->canFetchMore({}));
}

TEST_F(BigBook, TheLastFilterWinsHoweverFastTheyCome)
{
    open();
    QSignalSpy read(model.get(), &DayModel::read);
    for (const char* text : {"n", "no", "not", "nowhere", "note 3-1", "note 3-17"})
        model->setFilter({.words = {{text, {}, {}, {}, {}}}});
    wait();
    QTest::qWait(50);
    ASSERT_EQ(model->entriesRead(), 1);
    // Looking goes on after the one that was found, and says so; it begins only once.
    const auto anew = std::count_if(read.begin(), read.end(),
                                    [](const QVariantList& what) { return what[0].toBool(); });
    EXPECT_EQ(anew, 1) << "what was typed on the way is not shown";
}

// The window's thread does nothing that takes long: handing over a page of 200 rows included.
TEST_F(BigBook, NothingHoldsTheWindowUp)
{
    open();
    QListView list;
    list.setModel(model.get());
    list.resize(400, 600);
    list.show();
    qint64 longest = 0;
    const auto turn = [&] {
        QElapsedTimer timer;
        timer.start();
        QCoreApplication::processEvents();
        longest = std::max(longest, timer.elapsed());
    };
    QElapsedTimer whole;
    whole.start();
    model->setFilter({.words = store::dayWords("note")});
    for (int page = 0; page < 10; ++page) {
        while (model->isWaiting() && whole.elapsed() < 20'000)
            turn();
        list.scrollToBottom();
        turn();
    }
    EXPECT_GT(model->entriesRead(), 5 * DayModel::kPage);
    // Generous, for a machine under load and sanitizers; a whole read takes many times as long.
    EXPECT_LT(longest, 250);
}

TEST_F(BigBook, WhatIsNewIsReadWithoutLosingThePlace)
{
    open();
    model->setFilter({});
    wait();
    model->fetchMore({});
    wait();
    QSignalSpy read(model.get(), &DayModel::read);
    model->refresh();
    wait();
    EXPECT_EQ(read.count(), 0) << "nothing has changed";
    EXPECT_EQ(model->entriesRead(), 2 * DayModel::kPage);
    {
        auto store = store::SqlStore::open(folder.filePath("big.ullage"));
        auto book = ledger::Book::open(**store, later,
                                       [] { return QUuid::createUuid().toString().toStdString(); });
        ASSERT_TRUE((*book)->voidEvent("399-49", "wrong"));
    }
    model->refresh();
    wait();
    EXPECT_EQ(read.count(), 1);
    EXPECT_EQ(model->entriesRead(), 2 * DayModel::kPage) << "as far as it was read";
    EXPECT_EQ(model->index(1).data(DayModel::TakenRole).toString(), "taken back: wrong");
}

TEST_F(BigBook, ABookThatCannotBeReadIsToldOnce)
{
    thread->setBook(folder.filePath("missing.ullage"));
    QSignalSpy failed(model.get(), &DayModel::failed);
    model->setFilter({});
    wait();
    EXPECT_EQ(failed.count(), 1);
    EXPECT_EQ(model->rowCount(), 0);
}

} // namespace ullage::app
