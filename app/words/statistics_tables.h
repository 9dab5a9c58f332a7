// Statistics in columns, finished for screen, paper and spreadsheet alike: months, solutions,
// persons, ends, each with its sums.
#pragma once

#include "app/words/units.h"
#include "core/formulary/formulary.h"
#include "core/ledger/statistics.h"

#include <QString>
#include <QStringList>
#include <QVariant>

#include <vector>

namespace ullage::app
{

struct FiguresCell {
    QString text;
    QVariant raw = {}; ///< the number or ISO text that a spreadsheet takes; none: the text
};

struct FiguresColumn {
    QString title;
    bool right = true; ///< numbers, to the right
};

struct FiguresTable {
    QString title;
    std::vector<FiguresColumn> columns;
    std::vector<std::vector<FiguresCell>> rows; ///< as many cells as there are columns
    bool total = false;                         ///< the last row is the sum of those above
    QString none;                               ///< said where there is no row
};

// Money has a column of its own for each currency that occurs, since nothing is converted; "at
// least" and "not known" stand in it where a price is missing.

/// Films, bottles, their cost and what was bought, every month.
FiguresTable monthTable(const ledger::Statistics& statistics, const Wording& wording);
/// Films, ends, lives and costs of each solution. Films are not added up: one goes through several.
FiguresTable solutionTable(const ledger::Statistics& statistics,
                           const formulary::Formulary& formulary, const Wording& wording);
/// Films that each person developed, and their part of the cost.
FiguresTable personTable(const ledger::Statistics& statistics, const Wording& wording);
/// Why bottles ended.
FiguresTable endTable(const ledger::Statistics& statistics, const Wording& wording);
/// Bottles one by one: those mixed in the period, or those ended in it.
FiguresTable mixedTable(const ledger::Statistics& statistics, const formulary::Formulary& formulary,
                        const Wording& wording);
FiguresTable endedTable(const ledger::Statistics& statistics, const formulary::Formulary& formulary,
                        const Wording& wording);

QString endCauseName(ledger::EndCause cause);
/// "November 2026".
QString monthTitle(std::chrono::year_month month, const QLocale& locale);

/// What the sums leave out, and when a cost counts; sentences.
QStringList statisticsNotes(const ledger::Statistics& statistics, const Wording& wording);

} // namespace ullage::app
