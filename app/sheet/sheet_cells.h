// The cells of one row, by what their columns are.
#pragma once

#include "app/sheet/sheet_kind.h"
#include "app/sheet/sheet_mapping.h"
#include "core/formulary/field.h"

#include <QDateTime>

#include <vector>

namespace ullage::app
{

/// Why a row cannot come in.
struct SheetRefusal {
    int row = 0;    ///< as a spreadsheet counts them, from 1
    QString column; ///< its heading; empty where it is about the whole row
    QString value;  ///< as it stands in the cell
    Error error;
};

struct SheetMoment {
    chemistry::Instant at;
    bool timeKnown = false; ///< else it is the usual one of what happened that day
};

/// Reads what a row's cells say. What cannot be read is kept as a refusal; the value is empty then,
/// as it is for an empty cell.
class SheetCells
{
public:
    /// All outlive it.
    SheetCells(const QStringList& cells, int row, const SheetMapping& mapping,
               chemistry::Instant now);

    [[nodiscard]] int row() const { return m_row; }
    [[nodiscard]] QString text(SheetField field) const;
    [[nodiscard]] bool has(SheetField field) const { return !text(field).isEmpty(); }
    [[nodiscard]] bool hasColumn(SheetField field) const { return columnOf(field) >= 0; }
    /// Whether there is a figure of a test.
    [[nodiscard]] bool hasFigures() const
    {
        return has(SheetField::Seconds) || has(SheetField::Density) || has(SheetField::Factor);
    }
    /// Of the columns that are used, those that are not empty.
    [[nodiscard]] QStringList used() const;

    /// In the stored unit of `is`, within its range; the unit is the cell's, else the heading's.
    std::optional<double> number(SheetField field, const formulary::FieldDescription& is);
    /// On the user's clock; a day without a time is at `usual`. Of what happened the time may have
    /// a column of its own.
    std::optional<SheetMoment> moment(SheetField field, QTime usual);
    /// Yes or no, in English or German.
    std::optional<bool> truth(SheetField field);

    void refuse(SheetField field, Error error);
    /// It cannot come in as long as something else is open that it needs.
    void wait() { m_waits = true; }
    [[nodiscard]] bool fine() const { return m_refused.empty() && !m_waits; }
    [[nodiscard]] const std::vector<SheetRefusal>& refused() const { return m_refused; }

private:
    [[nodiscard]] int columnOf(SheetField field) const; ///< -1 for none

    const QStringList& m_cells;
    int m_row;
    const SheetMapping& m_mapping;
    chemistry::Instant m_now;
    bool m_waits = false;
    std::vector<SheetRefusal> m_refused;
};

} // namespace ullage::app
