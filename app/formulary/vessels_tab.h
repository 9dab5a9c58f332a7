// The bottles of the book and what each lets in.
#pragma once

#include "app/session/door.h"
#include "app/words/units.h"

#include <QWidget>

class QPushButton;

namespace ullage::app
{

class ExplanationView;
class FoldingRow;
class FormularyTable;

class VesselsTab : public QWidget
{
    Q_OBJECT

public:
    explicit VesselsTab(Door& door, QWidget* parent = nullptr);

    /// It is copied; what was chosen stays chosen, or what replaced it is. All bottles of the book,
    /// in use or not, but those that were retired.
    void setFormulary(const formulary::Formulary& formulary, const Wording& wording);
    [[nodiscard]] FormularyTable* table() const { return m_table; }

    /// Opens the editor for a new bottle, or for the chosen one.
    void makeNew();
    void edit();
    /// Takes the chosen one out by a line of its own, after asking. While something stands in it,
    /// says what; a refusal is told in a dialog. Nothing if none is chosen.
    void retire();

protected:
    bool event(QEvent* event) override;

private:
    void openEditor(const formulary::Vessel& start);
    void showVessel(const QString& id);
    [[nodiscard]] std::shared_ptr<const formulary::Vessel> chosen() const;
    [[nodiscard]] QStringList standIn(const formulary::Vessel& vessel) const;

    Door* m_door;
    formulary::Formulary m_formulary;
    Wording m_wording;
    FoldingRow* m_row;
    FormularyTable* m_table;
    ExplanationView* m_why;
    QPushButton* m_edit;
    QPushButton* m_retire;
};

} // namespace ullage::app
