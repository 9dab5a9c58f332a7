// The cells of one row, by what their columns are.
#pragma once

#include "app/sheet/sheet_entries.h"
#include "core/formulary/field.h"

#include <QDateTime>
#include <QLocale>

namespace ullage::app
{

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
    /// Of the columns that are used, those that are not empty.
    [[nodiscard]] QStringList used() const;

    /// In the stored unit of `is`, within its range; the unit is the cell's, else the heading's.
    std::optional<double> number(SheetField field, const formulary::FieldDescription& is);
    /// On the user's clock; a day without a time, and without one in a column
    /// of its own, is at `usual`.
    std::optional<chemistry::Instant> moment(SheetField field, QTime usual);
    /// Yes or no, in English or German.
    std::optional<bool> truth(SheetField field);

    void refuse(SheetField field, Error error);
    [[nodiscard]] bool fine() const { return m_refused.empty(); }
    [[nodiscard]] const std::vector<SheetRefusal>& refused() const { return m_refused; }

private:
    std::optional<chemistry::Instant> momentAt(QDate day, const QString& clock,
                                               const QLocale& locale);
    [[nodiscard]] int columnOf(SheetField field) const; ///< -1 for none

    const QStringList& m_cells;
    int m_row;
    const SheetMapping& m_mapping;
    chemistry::Instant m_now;
    std::vector<SheetRefusal> m_refused;
};

/// Whether a cell says one of these words, whatever the size of its letters and a colon or dot at
/// its end.
bool saysOneOf(const QString& cell, std::initializer_list<const char*> words);

} // namespace ullage::app
