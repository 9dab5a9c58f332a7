// What of a spreadsheet would come in, what is refused of it, and which solutions nobody knows.
#pragma once

#include "app/dialogs/sheet_parts.h"
#include "app/dialogs/sheet_view.h"

#include <QWidget>

class QDialog;
class QTreeWidget;
class QVBoxLayout;

namespace ullage::app
{

class SheetComingStep : public QWidget
{
    Q_OBJECT

public:
    explicit SheetComingStep(QDialog& dialog);

    void setView(const SheetView& view);
    /// Solutions, in the order of SheetView::unknown.
    [[nodiscard]] std::vector<int> picks() const { return m_boxes.chosen(); }
    /// Where an answer is wanted; null for nowhere.
    [[nodiscard]] QWidget* asked() const { return m_boxes.firstBelow(1); }

signals:
    void chosen();

private:
    QComboBox* addUnknown(const QString& name);
    void showRefused(const SheetView& view);
    void showLines(const SheetView& view);

    QLabel* m_coming;
    QVBoxLayout* m_unknown;
    SheetBoxes m_boxes;
    QLabel* m_refusedHead;
    QTreeWidget* m_refused;
    QTreeWidget* m_lines;
};

} // namespace ullage::app
