// The day book in words: a row's two lines, what it belongs to, and what a filter lets through.
#pragma once

#include "app/words/units.h"
#include "core/formulary/formulary.h"
#include "core/store/day_book.h"

#include <QDate>
#include <QString>
#include <QStringList>

#include <vector>

namespace ullage::app
{

/// What rows are about; the chips of the filter, and a row's colour.
enum class DayGroup { Everything, Runs, Mixing, Tests, Discards, Notes };
inline constexpr int kDayGroups = 6;

QString dayGroupName(DayGroup group);
/// The kinds of a group as the journal spells them; none for everything.
std::vector<std::string> kindsOf(DayGroup group);
/// Everything for kinds that no other group has.
DayGroup groupOf(const ledger::Event& event);

struct DayLine {
    QString title;  ///< "Run · 2 × 120", "Clearing test, Fix 9"
    QString detail; ///< may be empty
    QString taken;  ///< "taken back: one reel was empty"; empty unless it was
};

/// Moments and volumes in the user's words; what the formulary does not know is named by its id.
DayLine dayLine(const store::DayEntry& entry, const formulary::Formulary& formulary,
                const Wording& wording);

/// "Saturday, 14 November 2026" in the locale's words.
QString dayHeading(QDate day, const QLocale& locale);
/// "18:20", on the user's clock.
QString dayTime(const store::DayEntry& entry, const QLocale& locale);

/// All of a row in one line, for a screen reader.
QString daySentence(const store::DayEntry& entry, const DayLine& line, const QLocale& locale);

/// What the words looked for mean in this language: kinds of entries, faults of film and reasons so
/// called, and solutions whose role is.
void addMeanings(store::DayFilter& filter, const formulary::Formulary& formulary);

} // namespace ullage::app
