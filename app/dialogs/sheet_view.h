// What the window shows of a spreadsheet that is to come in: plain values and finished words.
#pragma once

#include <QString>
#include <QStringList>

#include <vector>

namespace ullage::app
{

/// One thing that had to be understood: how it was, and what else it can be.
struct SheetChoice {
    QString label; ///< "&Order of days"
    QStringList ways;
    int chosen = -1; ///< -1: nobody can know it; the user is to say
    QString note;    ///< what is open about it; empty where it is certain
};

struct SheetColumn {
    QString heading;
    int field = 0;     ///< place in SheetView::fields
    QStringList first; ///< cells of its first rows, as they stand in the sheet
};

/// A solution that the sheet names and the formulary does not have.
struct SheetUnknown {
    QString name;
    int solution = 0; ///< place in SheetView::solutions
};

struct SheetRefused {
    int row = 0;    ///< as a spreadsheet counts them, from 1
    QString column; ///< empty where it is about the whole row
    QString value;
    QString why; ///< with what is allowed
};

struct SheetView {
    std::vector<SheetChoice> reading;
    QStringList fields; ///< the first is "not used"
    std::vector<SheetColumn> columns;
    QString mapping;       ///< where the columns' fields are from
    QStringList solutions; ///< the first asks for one
    std::vector<SheetUnknown> unknown;
    QString coming;      ///< "3 bottles, 12 films, 2 tests"
    QStringList doubts;  ///< what may be in the book already, a line each
    QStringList bottles; ///< a line each
    QStringList films;
    QStringList tests;
    QStringList passedOver;
    std::vector<SheetRefused> refused; ///< those on the first rows
    int refusedCount = 0;              ///< of all
    QString notYet;                    ///< why nothing can come in as it is; empty where all can
};

/// What the user chose, in the order of the view.
struct SheetPicks {
    std::vector<int> reading;
    std::vector<int> fields;
    std::vector<int> solutions;
    friend bool operator==(const SheetPicks&, const SheetPicks&) = default;
};

} // namespace ullage::app
