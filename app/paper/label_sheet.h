// Sheets of labels by their geometry, in millimetres.
#pragma once

#include <QRectF>
#include <QSizeF>
#include <QString>

#include <vector>

namespace ullage::app
{

/// Labels of one size in rows and columns on a sheet. Plain geometry: a sheet is found by measuring
/// it, and no maker's number is needed. Common practice, no source.
struct LabelSheet {
    QString id;    ///< as it is asked for on the command line: "70x36"; never translated
    QSizeF sheet;  ///< mm
    QSizeF label;  ///< mm
    QPointF first; ///< top left corner of the first label, mm from that of the sheet
    QSizeF pitch;  ///< from one label to the next, mm; not below the label's own size
    int columns = 1;
    int rows = 1;

    [[nodiscard]] int labels() const { return columns * rows; }
    /// Of a label on its sheet, row by row from 0, in mm.
    [[nodiscard]] QRectF place(int index) const;
    /// One label that is a sheet by itself.
    [[nodiscard]] bool alone() const { return labels() == 1; }
};

/// Those that are offered: each on a page of its own size first, then sheets of A4 and of Letter,
/// smallest labels first.
const std::vector<LabelSheet>& labelSheets();
/// Null for an unknown id.
const LabelSheet* labelSheet(const QString& id);

} // namespace ullage::app
