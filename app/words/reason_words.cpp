// The reasons of a verdict as sentences.
#include "app/words/moment_text.h"
#include "app/words/number_text.h"
#include "app/words/verdict_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <map>

namespace ullage::app
{

using ledger::ReasonCode;

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Reasons)
};

// What a reason says already, so that it needs no second sentence.
const std::map<ReasonCode, std::vector<ReasonCode>>& covered()
{
    using enum ReasonCode;
    static const std::map<ReasonCode, std::vector<ReasonCode>> table{
        {CapacityReached, {LessThanQuarterFilm, CapacityNear, FilmsFew}},
        {LessThanQuarterFilm, {CapacityNear, FilmsFew}},
        {PastKeeping, {DiscardSoon, StandingNear}},
        {StandingSpent, {DiscardSoon, StandingNear}},
        {FilmsFew, {CapacityNear}},
    };
    return table;
}

class Sentence
{
public:
    Sentence(const ledger::Reason& reason, const ledger::Batch& batch,
             const ledger::Assessment& assessment, const Wording& wording)
        : m_reason(reason), m_batch(batch), m_so(assessment), m_wording(wording)
    {
    }

    [[nodiscard]] QString text() const
    {
        switch (m_reason.code) {
        case ReasonCode::Contaminated:
            return Words::tr("Marked as contaminated: discard it.");
        case ReasonCode::TestFailed:
            return Words::tr("A test failed: discard it.");
        case ReasonCode::ClearingDoubled:
            return Words::tr("Clears in %1 s, at least twice the fresh %2 s: discard it.")
                .arg(seconds("last_s"), seconds("fresh_s"));
        case ReasonCode::CapacityReached:
            return Words::tr("%1 of %2 per litre done: discard it.", "films done, capacity")
                .arg(number("wear", 1), films("capacity"));
        case ReasonCode::LessThanQuarterFilm:
            return Words::tr("Less than a quarter of a film is left in it: discard it.");
        case ReasonCode::PastKeeping:
            return pastKeeping();
        case ReasonCode::SilverOverLimit:
            return Words::tr("Silver is at %1 g a litre, over your limit of %2: discard it.")
                .arg(number("silver", 2), number("limit", 2));
        case ReasonCode::TurnoverOverLimit:
            return Words::tr("Replenisher used comes to %1 times what was mixed, over the limit of "
                             "%2: discard it.")
                .arg(number("turnovers", 1), number("limit", 1));
        case ReasonCode::StandingSpent:
            return (airCounts() ? Words::tr("By the model, age and air have used %1 of its life: "
                                            "test it before you trust it with film.")
                                : Words::tr("By the model, age has used %1 of its life: test it "
                                            "before you trust it with film."))
                .arg(percent("standing"));
        case ReasonCode::ClearingTestDue:
            return testDue();
        case ReasonCode::HistoryUnknown:
            if (!m_batch.historyUnknown)
                return Words::tr("Something of unknown history was poured in: test it before you "
                                 "trust it with film.");
            return Words::tr("Its history is unknown: test it before you trust it with film.");
        case ReasonCode::TestAsked:
            return Words::tr("A test was asked for because negatives came out wrong: test it "
                             "before you trust it with film.");
        case ReasonCode::CapacityNear:
            return Words::tr("%1 of %2 per litre done.", "films done, capacity")
                .arg(number("wear", 1), films("capacity"));
        case ReasonCode::FilmsFew:
            return Words::tr("%1 left, no more than one load of yours (%2).")
                .arg(filmsLeftText(chemistry::Films(m_reason.number("films_left")), m_wording),
                     filmCountText(m_reason.number("mean_load"), m_wording.locale));
        case ReasonCode::StandingNear:
            return (airCounts() ? Words::tr("Age and air have used %1 of its life.")
                                : Words::tr("Age has used %1 of its life."))
                .arg(percent("standing"));
        case ReasonCode::DiscardSoon:
            return discardSoon();
        }
        return {};
    }

private:
    [[nodiscard]] bool airCounts() const { return m_batch.limits && m_batch.limits->airCounts(); }
    [[nodiscard]] QString seconds(std::string_view name) const
    {
        return clearingNumber(chemistry::Seconds(m_reason.number(name)), m_wording.locale);
    }
    [[nodiscard]] QString number(std::string_view name, int decimals) const
    {
        return numberText(m_reason.number(name), decimals, m_wording.locale);
    }
    [[nodiscard]] QString films(std::string_view name) const
    {
        return filmsText(chemistry::Films(m_reason.number(name)), m_wording);
    }
    [[nodiscard]] QString percent(std::string_view name) const
    {
        return percentText(m_reason.number(name), m_wording.locale);
    }
    [[nodiscard]] int wholeDays(std::string_view name) const
    {
        return static_cast<int>(std::floor(m_reason.number(name)));
    }

