// Films of one tank that want different times: what each wants in the developer taken, whether they
// differ and by how much, and which of them can go together.
#pragma once

#include "core/formulary/leaflet_time.h"
#include "core/ledger/load_times.h"

#include <optional>
#include <vector>

namespace ullage::ledger
{

/// What a film wants in this bottle at this reading.
struct FilmTimeHere {
    formulary::FilmWanted film;
    std::shared_ptr<const formulary::DevelopmentFigure> figure; ///< null: none is known
    /// Base × wear × strip; empty without a figure, and where the figure says nothing at this
    /// temperature.
    std::optional<chemistry::Seconds> time;
};

/// `so` is the assessment of `developer`. In the order of `wanted`.
std::vector<FilmTimeHere> timesHere(const Batch& developer, const Assessment& so,
                                    const std::vector<formulary::FilmTime>& wanted,
                                    chemistry::Celsius temperature);

/// Times are one where they are shown as one: to 5 s.
inline constexpr chemistry::Seconds kTimesApart{5};

struct TimesApart {
    chemistry::Seconds shortest;
    chemistry::Seconds longest;
    [[nodiscard]] chemistry::Seconds by() const { return longest - shortest; }
    /// Of the shortest.
    [[nodiscard]] double share() const { return by() / shortest; }
};

/// How far the known times are apart; empty where they are one, and where fewer than two are known.
std::optional<TimesApart> timesApart(const std::vector<FilmTimeHere>& times);

/// Those with one time together, as indices of `times`: the first film's first; those without a
/// time at the end, by themselves.
std::vector<std::vector<std::size_t>> byTime(const std::vector<FilmTimeHere>& times);

} // namespace ullage::ledger
