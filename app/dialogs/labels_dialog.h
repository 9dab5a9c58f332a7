// Labels for bottles: which, on what sheet, from which free label on; seen before it is printed.
#pragma once

// First: moc loses its way in the standard headers of the core without it.
#include <QDialog>

#include "app/paper/label_paint.h"
#include "app/paper/label_words.h"
#include "app/session/door.h"

#include <optional>
#include <string>
#include <vector>

class QCheckBox;
class QComboBox;
class QLabel;
class QListWidget;
class QPushButton;

namespace ullage::app
{

class CountBox;
class LabelPreview;

/// Nothing is entered in the book by it, so Esc asks nothing.
class LabelsDialog : public QDialog
{
    Q_OBJECT

public:
    /// With these bottles chosen, or all in use for none. The door must outlive it.
    LabelsDialog(Door& door, const std::vector<std::string>& batches, QWidget* parent = nullptr);

    [[nodiscard]] QListWidget* bottles() const { return m_bottles; }
    [[nodiscard]] QComboBox* sheet() const { return m_sheet; }
    [[nodiscard]] CountBox* first() const { return m_first; }
    [[nodiscard]] QCheckBox* outlines() const { return m_outlines; }
    [[nodiscard]] QPushButton* printButton() const { return m_print; }
    [[nodiscard]] QPushButton* saveButton() const { return m_save; }
    /// What would be printed; empty while it cannot be.
    [[nodiscard]] const std::optional<LabelJob>& job() const;
    /// Why not; empty if it can.
    [[nodiscard]] QString problem() const;

private:
    void build();
    void fillBottles(const std::vector<std::string>& batches);
    void chooseSheet();
    [[nodiscard]] std::vector<LabelWords> chosenWords() const;
    void showJob();
    void preview();
    void save();
    [[nodiscard]] const LabelSheet& chosenSheet() const;

    Door* m_door;
    std::vector<ledger::Judged> m_judged; ///< in the order of the list
    QListWidget* m_bottles;
    QComboBox* m_sheet;
    CountBox* m_first;
    QLabel* m_firstLabel;
    QCheckBox* m_outlines;
    QLabel* m_sheets;
    LabelPreview* m_preview;
    QLabel* m_problem;
    QPushButton* m_print;
    QPushButton* m_save;
};

} // namespace ullage::app
