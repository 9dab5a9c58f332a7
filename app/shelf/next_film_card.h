// The card of the selected bottle: the next time factor by factor, why it is judged as it is, and
// what can be done with it.
#pragma once

#include "app/shelf/selected_bottle.h"
#include "app/widgets/card.h"

#include <set>
#include <vector>

class QBoxLayout;
class QHBoxLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace ullage::app
{

class FactorRows;
class FigureLabel;
class FilledRow;
class VerdictLabel;
class WhereFromButton;
class WholeLines;

class NextFilmCard : public Card
{
    Q_OBJECT

public:
    explicit NextFilmCard(BottleActions* actions, QWidget* parent = nullptr);

    /// `standing` are the bottles that can be led to.
    void setBottle(const SelectedBottle& bottle, const std::set<QString>& standing = {});

    /// In a wide and low place: the time at the left, the reasons beside it.
    void setBeside(bool beside);
    /// Lower than this, at that width, something of it is squeezed. Side by side all its words have
    /// room in it, else a few lines of them.
    [[nodiscard]] int leastHeight(int width);

signals:
    void bottleAsked(const QString& id);
    // Of a bottle that is not shown, in the place of what can be done with others.
    void checkRequested();
    void copiesRequested();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QPushButton* addActionButton(BottleAction which);
    void retranslate();
    void orderButtons(VerdictLook verdict);
    // Which buttons stand in the row; those for which it has no room go to the menu.
    void layOutButtons();

    BottleActions* m_actions;
    QLabel* m_heading;
    QWidget* m_timeRow;
    FigureLabel* m_time;
    QLabel* m_timeDetail;
    QLabel* m_noTime;
    FactorRows* m_factors;
    VerdictLabel* m_why;
    QWidget* m_words = nullptr; ///< the reasons and what closes them
    WholeLines* m_reasonsArea = nullptr;
    QLabel* m_reasons;
    QLabel* m_closing;
    QLabel* m_cost;
    FilledRow* m_filled = nullptr;
    QVBoxLayout* m_timeColumn;
    QVBoxLayout* m_whyColumn;
    QBoxLayout* m_columns; ///< both, one below the other or side by side
    bool m_beside = false;
    QHBoxLayout* m_buttons;
    std::vector<std::pair<BottleAction, QPushButton*>> m_actionButtons; ///< as they stand
    bool m_resting = false; ///< only then it can be said that it is clear now
    QPushButton* m_more;
    QPushButton* m_check;
    QPushButton* m_restore;
    WhereFromButton* m_ask;
    QWidget* m_buttonRow = nullptr;
    QWidget* m_mending = nullptr;
    std::vector<Explanation> m_figures;
};

} // namespace ullage::app
