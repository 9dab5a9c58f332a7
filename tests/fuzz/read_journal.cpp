#include "app/words/error_words.h"
#include "core/ledger/book_import.h"
#include "core/store/journal_codec.h"
#include "core/store/line_reader.h"
#include "tests/core/ledger/memory_store.h"
#include "tests/fuzz/fuzz_targets.h"

#include <QBuffer>

#include <cmath>

namespace ullage::fuzz
{

using namespace ledger;
using namespace store;

namespace
{

chemistry::Instant now() { return std::chrono::sys_days(std::chrono::year(2027) / 1 / 1); }

// A book in memory that remembers the lines it took, in order.
struct InMemory {
    MemoryStore store;
    std::unique_ptr<Book> book;
    int ids = 0;

    InMemory()
    {
        book = *Book::open(store, now, [this] { return "new-" + std::to_string(++ids); });
    }

    // All lines or none; how many were added.
    Result<int> enter(const QByteArray& text)
    {
        QBuffer device;
        device.setData(text);
        device.open(QIODevice::ReadOnly);
        LineReader lines(device);
        auto import = book->import();
        if (!import) {
            return tl::unexpected(import.error());
        }
        while (true) {
            const auto read = lines.next();
            if (!read) {
                return tl::unexpected(read.error());
            }
            if (!*read) {
                return (*import)->finish();
            }
            if ((*read)->trimmed().isEmpty()) {
                continue;
            }
            const auto line = decodeLine(**read);
            if (!line) {
                return tl::unexpected(line.error());
            }
            if (const auto* entry = std::get_if<Entry>(&*line)) {
                if (auto fine = (*import)->add(*entry); !fine) {
                    return tl::unexpected(fine.error());
                }
            }
        }
    }
};

void judge(const Batch& batch)
{
    need(std::isfinite(batch.volume.value()) && batch.volume.value() >= 0, "a volume below none");
    need(std::isfinite(batch.wear.value()), "wear that is not finite");
    const Assessment judged = assess(batch);
    need(std::isfinite(judged.wearFactor), "a wear factor that is not finite");
    need(!judged.filmsLeft || std::isfinite(judged.filmsLeft->value()), "films left not finite");
    for (const Reason& reason : judged.reasons) {
        for (const auto& [name, number] : reason.numbers) {
            need(std::isfinite(number), "a reason's number that is not finite");
        }
    }
}

void judgeAll(Book& book)
{
    for (const auto& at : {now(), now() + std::chrono::hours(24 * 365)}) {
        const auto batches = book.batches(at, true);
        need(batches.has_value(), "what was accepted does not fold");
        for (const Batch& batch : *batches) {
            judge(batch);
        }
    }
}

} // namespace

void readJournal(const QByteArray& text)
{
    InMemory one;
    const std::string before = one.store.contents();
    const auto added = one.enter(text);
    need(!one.store.inTransaction(), "a transaction left open");
    if (!added) {
        need(!app::errorLine(added.error()).isEmpty(), "a refusal without words");
        need(one.store.contents() == before, "something is left of what was refused");
        judgeAll(*one.book);
        return;
    }
    need(static_cast<int>(one.store.entries()) == *added, "another number of entries");
    const auto again = one.enter(text);
    need(again && *again == 0, "not the same the second time");
    judgeAll(*one.book);

    // A book opened anew on what was kept says the same.
    const auto fresh = Book::open(one.store, now, [] { return std::string("x"); });
    need(fresh.has_value(), "what was accepted cannot be opened");
    judgeAll(**fresh);
}

} // namespace ullage::fuzz
