#include "app/mixing/choice_step.h"

#include "app/widgets/quantity_edit.h"
#include "app/widgets/theme.h"
#include "app/words/batch_names.h"
#include "app/words/number_text.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

namespace
{

// What a bottle is sold as, from what it holds to the brim: 1030 mL is a litre bottle.
double nominal(double capacity)
{
    const double step = capacity >= 1000 ? 500 : capacity >= 300 ? 100 : 50;
    return std::max(step, std::floor(capacity / step) * step);
}

} // namespace

ChoiceStep::ChoiceStep(const Wording& wording, QWidget* parent)
    : QWidget(parent), m_wording(wording), m_solution(new QComboBox(this)),
      m_vessel(new QComboBox(this)),
      m_makes(new QuantityEdit(QuantityKind::Volume, tr("Makes"), wording, this)),
      m_powder(new QuantityEdit(QuantityKind::Number, tr("Powder"), wording, this)),
      m_name(new QLineEdit(this))
{
    auto* form = new QFormLayout(this);
    form->setContentsMargins(0, 0, 0, 0);
    form->setVerticalSpacing(Space::kGap);
    for (QWidget* field :
         std::initializer_list<QWidget*>{m_solution, m_makes, m_powder, m_vessel, m_name}) {
        auto* words = new QLabel(this);
        words->setBuddy(field);
        words->setMinimumHeight(field->sizeHint().height()); // on one line with what is typed
        form->addRow(words, field);
        m_labels.emplace_back(words, field);
    }
    m_makes->setRange(1, 100'000);
    m_makes->setRequired(true);
    m_powder->setRange(0, 100'000);
    retranslate();
    connect(m_solution, &QComboBox::currentIndexChanged, this, &ChoiceStep::solutionChosen);
    connect(m_vessel, &QComboBox::currentIndexChanged, this, &ChoiceStep::vesselChosen);
    connect(m_makes, &QuantityEdit::valueChanged, this, [this] {
        m_ownVolume = true;
        emit changed();
    });
    connect(m_powder, &QuantityEdit::valueChanged, this, &ChoiceStep::changed);
    connect(m_name, &QLineEdit::textEdited, this, [this](const QString& text) {
        m_ownName = !text.trimmed().isEmpty();
        emit changed();
    });
}

void ChoiceStep::setWording(const Wording& wording)
{
    m_wording = wording;
    m_makes->setWording(wording);
    m_powder->setWording(wording);
    if (const int at = m_solution->currentIndex(); at >= 0 && !m_ownName)
        m_name->setText(nextBatchName(m_solutions[static_cast<std::size_t>(at)]->role, m_names));
    retranslate();
}

void ChoiceStep::retranslate()
{
    const QString words[] = {tr("Mix"), tr("It makes"), tr("Powder, g"), tr("Into"),
                             tr("Name on the tape")};
    for (std::size_t i = 0; i < m_labels.size(); ++i) {
        m_labels[i].first->setText(words[i]);
        m_labels[i].second->setAccessibleName(words[i]);
    }
    m_makes->setName(tr("Makes"));
    m_powder->setName(tr("Powder"));
    m_powder->setPlaceholderText(tr("grams, as the packet says; may stay empty"));
    for (int i = 0; i < m_vessel->count(); ++i)
        m_vessel->setItemText(i, vesselText(*m_vessels[static_cast<std::size_t>(i)]));
}

QString ChoiceStep::vesselText(const formulary::Vessel& vessel) const
{
    return tr("%1 · holds %2", "bottle, volume")
        .arg(QString::fromStdString(vessel.name), volumeText(vessel.capacity, m_wording));
}

void ChoiceStep::setFormulary(
    const formulary::Formulary& formulary,
    const std::vector<std::shared_ptr<const formulary::Vessel>>& freeVessels,
    const QStringList& names)
{
    m_solutions = formulary.currentSolutions();
    m_vessels = freeVessels;
    m_names = names;
    {
        const QSignalBlocker quietSolution(m_solution);
        const QSignalBlocker quietVessel(m_vessel);
        m_solution->clear();
        m_vessel->clear();
        for (const auto& solution : m_solutions)
            m_solution->addItem(QString::fromStdString(solution->name));
        for (const auto& vessel : m_vessels)
            m_vessel->addItem(vesselText(*vessel));
    }
    vesselChosen();
    solutionChosen();
}

void ChoiceStep::solutionChosen()
{
    const int at = m_solution->currentIndex();
    if (at >= 0 && !m_ownName)
        m_name->setText(nextBatchName(m_solutions[static_cast<std::size_t>(at)]->role, m_names));
    emit changed();
}

void ChoiceStep::vesselChosen()
{
    const int at = m_vessel->currentIndex();
    if (at >= 0 && !m_ownVolume)
        m_makes->setValue(nominal(m_vessels[static_cast<std::size_t>(at)]->capacity.value()));
    emit changed();
}

MixingPlan ChoiceStep::plan() const
{
    MixingPlan plan;
    if (const int at = m_solution->currentIndex(); at >= 0)
        plan.solution = m_solutions[static_cast<std::size_t>(at)];
    if (const int at = m_vessel->currentIndex(); at >= 0)
        plan.vessel = m_vessels[static_cast<std::size_t>(at)];
    plan.makes = chemistry::Millilitres(m_makes->value().value_or(0));
    plan.powderGrams = m_powder->value();
    plan.name = m_name->text().trimmed();
    return plan;
}

QString ChoiceStep::problem() const
{
    if (m_vessels.empty())
        return tr("No bottle is free. Add one in the Formulary, or empty one first.");
    for (const QuantityEdit* edit : {m_makes, m_powder}) {
        if (!edit->isValid())
            return edit->problem();
    }
    return planProblem(plan(), m_wording);
}

} // namespace ullage::app
