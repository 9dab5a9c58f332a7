// A Book on a store in memory, with a developer, a fixer and bottles in it.
#pragma once

#include "core/ledger/book.h"
#include "tests/core/ledger/ledger_kit.h"
#include "tests/core/ledger/memory_store.h"

namespace ullage::ledger
{

class BookTest : public testing::Test
{
protected:
    MemoryStore store;
    chemistry::Instant now = History::at(100);
    int ids = 0;
    std::unique_ptr<Book> book = opened();

    BookTest()
    {
        EXPECT_TRUE(book->add(History::developer()));
        EXPECT_TRUE(book->add(History::fixer()));
        const History history;
        for (const auto& vessel : history.formulary.vessels()) {
            EXPECT_TRUE(book->add(*vessel));
        }
    }

    /// Another Book on the same store, as after a restart or in another window.
    std::unique_ptr<Book> opened()
    {
        auto result = Book::open(
            store, [this] { return now; }, [this] { return "id" + std::to_string(++ids); });
        EXPECT_TRUE(result);
        return std::move(*result);
    }
    void restart() { book = opened(); }

    static When when(double days) { return {History::at(days), {}}; }

    std::string mix(double days = 0, const std::string& solution = "dev", double volume = 1000,
                    const std::string& vessel = "glass")
    {
        const auto id = book->mix(
            {solution, vessel, chemistry::Millilitres(volume), solution + " 1", {}, false},
            when(days));
        EXPECT_TRUE(id) << id.error().field;
        return id.value_or("");
    }
    static Load rolls(double count) { return {{{"120", count}}, {}}; }
    Result<std::string> run(const std::vector<std::string>& batches, double days, double films)
    {
        FilmRun request;
        request.load = rolls(films);
        for (const auto& batch : batches) {
            request.baths.push_back({batch, {}, {}, false, {}});
        }
        return book->process(request, History::at(days));
    }

    Batch batch(const std::string& id, double days = 100)
    {
        auto found = book->batch(id, History::at(days));
        EXPECT_TRUE(found) << found.error().text;
        return found ? *found : Batch();
    }
    double wear(const std::string& id, double days = 100) { return batch(id, days).wear.value(); }

    /// Makes sure that a request is refused, for this reason and field, and leaves nothing behind.
    template <class T>
    void expectRefused(const std::function<Result<T>()>& request, ErrorCode code,
                       const std::string& field)
    {
        const auto before = store.contents();
        const auto could = book->undoable();
        const auto result = request();
        ASSERT_FALSE(result) << "accepted";
        EXPECT_EQ(result.error().code, code) << int(result.error().code);
        EXPECT_EQ(result.error().field, field);
        EXPECT_EQ(store.contents(), before);
        EXPECT_FALSE(store.inTransaction());
        EXPECT_EQ(book->undoable().has_value(), could.has_value());
        if (could) {
            EXPECT_EQ(book->undoable()->id, could->id);
        }
    }
    void expectRefused(const std::function<Result<void>()>& request, ErrorCode code,
                       const std::string& field)
    {
        expectRefused<void>(request, code, field);
    }
};

} // namespace ullage::ledger
