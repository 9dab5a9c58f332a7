// Makes a solution: new, as a copy, or in place of one that stays what it was for what is mixed.
#pragma once

#include "app/session/door.h"
#include "app/widgets/form_dialog.h"

class QPushButton;
class QScrollArea;

namespace ullage::app
{

class FactorRows;
class FoldingRow;
class ImpliedCharts;
class SolutionForm;

class SolutionEditor : public FormDialog
{
    Q_OBJECT

public:
    /// Only Edit makes one that replaces `start`; it can be saved only once something is changed.
    enum class Purpose { New, Copy, Edit };

    /// `start` is what is copied or edited. Nothing is entered before Save is pressed and core's
    /// check passes.
    SolutionEditor(Purpose purpose, const formulary::Solution& start, Door& door,
                   const Wording& wording, QWidget* parent = nullptr);

    [[nodiscard]] SolutionForm* form() const { return m_form; }
    [[nodiscard]] QPushButton* saveButton() const { return deedButton(); }
    /// Id of what was saved; empty before.
    [[nodiscard]] QString saved() const { return m_saved; }

protected:
    bool event(QEvent* event) override;
    bool fieldsAreFine() override;
    Result<void> act() override;
    void showError(const Error& error) override;

private:
    void showState();
    void fitFields();

    Purpose m_purpose;
    std::string m_replaces;
    Door* m_door;
    SolutionForm* m_form;
    FoldingRow* m_row;
    QScrollArea* m_fields;
    ImpliedCharts* m_charts;
    FactorRows* m_implied;
    formulary::Solution m_start;
    QString m_saved;
};

} // namespace ullage::app
