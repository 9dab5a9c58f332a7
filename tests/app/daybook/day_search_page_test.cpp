// Words looked for in a long day book, with the index that the page makes beside.
#include "tests/app/daybook/day_driver.h"

#include "app/daybook/looking_strip.h"
#include "core/store/journal_reader.h"
#include "core/store/search_index.h"

#include <QDir>
#include <QStandardPaths>

namespace ullage::app
{

namespace
{

constexpr int kNotes = 6000;

class LongDayBookTest : public testing::Test
{
protected:
    LongDayBookTest()
    {
        desk.pass(-40);
        const std::string dev = desk.mix("starter-mq-borax", "starter-glass-1000", 1000, "Dev 1");
        desk.pass(40);
        QByteArray text = "{\"type\":\"book\",\"format\":\"ullage-journal\",\"version\":2}\n";
        for (int i = 0; i < kNotes; ++i) {
            const QByteArray number = QByteArray::number(i);
            text += R"({"type":"event","id":"n)" + number + R"(","batch":")" +
                    QByteArray::fromStdString(dev) +
                    R"(","kind":"noted","at":"2026-11-01T10:00:00Z","text":"line )" + number +
                    (i == 17 ? " thermometer broken" : "") + "\"}\n";
        }
        QBuffer journal(&text);
        journal.open(QIODevice::ReadOnly);
        auto store = store::SqlStore::open(desk.bookPath());
        auto book = ledger::Book::open(
            **store, [this] { return desk.now(); }, [] { return std::string("not needed"); });
        const auto done = store::importJournal(**book, **store, journal, "notes.jsonl");
        EXPECT_TRUE(done) << done.error().field << ' ' << done.error().text;
        desk.session().lookForChanges();
    }
    ~LongDayBookTest() override { QDir(cache()).removeRecursively(); }
    static QString cache()
    {
        return QDir(QStandardPaths::writableLocation(QStandardPaths::CacheLocation))
            .filePath(QStringLiteral("words"));
    }
    // How far the book's index has come, or nothing.
    std::optional<std::int64_t> indexed()
    {
        auto store = store::SqlStore::open(desk.bookPath(), {.access = store::Access::Read});
        const auto index = store::SearchIndex::open(**store, cache());
        return index ? index->upTo(**store) : std::nullopt;
    }

    Desk desk;
};

} // namespace

TEST_F(LongDayBookTest, TheRareWordIsFoundAndTheIndexCatchesUpMeanwhile)
{
    PageOn on(desk);
    type(on.page, "Find", "THERMOMETER 17");
    waitFor([&] { return on.shown().size() == 1; });
    const auto last = [&] {
        auto store = store::SqlStore::open(desk.bookPath(), {.access = store::Access::Read});
        return (*store)->lastEntry().value_or(-1);
    };
    waitFor([&] { return indexed() == last(); });
    type(on.page, "Find", "thermometer broken");
    waitFor([&] { return on.shown().size() == 1; });
    type(on.page, "Find", "thermometer whole");
    waitFor([&] { return on.shown().isEmpty(); });
}

TEST_F(LongDayBookTest, AShortWordIsFoundOnFoot)
{
    PageOn on(desk);
    type(on.page, "Find", "99");
    waitFor([&] { return on.shown().size() > 10; });
}

} // namespace ullage::app
