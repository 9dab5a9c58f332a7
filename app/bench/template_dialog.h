// The steps of a run, to be edited and kept under a name of one's own.
#pragma once

#include "app/widgets/asking_dialog.h"
#include "app/widgets/quantity_edit.h"
#include "app/words/units.h"
#include "core/ledger/run_sheet.h"

#include <vector>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;
class QVBoxLayout;

namespace ullage::app
{

class TemplateDialog : public AskingDialog
{
    Q_OBJECT

public:
    /// A template of the program is kept as a copy; one of the user's own can be forgotten.
    TemplateDialog(const ledger::RunTemplate& sheet, const Wording& wording,
                   QWidget* parent = nullptr);

    [[nodiscard]] ledger::RunTemplate sheet() const;
    [[nodiscard]] bool forgotten() const { return m_forgotten; }

private:
    struct Row {
        QWidget* line;
        QComboBox* kind;
        QuantityField<chemistry::Seconds>* time;
        QSpinBox* changes;
        QComboBox* agitation;
        QSpinBox* first;
        QSpinBox* each;
        QSpinBox* every;
    };
    void addRow(const ledger::TemplateStep& step);
    void fillRow(Row& row, const ledger::TemplateStep& step);
    void move(QWidget* line, int by);
    void remove(QWidget* line);
    void check();

    Wording m_wording;
    bool m_forgotten = false;
    QLineEdit* m_name;
    QVBoxLayout* m_lines;
    std::vector<Row> m_rows;
    QLabel* m_problem;
    QPushButton* m_keep;
};

} // namespace ullage::app
