// What each column of a spreadsheet is.
#pragma once

#include "app/dialogs/sheet_parts.h"
#include "app/dialogs/sheet_view.h"

#include <QWidget>

class QDialog;
class QGridLayout;

namespace ullage::app
{

class SheetColumnsStep : public QWidget
{
    Q_OBJECT

public:
    explicit SheetColumnsStep(QDialog& dialog);

    void setView(const SheetView& view);
    /// Fields, in the order of SheetView::columns.
    [[nodiscard]] std::vector<int> picks() const { return m_boxes.chosen(); }

signals:
    void chosen();

private:
    QComboBox* addColumn(const SheetColumn& column, int row);

    QLabel* m_mapping;
    QWidget* m_page;
    QGridLayout* m_grid;
    SheetBoxes m_boxes;
};

} // namespace ullage::app
