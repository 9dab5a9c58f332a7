// How a spreadsheet was read, with what else it could be, and its first rows so.
#pragma once

#include "app/dialogs/sheet_parts.h"
#include "app/dialogs/sheet_view.h"

#include <QWidget>

class QFormLayout;
class QTableWidget;

namespace ullage::app
{

class SheetReadingStep : public QWidget
{
    Q_OBJECT

public:
    explicit SheetReadingStep(QWidget* parent);

    void setView(const SheetView& view);
    /// Ways, in the order of SheetView::reading.
    [[nodiscard]] std::vector<int> picks() const { return m_boxes.chosen(); }
    /// Where an answer is wanted; null for nowhere.
    [[nodiscard]] QWidget* asked() const { return m_boxes.firstBelow(0); }

signals:
    void chosen();

private:
    void addChoice(const SheetChoice& choice);
    void showRows(const std::vector<SheetColumn>& columns);

    QFormLayout* m_form;
    SheetBoxes m_boxes;
    std::vector<QLabel*> m_notes;
    QTableWidget* m_rows;
};

} // namespace ullage::app
