// Makes a solution: new, as a copy, or in place of one that stays what it was for what is mixed.
#pragma once

#include "app/formulary/formulary_deeds.h"
#include "app/words/units.h"

#include <QDialog>

class QPushButton;

namespace ullage::app
{

class EditorFoot;
class FactorRows;
class ImpliedCharts;
class SolutionForm;

class SolutionEditor : public QDialog
{
    Q_OBJECT

public:
    /// Only Edit makes one that replaces `start`; it can be saved only once something is changed.
    enum class Purpose { New, Copy, Edit };

    /// `start` is what is copied or edited. Nothing is entered before Save is pressed and core's
    /// check passes.
    SolutionEditor(Purpose purpose, const formulary::Solution& start, FormularyDeeds deeds,
                   const Wording& wording, QWidget* parent = nullptr);

    [[nodiscard]] SolutionForm* form() const { return m_form; }
    [[nodiscard]] QPushButton* saveButton() const;
    /// Id of what was saved; empty before.
    [[nodiscard]] QString saved() const { return m_saved; }

    /// Enters it and closes; stays open with everything typed if it is refused, and says why.
    void accept() override;

private:
    void showState();

    Purpose m_purpose;
    std::string m_replaces;
    FormularyDeeds m_deeds;
    Wording m_wording;
    SolutionForm* m_form;
    ImpliedCharts* m_charts;
    FactorRows* m_implied;
    EditorFoot* m_foot;
    formulary::Solution m_start;
    QString m_saved;
};

} // namespace ullage::app
