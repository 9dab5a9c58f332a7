// Moments in the user's own time. The core counts in UTC; only here is a time zone applied.
#pragma once

#include "app/words/units.h"
#include "core/chemistry/quantities.h"

#include <QDateTime>
#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace ullage::app
{

/// The moment on the user's clock.
QDateTime localTime(chemistry::Instant moment);
QDate localDate(chemistry::Instant moment);
/// Back to UTC. An hour that the clock skips or repeats in spring or autumn is taken as Qt takes
/// it (the later one), so that a stored moment never changes by being shown.
chemistry::Instant instantOf(const QDateTime& local);

/// The moments at which the user's clock shows this: one as a rule, none in an hour that it skips,
/// two in one that it repeats, the earlier first.
std::vector<chemistry::Instant> momentsAt(QDate date, QTime time);
/// The moment at which the clock was put forward over a time that it never showed; empty where
/// momentsAt() has any.
std::optional<chemistry::Instant> skippedAt(QDate date, QTime time);

/// "2 Nov", seen from `now`.
QString dayText(chemistry::Instant moment, chemistry::Instant now, const QLocale& locale);
/// Days of a model that stand in one sentence: where one needs its year all are months with theirs,
/// because no model knows those days.
QStringList dayTexts(const std::vector<chemistry::Instant>& moments, chemistry::Instant now,
                     const QLocale& locale);
/// "about 2 Nov": for what a model gives.
QString aboutDayText(chemistry::Instant moment, chemistry::Instant now, const QLocale& locale);
/// "2 Nov, 19:30".
QString momentText(chemistry::Instant moment, chemistry::Instant now, const QLocale& locale);

/// "6 months" where it is whole months, else "42 days", "36 hours".
QString keepingText(chemistry::Days time, const QLocale& locale);

} // namespace ullage::app
