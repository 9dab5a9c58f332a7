#include "app/formulary/vessel_editor.h"

#include "app/formulary/editor_parts.h"
#include "app/formulary/problem_words.h"
#include "app/formulary/vessel_words.h"
#include "app/widgets/card.h"
#include "app/widgets/explanation_view.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/quantity_edit.h"
#include "app/widgets/tab_order.h"
#include "app/widgets/theme.h"
#include "app/words/field_words.h"
#include "app/words/formulary_words.h"
#include "app/words/shown_names.h"
#include "core/formulary/field_of.h"
#include "core/formulary/vessel_fields.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

VesselEditor::VesselEditor(const formulary::Vessel& start, Door& door, const Wording& wording,
                           QWidget* parent)
    : FormDialog(wording, start.id.empty() ? tr("New bottle") : tr("Edit a bottle"), parent),
      m_door(&door), m_start(start), m_fields(wording, this), m_hint(new PlainLabel(this)),
      m_wall(new QuantityField<chemistry::Millimetres>(formulary::fieldOf(&formulary::Vessel::wall),
                                                       fieldName("wall_mm"), wording, this)),
      m_permeability(new QuantityEdit(formulary::fieldOf(&formulary::Vessel::permeability),
                                      fieldName("permeability"), wording, this)),
      m_cap(new QuantityField<chemistry::CubicCentimetresPerDay>(
          formulary::fieldOf(&formulary::Vessel::capLeak), fieldName("cap_cm3_day"), wording,
          this)),
      m_why(new ExplanationView(ExplanationView::Heading::Shown, this))
{
    setTone(m_hint, Tone::Quiet);
    auto* form = new QFormLayout;
    form->setVerticalSpacing(Space::kSmall);
    addField(*form, start.id.empty() ? VesselFields::nameLabel() : tr("Name of the bottle"),
             m_fields.name);
    addField(*form, VesselFields::capacityLabel(), m_fields.capacity);
    addField(*form, VesselFields::materialLabel(), m_fields.material);
    form->addRow(QString(), m_hint);
    addField(*form, tr("Wall, mm"), m_wall);
    addField(*form, tr("Wall lets through, cm³·mm/(m²·day·atm)"), m_permeability);
    addField(*form, tr("Leak of the cap, cm³ a day"), m_cap);
    form->addRow(QString(), m_fields.squeezed);
    auto* note =
        new PlainLabel(tr("A field left empty takes the usual figure of the material."), this);
    note->setWordWrap(true);
    setTone(note, Tone::Quiet);
    form->addRow(QString(), note);

    auto* implied = new Card({}, this);
    implied->body()->addWidget(m_why);
    m_why->showWhole();
    implied->setMinimumWidth(340);
    if (!start.id.empty()) {
        auto* sentence = new PlainLabel(tr("What stands in it keeps the figures it was put there "
                                           "by. What you save here takes this bottle's place."),
                                        this);
        sentence->setWordWrap(true);
        setTone(sentence, Tone::Quiet);
        body()->addWidget(sentence);
        fill(start);
    }
    addCards(*body(), form, implied);
    connect(m_fields.name, &QLineEdit::textEdited, this, &VesselEditor::showState);
    connect(m_fields.material, &QComboBox::currentIndexChanged, this, &VesselEditor::showState);
    connect(m_fields.squeezed, &QCheckBox::toggled, this, &VesselEditor::showState);
    for (QuantityEdit* edit :
         std::initializer_list<QuantityEdit*>{m_fields.capacity, m_wall, m_permeability, m_cap})
        connect(edit, &QuantityEdit::valueChanged, this, &VesselEditor::showState);
    orderTabs(*this);
    resize(1080, 720);
    showState();
    m_fields.name->setFocus();
}

void VesselEditor::fill(const formulary::Vessel& vessel)
{
    m_fields.name->setText(shownName(vessel.name));
    m_fields.capacity->setQuantity(vessel.capacity);
    m_fields.material->setCurrentIndex(static_cast<int>(vessel.material));
    m_fields.squeezed->setChecked(vessel.squeezed);
    m_wall->setQuantity(vessel.wall);
    m_permeability->setValue(vessel.permeability);
    m_cap->setQuantity(vessel.capLeak);
}

formulary::Vessel VesselEditor::vessel() const
{
    formulary::Vessel vessel = m_fields.vessel();
    if (!m_start.id.empty()) // a name that is shown translated stays as it is in the book
        vessel.name = keptName(m_start.name, m_fields.name->text());
    vessel.wall = m_wall->quantity();
    vessel.permeability = m_permeability->value();
    vessel.capLeak = m_cap->quantity();
    return vessel;
}

QString VesselEditor::problem() const
{
    for (const QuantityEdit* edit :
         std::initializer_list<QuantityEdit*>{m_fields.capacity, m_wall, m_permeability, m_cap}) {
        if (!edit->isValid())
            return edit->problem();
    }
    formulary::Vessel tried = vessel();
    tried.id = "tried";
    const auto fine = check(tried);
    return fine ? QString() : formularyProblem(fine.error(), wording());
}

void VesselEditor::showState()
{
    const QString trouble = problem();
    m_hint->setText(materialHint(vessel().material));
    formulary::Vessel kept = m_start;
    kept.id.clear();
    kept.replaces.clear();
    const bool changed = m_start.id.empty() || !(vessel() == kept);
    saveButton()->setEnabled(trouble.isEmpty() && changed);
    setRefusal(m_fields.name->text().isEmpty() && m_fields.capacity->text().isEmpty() ? QString()
                                                                                      : trouble);
    formulary::Vessel shown = vessel();
    if (!m_fields.capacity->value())
        shown.capacity = chemistry::Millilitres(1000);
    m_why->setExplanation(explainVessel(shown, wording()));
}

bool VesselEditor::fieldsAreFine()
{
    showState();
    return problem().isEmpty();
}

Result<void> VesselEditor::act()
{
    formulary::Vessel made = vessel();
    made.id = m_door->newId();
    made.replaces = m_start.id;
    auto done = m_door->add(made);
    if (done)
        m_saved = QString::fromStdString(made.id);
    return done;
}

void VesselEditor::showError(const Error& error) { setRefusal(formularyProblem(error, wording())); }

} // namespace ullage::app
