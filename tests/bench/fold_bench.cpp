// Folding a thousand pourings to and fro between two bottles, beside as many events of bottles that
// nothing was poured between: within one run on one machine, so that only the ratio counts. It is
// near one while a donor is read where its fold stands, and grows with the square of the pourings
// if it were folded anew for each.
#include "core/ledger/fold_together.h"

#include <benchmark/benchmark.h>

#include <cstdio>
#include <cstdlib>

using namespace ullage;
using namespace ullage::ledger;

namespace
{

using chemistry::Millilitres;

chemistry::Instant at(int minutes)
{
    using namespace std::chrono;
    return sys_days(year(2026) / 6 / 1) + std::chrono::minutes(minutes);
}

formulary::Formulary bench()
{
    formulary::Solution solution{
        .id = "dev", .name = "Developer", .role = formulary::Role::Developer};
    solution.capacity = chemistry::FilmsPerLitre(10);
    solution.keeping = {chemistry::Days(182.625), chemistry::Days(60.875), {}};
    formulary::Vessel vessel;
    vessel.id = vessel.name = "bottle";
    vessel.capacity = Millilitres(1030);
    formulary::Formulary made;
    made.add(solution);
    made.add(vessel);
    return made;
}

class History
{
public:
    History()
    {
        for (const char* batch : {"a", "b"}) {
            add(batch, 0, Mixed{"dev", "bottle", Millilitres(600)});
        }
    }
    void add(const char* batch, int minutes, Happening what)
    {
        const auto number = static_cast<std::int64_t>(events.size()) + 1;
        events.push_back({"e" + std::to_string(number), batch, at(minutes), std::move(what), {}});
        events.back().entry = number;
    }
    std::vector<Event> events;
};

// Half of one into the other, by turns.
std::vector<Event> toAndFro(int pourings)
{
    History history;
    for (int i = 0; i < pourings; ++i) {
        const char* from = i % 2 == 0 ? "a" : "b";
        const char* to = i % 2 == 0 ? "b" : "a";
        history.add(from, i + 1, Drawn{Millilitres(300), "", to});
        history.add(to, i + 1, ToppedUp{Millilitres(300), from});
    }
    return history.events;
}

// The same volumes, with fresh solution.
std::vector<Event> apart(int pourings)
{
    History history;
    for (int i = 0; i < pourings; ++i) {
        history.add(i % 2 == 0 ? "a" : "b", i + 1, Drawn{Millilitres(300), "", {}});
        history.add(i % 2 == 0 ? "b" : "a", i + 1, ToppedUp{Millilitres(300)});
    }
    return history.events;
}

void fold(benchmark::State& state, const std::vector<Event>& events)
{
    const auto formulary = bench();
    for (auto _ : state) {
        auto batch = foldTogether("a", events, at(2'000'000), formulary);
        if (!batch || !*batch) {
            std::fprintf(stderr, "it does not fold\n");
            std::abort();
        }
        benchmark::DoNotOptimize(batch);
    }
}

void foldToAndFro(benchmark::State& state)
{
    fold(state, toAndFro(static_cast<int>(state.range(0))));
}
void foldApart(benchmark::State& state) { fold(state, apart(static_cast<int>(state.range(0)))); }

BENCHMARK(foldApart)->Arg(250)->Arg(1000)->Unit(benchmark::kMillisecond);
BENCHMARK(foldToAndFro)->Arg(250)->Arg(1000)->Unit(benchmark::kMillisecond);

} // namespace

BENCHMARK_MAIN();
