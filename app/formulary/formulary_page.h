// The Formulary: what solutions are, how they wear and keep, and who says so; bottles and times.
#pragma once

#include "app/formulary/solution_editor.h"
#include "app/session/door.h"
#include "app/widgets/three_columns.h"
#include "app/words/units.h"
#include "core/ledger/own_record.h"

#include <QWidget>

class QPushButton;
class QStackedWidget;
class QTabBar;
class QVBoxLayout;

namespace ullage::app
{

class ExplanationView;
class Card;
class ImpliedCharts;
class OwnFiguresCard;
class SolutionCard;
class SolutionList;
class TimesTab;
class VesselsTab;

class FormularyPage : public QWidget
{
    Q_OBJECT

public:
    enum class Tab { Solutions, Bottles, Times };

    /// Nothing is shown until setFormulary().
    explicit FormularyPage(Door& door, QWidget* parent = nullptr);

    /// Shows the book's formulary as it is now; call again when it or the wording may have changed.
    /// Nothing is touched if they have not. It is copied; what was chosen stays chosen, or what
    /// replaced it is.
    void setFormulary(const formulary::Formulary& formulary, const Wording& wording);
    void setTab(Tab tab);
    [[nodiscard]] Tab tab() const;
    /// The chosen solution's id; empty for none.
    [[nodiscard]] QString chosenSolution() const;
    /// Goes to the solutions; an unknown id, or one since replaced, changes nothing else.
    void chooseSolution(const QString& id);

    /// What the tests of its `bottles` say of a solution; nothing if another is shown by now.
    void setOwnRecord(const QString& solution, const ledger::OwnRecord& record, int bottles);

signals:
    /// Another solution is shown, or the same anew: what its tests say is wanted.
    void solutionShown(const QString& solution);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    QWidget* makeSolutions();
    void showSolution();
    void arrange();
    void takeOver(const formulary::Solution& changed);
    void edit(bool copy);
    void makeNew();
    void openEditor(SolutionEditor::Purpose purpose, const formulary::Solution& start);

    Door* m_door;
    formulary::Formulary m_formulary;
    bool m_shown = false;
    Wording m_wording;
    QTabBar* m_tabs;
    QPushButton* m_new;
    QStackedWidget* m_stack;
    QVBoxLayout* m_right = nullptr;
    SolutionList* m_list = nullptr;
    SolutionCard* m_card = nullptr;
    ImpliedCharts* m_charts = nullptr;
    Card* m_whyCard = nullptr;
    ExplanationView* m_why = nullptr;
    OwnFiguresCard* m_own = nullptr;
    VesselsTab* m_vessels = nullptr;
    TimesTab* m_times = nullptr;
};

} // namespace ullage::app
