// The notebook of development times: what was entered, and the curve it gives.
#pragma once

#include "app/session/door.h"
#include "app/words/units.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace ullage::app
{

class Card;
class ChartView;
class EmptyState;
class FormularyTable;

/// Only times that stand: those that none replaced or took out. The table shows each at 20 °C, to
/// five seconds, so that rows compare.
class TimesTab : public QWidget
{
    Q_OBJECT

public:
    explicit TimesTab(Door& door, QWidget* parent = nullptr);

    /// It is copied; what was chosen stays chosen.
    void setFormulary(const formulary::Formulary& formulary, const Wording& wording);
    [[nodiscard]] FormularyTable* table() const { return m_table; }
    [[nodiscard]] ChartView* chart() const { return m_chart; }

    /// Opens the editor for a new time.
    void makeNew();
    /// Takes the chosen one out of the notebook by a line of its own, after asking; a refusal is
    /// told in a dialog. Nothing if none is chosen.
    void withdraw();

private:
    void edit();
    void openEditor(const formulary::DevelopmentFigure& start);
    void showFigure(const QString& id);
    [[nodiscard]] std::shared_ptr<const formulary::DevelopmentFigure> chosen() const;

    Door* m_door;
    formulary::Formulary m_formulary;
    Wording m_wording;
    FormularyTable* m_table;
    EmptyState* m_empty;
    Card* m_detail;
    ChartView* m_chart;
    QLabel* m_source;
    QLabel* m_notes;
    QPushButton* m_edit;
    QPushButton* m_withdraw;
};

} // namespace ullage::app