    [[nodiscard]] QString pastKeeping() const
    {
        const QString keeps =
            keepingText(chemistry::Days(m_reason.number("full_days")), m_wording.locale);
        const int over = wholeDays("days_over");
        if (over < 1)
            return Words::tr("It is past the %1 a full bottle keeps: discard it.").arg(keeps);
        return Words::tr("It is %Ln day(s) past the %1 a full bottle keeps: discard it.", nullptr,
                         over)
            .arg(keeps);
    }

    [[nodiscard]] QString testDue() const
    {
        const QString done = films("films_since");
        const int days = wholeDays("days_since");
        if (!m_batch.testMarks.empty())
            return Words::tr("A clearing test is due: %1 a litre and %Ln day(s) since the last.",
                             nullptr, days)
                .arg(done);
        return Words::tr("A clearing test is due: %1 a litre and %Ln day(s) since it was mixed.",
                         nullptr, days)
            .arg(done);
    }

    [[nodiscard]] QString discardSoon() const
    {
        if (!m_so.discardBy || m_reason.number("days") < 0)
            return Words::tr("It is due to be discarded.");
        const QString day = byCalendar()
                                ? dayText(*m_so.discardBy, m_batch.asOf, m_wording.locale)
                                : aboutDayText(*m_so.discardBy, m_batch.asOf, m_wording.locale);
        const int days = wholeDays("days");
        if (days < 1)
            return Words::tr("Discard it today.");
        return Words::tr("Discard it by %1, in %Ln day(s).", nullptr, days).arg(day);
    }

    [[nodiscard]] bool byCalendar() const { return m_so.discardBy == m_so.keepsUntil; }

    const ledger::Reason& m_reason;
    const ledger::Batch& m_batch;
    const ledger::Assessment& m_so;
    const Wording& m_wording;
};

} // namespace

std::vector<ledger::Reason> forReading(const std::vector<ledger::Reason>& reasons)
{
    const bool discard =
        !reasons.empty() && ledger::verdictOf(reasons.front().code) == ledger::Verdict::Discard;
    const auto needless = [&](const ledger::Reason& reason) {
        if (discard && ledger::verdictOf(reason.code) != ledger::Verdict::Discard)
            return true; // nothing else matters to a bottle that goes
        return std::any_of(reasons.begin(), reasons.end(), [&](const ledger::Reason& graver) {
            const auto found = covered().find(graver.code);
            return found != covered().end() && std::find(found->second.begin(), found->second.end(),
                                                         reason.code) != found->second.end();
        });
    };
    std::vector<ledger::Reason> read;
    std::remove_copy_if(reasons.begin(), reasons.end(), std::back_inserter(read), needless);
    return read;
}

QString reasonSentence(const ledger::Reason& reason, const ledger::Batch& batch,
                       const ledger::Assessment& assessment, const Wording& wording)
{
    return Sentence(reason, batch, assessment, wording).text();
}

} // namespace ullage::app
