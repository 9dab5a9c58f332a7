// A book whose index is at hand, and what a search finds in it by either way.
#pragma once

#include "core/store/day_book.h"
#include "core/store/search_index.h"
#include "tests/core/store/temp_book.h"

#include <algorithm>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace ullage::store::testing
{

/// One event as a line; `rest` is what its kind has besides.
inline QByteArray eventLine(const QString& id, const QString& batch, const QString& at,
                            const QString& kind, QJsonObject rest = {})
{
    rest["type"] = "event";
    rest["id"] = id;
    if (!batch.isEmpty()) {
        rest["batch"] = batch;
    }
    rest["at"] = at;
    rest["kind"] = kind;
    return QJsonDocument(rest).toJson(QJsonDocument::Compact) + '\n';
}

inline QByteArray mixedLine(const QString& id, const QString& batch, const QString& at,
                            const QString& name)
{
    return eventLine(id, batch, at, "mixed",
                     {{"solution", "mq"}, {"vessel", "b1"}, {"volume_ml", 1000}, {"name", name}});
}

/// Notes in many bottles, none of them long; `text` and `at` are asked for each.
template <class Text, class At>
QByteArray notesIn(int notes, Text text, At at)
{
    constexpr int kEach = 50;
    QByteArray made = kHead + kSolution + kVessel;
    for (int i = 0; i < notes; ++i) {
        const QString batch = QStringLiteral("b%1").arg(i / kEach);
        if (i % kEach == 0) {
            made += mixedLine("m" + batch, batch, "2020-01-01T00:00:00Z", "zz");
        }
        made += eventLine("n" + QString::number(i), batch, at(i), "noted", {{"text", text(i)}});
    }
    return made;
}

class SearchBook
{
public:
    using Ids = std::vector<std::string>;

    explicit SearchBook(const QByteArray& journal)
    {
        const auto done = book.import(journal);
        EXPECT_TRUE(done) << done.error().text << done.error().field;
    }

    [[nodiscard]] QString folder() const { return book.inFolder("cache"); }
    SearchKeeper::Outcome keep(const Watch& watch = {})
    {
        const auto outcome = SearchKeeper::catchUp(*book.store, folder(), watch);
        EXPECT_TRUE(outcome) << outcome.error().text;
        return outcome.value_or(SearchKeeper::Outcome::Failed);
    }
    std::unique_ptr<SearchIndex> index() { return SearchIndex::open(*book.store, folder()); }

    /// Page by page; by the index if one is given.
    Ids find(const DayFilter& filter, SearchIndex* by = nullptr, int atOnce = 50)
    {
        DayBook days(*book.store, by);
        Ids found;
        std::optional<DayKey> after;
        while (true) {
            const auto page = days.page(filter, after, atOnce);
            EXPECT_TRUE(page) << page.error().text;
            if (!page) {
                return found;
            }
            for (const DayEntry& entry : page->entries) {
                found.push_back(entry.event.id);
            }
            if (!page->more) {
                return found;
            }
            EXPECT_TRUE(page->last != after) << "no page on the spot";
            after = page->last;
        }
    }
    static DayFilter looking(const QString& words) { return {.words = dayWords(words)}; }

    /// The same by either way, and what it is.
    Ids both(const DayFilter& filter, int atOnce = 50)
    {
        const auto by = index();
        EXPECT_NE(by, nullptr);
        Ids plain = find(filter, nullptr, atOnce);
        const Ids led = find(filter, by.get(), atOnce);
        EXPECT_EQ(led.size(), plain.size());
        const auto apart = std::mismatch(led.begin(), led.end(), plain.begin(), plain.end());
        EXPECT_TRUE(led == plain) << (apart.first == led.end() ? "nothing" : *apart.first)
                                  << " for "
                                  << (apart.second == plain.end() ? "nothing" : *apart.second);
        EXPECT_TRUE(by && !by->isSpent()) << "the index served";
        return plain;
    }
    Ids both(const QString& words) { return both(looking(words)); }

    TempBook book;
};

} // namespace ullage::store::testing
