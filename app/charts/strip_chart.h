// The control strips of a developer as an individuals chart, and what they say in words.
#pragma once

#include "app/charts/chart.h"
#include "app/words/units.h"
#include "core/ledger/strip_record.h"

#include <QStringList>

namespace ullage::app
{

/// Densities in order of time with centre and limits, each strip beside the ones it was judged by;
/// those out of control as triangles. No series without a strip. `now` is for the dates.
ChartSpec stripChart(const ledger::StripRecord& record, chemistry::Instant now,
                     const Wording& wording);

/// Which strips are out of control, and which one this batch is compared with.
QStringList stripSentences(const ledger::StripRecord& record, const std::string& batch,
                           chemistry::Instant now, const Wording& wording);

/// What to do first where no strip was read yet.
QString stripsToCome();

/// "1.21" always with two places, as densitometers give it.
QString densityText(double density, const QLocale& locale);
/// "1.21, 2 Nov, Dev 14".
QString stripName(const ledger::StripReading& reading, chemistry::Instant now,
                  const Wording& wording);

} // namespace ullage::app
