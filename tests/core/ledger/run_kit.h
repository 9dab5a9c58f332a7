// A shelf for tests of runs: a book in memory with a clock that tests turn.
#pragma once

#include "run_store.h"

#include "core/ledger/run_clock.h"
#include "core/ledger/run_plan.h"

#include <gtest/gtest.h>

namespace ullage::ledger
{

struct RunShelf {
    RunStore store;
    chemistry::Instant now =
        std::chrono::sys_days(std::chrono::year(2026) / 6 / 1) + std::chrono::hours(10);
    int ids = 0;
    std::unique_ptr<Book> book;

    RunShelf()
    {
        auto opened = Book::open(
            store, [this] { return now; }, [this] { return "id-" + std::to_string(++ids); });
        EXPECT_TRUE(opened);
        book = std::move(*opened);
        formulary::Solution developer{.id = "mq",
                                      .name = "MQ borax developer, stock",
                                      .role = formulary::Role::Developer,
                                      .capacity = chemistry::FilmsPerLitre(10)};
        developer.wear = {chemistry::WearRule::PerFilm, 10, {}};
        developer.keeping = {chemistry::Days(182.625), chemistry::Days(60.875), {}};
        formulary::Solution fixer{.id = "fix",
                                  .name = "Acid fixer",
                                  .role = formulary::Role::Fixer,
                                  .capacity = chemistry::FilmsPerLitre(20)};
        const formulary::Solution stop{
            .id = "stop", .name = "Stop bath", .role = formulary::Role::Stop};
        EXPECT_TRUE(book->add(developer));
        EXPECT_TRUE(book->add(fixer));
        EXPECT_TRUE(book->add(stop));
        for (const char* id : {"b1", "b2", "b3", "b4", "b5", "b6"}) {
            EXPECT_TRUE(book->add(
                formulary::Vessel{.id = id, .name = id, .capacity = chemistry::Millilitres(1030)}));
        }
    }

    void days(double count) { now = chemistry::addDays(now, chemistry::Days(count)); }

    std::string mix(const std::string& solution, const std::string& vessel, const std::string& name,
                    double millilitres = 1000, bool dissolved = true)
    {
        const auto id = book->mix(
            {solution, vessel, chemistry::Millilitres(millilitres), name, {}, false}, {now, {}});
        EXPECT_TRUE(id);
        if (dissolved) {
            EXPECT_TRUE(book->record(*id, Dissolved{}, {now, {}}));
        }
        return *id;
    }

    void work(const std::string& batch, double films, double used = 600)
    {
        EXPECT_TRUE(book->process({{{{"120", films}}, {}},
                                   {{batch, chemistry::Millilitres(used), {}, false, {}}},
                                   {},
                                   {}},
                                  now));
    }

    std::vector<Judged> judged()
    {
        std::vector<Judged> all;
        auto batches = book->batches(now);
        EXPECT_TRUE(batches);
        for (Batch& batch : *batches) {
            const Assessment assessment = assess(batch);
            all.push_back({std::move(batch), assessment});
        }
        return all;
    }
};

inline PlanRequest request(double films, double millilitres = 600)
{
    const chemistry::Millilitres volume(millilitres);
    return {{{{"135-36", films}}, {}},
            {},
            {{formulary::Role::Developer, volume, false, true, {}},
             {formulary::Role::Fixer, volume, false, true, {}}}};
}

} // namespace ullage::ledger
