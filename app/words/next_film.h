// The next load's time in words, factor by factor, as ledger::nextLoad() reckons it.
#pragma once

#include "app/words/factor_row.h"
#include "app/words/units.h"
#include "core/ledger/next_load.h"
#include "core/ledger/verdict.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <span>
#include <vector>

namespace ullage::app
{

/// The next load of film in a developer, factor by factor.
struct NextFilm {
    std::optional<chemistry::Seconds> seconds; ///< unrounded; none without the maker's time
    QString time;                              ///< "12:35"; without a leaflet time the factor on it
    QString note;                              ///< what the time is for; or why there is none
    std::vector<FactorRow> rows;
    QStringList warnings;
};

/// Of a time that was carried from another temperature: between which it may lie, and, where one
/// pair is all there is, that a second would be better. Empty for a time that was not carried.
QString carriedSentence(const ledger::DevelopingFactors& so, const Wording& wording);

/// `so` is the time of the next load in this developer at `temperature`, or why there is none.
NextFilm nextFilm(const ledger::Judged& developer, const Result<ledger::DevelopingFactors>& so,
                  chemistry::Celsius temperature, const Wording& wording);

/// `pairs` are the film maker's times typed in for this developer, if any; `temperature` that of
/// the next bath.
NextFilm nextFilm(const ledger::Batch& batch, const ledger::Assessment& assessment,
                  std::span<const chemistry::TimeAtTemperature> pairs,
                  chemistry::Celsius temperature, const Wording& wording);

/// A fixer's time for the next film at a temperature: by its clearing tests, else by the solution's
/// figure when fresh.
NextFilm nextFixing(const ledger::Batch& batch, const ledger::Assessment& assessment,
                    chemistry::Celsius temperature, const Wording& wording);

} // namespace ullage::app
