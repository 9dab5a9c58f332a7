// The bottles of the book and what each lets in.
#pragma once

#include "app/words/units.h"
#include "core/formulary/formulary.h"

#include <QWidget>

namespace ullage::app
{

class ExplanationView;
class FormularyTable;

class VesselsTab : public QWidget
{
    Q_OBJECT

public:
    explicit VesselsTab(QWidget* parent = nullptr);

    /// It is copied; what was chosen stays chosen. All bottles of the book, in use or not.
    void setFormulary(const formulary::Formulary& formulary, const Wording& wording);
    [[nodiscard]] FormularyTable* table() const { return m_table; }

private:
    void showVessel(const QString& id);

    formulary::Formulary m_formulary;
    Wording m_wording;
    FormularyTable* m_table;
    ExplanationView* m_why;
};

} // namespace ullage::app
