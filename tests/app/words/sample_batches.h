// Batches for the words to speak about, made by folding events.
#pragma once

#include "core/ledger/batch.h"
#include "core/ledger/verdict.h"

#include <gtest/gtest.h>

namespace ullage::app::sample
{

using chemistry::Instant;
using chemistry::Millilitres;

inline Instant day(int days)
{
    using namespace std::chrono;
    return Instant(sys_days(year{2026} / 6 / 1)) + hours(10) + hours(24 * days);
}

inline formulary::Formulary formularyOfTwo()
{
    formulary::Formulary formulary;
    formulary::Solution developer;
    developer.id = "mq";
    developer.name = "MQ borax developer";
    developer.role = formulary::Role::Developer;
    developer.capacity = chemistry::FilmsPerLitre(10);
    developer.wear = {.rule = chemistry::WearRule::PerFilm, .percent = 10};
    developer.keeping.full = chemistry::Days(182.625);
    developer.keeping.half = chemistry::Days(60.875);
    formulary.add(developer);
    formulary::Solution fixer;
    fixer.id = "fix";
    fixer.name = "Acid fixer";
    fixer.role = formulary::Role::Fixer;
    fixer.capacity = chemistry::FilmsPerLitre(20);
    fixer.silverPerFilm = 0.15;
    fixer.freshClearing = chemistry::Seconds(60);
    formulary.add(fixer);
    formulary.add(formulary::Vessel{"b1", "Amber 1", Millilitres(1030)});
    return formulary;
}

/// A batch mixed on day 0 from 1 litre, after `events` (their batch and id are filled in).
class Bottle
{
public:
    explicit Bottle(const std::string& solution = "mq") : m_formulary(formularyOfTwo())
    {
        happen(day(0), ledger::Mixed{solution, "b1", Millilitres(1000), "Dev 14"});
    }

    Bottle& happen(Instant at, ledger::Happening what)
    {
        m_events.push_back(
            {"e" + std::to_string(m_events.size()), "batch", at, std::move(what), {}});
        return *this;
    }
    /// It came to be in another way; before anything else happens.
    Bottle& replaceMixing(const ledger::Mixed& mixed)
    {
        m_events.front().what = mixed;
        return *this;
    }
    Bottle& films(int fromDay, int count)
    {
        for (int i = 0; i < count; ++i)
            happen(day(fromDay + i),
                   ledger::Processed{{.films = {{"135-36", 1}}}, Millilitres(600)});
        return *this;
    }

    [[nodiscard]] ledger::Batch at(Instant moment) const
    {
        const auto folded = ledger::foldUntil(m_events, moment, m_formulary);
        EXPECT_TRUE(folded && *folded);
        return **folded;
    }
    [[nodiscard]] const formulary::Formulary& formulary() const { return m_formulary; }
    [[nodiscard]] const std::vector<ledger::Event>& events() const { return m_events; }

private:
    formulary::Formulary m_formulary;
    std::vector<ledger::Event> m_events;
};

inline Wording english() { return {{}, QLocale(QLocale::English, QLocale::UnitedKingdom)}; }

} // namespace ullage::app::sample
