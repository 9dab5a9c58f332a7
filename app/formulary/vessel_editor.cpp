#include "app/formulary/vessel_editor.h"

#include "app/formulary/editor_foot.h"
#include "app/formulary/problem_words.h"
#include "app/formulary/vessel_words.h"
#include "app/widgets/card.h"
#include "app/widgets/explanation_view.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/quantity_edit.h"
#include "app/widgets/theme.h"
#include "app/words/field_words.h"
#include "app/words/formulary_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

VesselEditor::VesselEditor(FormularyDeeds deeds, const Wording& wording, QWidget* parent)
    : QDialog(parent), m_deeds(std::move(deeds)), m_wording(wording), m_name(new QLineEdit(this)),
      m_capacity(new QuantityEdit(QuantityKind::Volume, fieldName("capacity_ml"), wording, this)),
      m_material(new QComboBox(this)), m_hint(new PlainLabel(this)),
      m_wall(new QuantityEdit(QuantityKind::Number, fieldName("wall_mm"), wording, this)),
      m_permeability(
          new QuantityEdit(QuantityKind::Number, fieldName("permeability"), wording, this)),
      m_cap(new QuantityEdit(QuantityKind::Number, fieldName("cap_cm3_day"), wording, this)),
      m_squeezed(new QCheckBox(tr("I always squeeze the air out"), this)),
      m_why(new ExplanationView(ExplanationView::Heading::Shown, this)),
      m_foot(new EditorFoot(this))
{
    setWindowTitle(tr("New bottle"));
    m_capacity->setRange(1, 100'000);
    m_capacity->setRequired(true);
    m_wall->setRange(0.01, 20);
    m_permeability->setRange(0, 10'000);
    m_cap->setRange(0, 100);
    for (const std::string_view code : formulary::kMaterialCodes)
        m_material->addItem(materialName(*formulary::materialFromCode(code)));
    setTone(m_hint, Tone::Quiet);
    auto* form = new QFormLayout;
    form->setVerticalSpacing(Space::kSmall);
    const auto add = [&](const QString& name, QWidget* field) {
        field->setAccessibleName(name);
        form->addRow(name, field);
    };
    add(tr("Name on the bottle"), m_name);
    add(fieldName("capacity_ml"), m_capacity);
    add(tr("Material"), m_material);
    form->addRow(QString(), m_hint);
    add(tr("Wall, mm"), m_wall);
    add(tr("Wall lets through, cm³·mm/(m²·day·atm)"), m_permeability);
    add(tr("Leak of the cap, cm³ a day"), m_cap);
    form->addRow(QString(), m_squeezed);
    auto* note =
        new PlainLabel(tr("A field left empty takes the usual figure of the material."), this);
    note->setWordWrap(true);
    setTone(note, Tone::Quiet);
    form->addRow(QString(), note);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(Space::kPage, 20, Space::kPage, 20);
    column->setSpacing(Space::kGap);
    auto* row = new QHBoxLayout;
    row->setSpacing(Space::kGap);
    auto* fields = new Card({}, this);
    fields->body()->addLayout(form);
    fields->body()->addStretch();
    auto* implied = new Card({}, this);
    implied->body()->addWidget(m_why);
    implied->setMinimumWidth(340);
    row->addWidget(fields, 1);
    row->addWidget(implied, 1);
    column->addLayout(row, 1);
    column->addWidget(m_foot);
    connect(m_name, &QLineEdit::textEdited, this, &VesselEditor::showState);
    connect(m_material, &QComboBox::currentIndexChanged, this, &VesselEditor::showState);
    connect(m_squeezed, &QCheckBox::toggled, this, &VesselEditor::showState);
    for (QuantityEdit* edit : {m_capacity, m_wall, m_permeability, m_cap})
        connect(edit, &QuantityEdit::valueChanged, this, &VesselEditor::showState);
    resize(940, 600);
    showState();
    m_name->setFocus();
}

QPushButton* VesselEditor::saveButton() const { return m_foot->save(); }

formulary::Vessel VesselEditor::vessel() const
{
    formulary::Vessel vessel;
    vessel.name = m_name->text().trimmed().toStdString();
    vessel.capacity = chemistry::Millilitres(m_capacity->value().value_or(0));
    vessel.material = static_cast<formulary::Material>(m_material->currentIndex());
    vessel.squeezed = m_squeezed->isChecked();
    if (const auto wall = m_wall->value())
        vessel.wall = chemistry::Millimetres(*wall);
    vessel.permeability = m_permeability->value();
    if (const auto cap = m_cap->value())
        vessel.capLeak = chemistry::CubicCentimetresPerDay(*cap);
    return vessel;
}

QString VesselEditor::problem() const
{
    for (const QuantityEdit* edit : {m_capacity, m_wall, m_permeability, m_cap}) {
        if (!edit->isValid())
            return edit->problem();
    }
    formulary::Vessel tried = vessel();
    tried.id = "tried";
    const auto fine = check(tried);
    return fine ? QString() : formularyProblem(fine.error(), m_wording);
}

void VesselEditor::showState()
{
    const QString trouble = problem();
    m_hint->setText(materialHint(static_cast<formulary::Material>(m_material->currentIndex())));
    m_foot->save()->setEnabled(trouble.isEmpty());
    m_foot->setProblem(m_name->text().isEmpty() && m_capacity->text().isEmpty() ? QString()
                                                                                : trouble);
    formulary::Vessel shown = vessel();
    if (!m_capacity->value())
        shown.capacity = chemistry::Millilitres(1000);
    m_why->setExplanation(explainVessel(shown, m_wording));
}

void VesselEditor::accept()
{
    if (!problem().isEmpty())
        return;
    formulary::Vessel made = vessel();
    made.id = m_deeds.newId();
    if (!m_foot->took(m_deeds.addVessel(made), m_wording))
        return;
    QDialog::accept();
}

} // namespace ullage::app
