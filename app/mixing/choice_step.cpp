#include "app/mixing/choice_step.h"

#include "app/dialogs/bottle_choice.h"
#include "app/mixing/formula_table.h"
#include "app/mixing/liquid_edit.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/quantity_edit.h"
#include "app/widgets/theme.h"
#include "app/words/batch_names.h"
#include "app/words/number_text.h"
#include "app/words/packet_words.h"
#include "app/words/shown_names.h"
#include "app/words/weighing_words.h"
#include "core/formulary/composition.h"
#include "core/formulary/field_of.h"
#include "core/formulary/figures.h"
#include "core/ledger/cupboard.h"
#include "core/ledger/event_fields.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDate>
#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>

#include <algorithm>

namespace ullage::app
{

ChoiceStep::ChoiceStep(const Wording& wording, QWidget* parent)
    : QWidget(parent), m_wording(wording), m_form(new QFormLayout(this)),
      m_solution(new QComboBox(this)), m_vessel(new QComboBox(this)),
      m_makes(new QuantityField<chemistry::Millilitres>(formulary::fieldOf(&ledger::Mixed::volume),
                                                        tr("Makes"), wording, this)),
      m_powder(new QuantityEdit(QuantityKind::Number, tr("Powder"), wording, this)),
      m_packet(new QComboBox(this)), m_raw(new QCheckBox(this)),
      m_formula(new FormulaTable(wording, this)), m_lacking(new PlainLabel(this)),
      m_sheet(new QPushButton(this)), m_liquid(new LiquidEdit(wording, this)),
      m_name(new QLineEdit(this))
{
    m_form->setContentsMargins(0, 0, 0, 0);
    m_form->setVerticalSpacing(Space::kGap);
    for (QWidget* field : std::initializer_list<QWidget*>{m_solution, m_packet, m_makes, m_powder,
                                                          m_liquid, m_vessel, m_name}) {
        auto* words = new PlainLabel(this);
        words->setBuddy(field);
        if (field != m_liquid)
            words->setMinimumHeight(field->sizeHint().height()); // on one line with it
        m_form->addRow(words, field);
        m_labels.emplace_back(words, field);
    }
    // A long name is read in the list that opens; it does not widen the step.
    for (QComboBox* box : {m_solution, m_packet, m_vessel}) {
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(12);
    }
    m_powder->setRange(0, 100'000);
    m_form->addRow(m_raw);
    m_form->addRow(m_formula);
    m_lacking->setWordWrap(true);
    setTone(m_lacking, Tone::Test);
    m_form->addRow(m_lacking);
    m_form->addRow(m_sheet);
    connect(m_sheet, &QPushButton::clicked, this, &ChoiceStep::sheetWanted);
    retranslate();
    showWays();
    connect(m_packet, &QComboBox::currentIndexChanged, this, &ChoiceStep::packetChosen);
    connect(m_raw, &QCheckBox::toggled, this, &ChoiceStep::packetChosen);
    connect(m_formula, &FormulaTable::changed, this, &ChoiceStep::changed);
    connect(m_liquid, &LiquidEdit::changed, this, &ChoiceStep::changed);
    connect(m_solution, &QComboBox::currentIndexChanged, this, &ChoiceStep::solutionChosen);
    connect(m_vessel, &QComboBox::currentIndexChanged, this, &ChoiceStep::vesselChosen);
    connect(m_makes, &QuantityEdit::valueChanged, this, [this] {
        m_ownVolume = true;
        m_formula->setMakes(m_makes->quantity().value_or(chemistry::Millilitres()));
        emit changed();
    });
    connect(m_powder, &QuantityEdit::valueChanged, this, &ChoiceStep::changed);
    connect(m_name, &QLineEdit::textEdited, this, [this](const QString& text) {
        m_ownName = !text.trimmed().isEmpty();
        emit changed();
    });
}

// Where words and fields have no room beside one another the words stand above.
void ChoiceStep::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    constexpr int kRoomForBoth = 460;
    const bool above = width() < kRoomForBoth;
    if (above == m_above)
        return;
    m_above = above;
    m_form->setRowWrapPolicy(above ? QFormLayout::WrapAllRows : QFormLayout::DontWrapRows);
    m_form->setVerticalSpacing(above ? Space::kTight : Space::kGap);
    for (const auto& [words, field] : m_labels) {
        words->setMinimumHeight(above || field == m_liquid ? 0 : field->sizeHint().height());
        words->setIndent(words->indent()); // a label keeps in mind how high it had to be
    }
}

void ChoiceStep::setWording(const Wording& wording)
{
    m_wording = wording;
    m_makes->setWording(wording);
    m_powder->setWording(wording);
    m_formula->setWording(wording);
    m_liquid->setWording(wording);
    if (const int at = m_solution->currentIndex(); at >= 0 && !m_ownName)
        m_name->setText(nextBatchName(m_solutions[static_cast<std::size_t>(at)]->role, m_names));
    retranslate();
}

void ChoiceStep::retranslate()
{
    const QString words[] = {tr("Mix"),    tr("From"), tr("It makes"),         tr("Powder, g"),
                             tr("Dilute"), tr("Into"), tr("Name on the label")};
    for (std::size_t i = 0; i < m_labels.size(); ++i) {
        m_labels[i].first->setText(words[i]);
        m_labels[i].second->setAccessibleName(words[i]);
    }
    m_makes->setName(tr("Makes"));
    m_powder->setName(tr("Powder"));
    m_powder->setPlaceholderText(tr("grams, as the packet says; may stay empty"));
    m_raw->setText(tr("Weigh it out from raw chemicals"));
    setPlainToolTip(m_raw, tr("By what the formulary says it is made of"));
    m_sheet->setText(tr("Print the weigh-out sheet…"));
    if (m_packet->count() > 0)
        m_packet->setItemText(m_packet->count() - 1, tr("no packet of the cupboard"));
    for (int i = 0; i + 1 < m_packet->count(); ++i) {
        const auto at = static_cast<std::size_t>(m_packet->itemData(i).toInt());
        m_packet->setItemText(i, app::packetText(m_packets[at], m_items, m_wording));
    }
    for (int i = 0; i < m_solution->count(); ++i)
        m_solution->setItemText(i, shownName(m_solutions[static_cast<std::size_t>(i)]->name));
    for (int i = 0; i < m_vessel->count(); ++i)
        m_vessel->setItemText(i, vesselText(*m_vessels[static_cast<std::size_t>(i)]));
}

QString ChoiceStep::vesselText(const formulary::Vessel& vessel) const
{
    return tr("%1 · holds %2", "bottle, volume")
        .arg(shownName(vessel.name), volumeText(vessel.capacity, m_wording));
}

void ChoiceStep::setFormulary(
    const formulary::Formulary& formulary,
    const std::vector<std::shared_ptr<const formulary::Vessel>>& freeVessels,
    const QStringList& names, const std::vector<ledger::Packet>& packets,
    std::optional<formulary::Role> role)
{
    const MixingPlan before = plan();
    m_formulary = formulary;
    m_packets = packets;
    m_solutions = formulary.currentSolutions();
    if (role)
        std::erase_if(m_solutions, [&](const auto& one) { return one->role != role; });
    m_vessels = freeVessels;
    m_names = names;
    {
        const QSignalBlocker quietSolution(m_solution);
        const QSignalBlocker quietVessel(m_vessel);
        const QSignalBlocker quietPacket(m_packet);
        m_solution->clear();
        m_vessel->clear();
        m_packet->clear(); // it counts by places in the list of before
        for (const auto& solution : m_solutions) {
            m_solution->addItem(shownName(solution->name));
            if (before.solution && before.solution->id == solution->id)
                m_solution->setCurrentIndex(m_solution->count() - 1);
        }
        for (const auto& vessel : m_vessels) {
            m_vessel->addItem(vesselText(*vessel));
            if (before.vessel && before.vessel->id == vessel->id)
                m_vessel->setCurrentIndex(m_vessel->count() - 1);
        }
    }
    vesselChosen();
    solutionChosen();
    if (before.packet && choosePacket(QString::fromStdString(before.packet->id)) && m_ownVolume) {
        m_makes->setQuantity(before.makes);
        m_formula->setMakes(before.makes);
        emit changed();
    }
}

const ledger::Packet* ChoiceStep::chosenPacket() const
{
    const QVariant at = m_packet->currentData();
    return at.isValid() ? &m_packets[static_cast<std::size_t>(at.toInt())] : nullptr;
}

bool ChoiceStep::choosePacket(const QString& id)
{
    for (std::size_t i = 0; i < m_packets.size(); ++i) {
        if (m_packets[i].id != id.toStdString())
            continue;
        for (std::size_t at = 0; at < m_solutions.size(); ++at) {
            const auto family = m_formulary.family(m_solutions[at]->id);
            if (std::find(family.begin(), family.end(), m_packets[i].solution) == family.end())
                continue;
            m_solution->setCurrentIndex(static_cast<int>(at));
            m_packet->setCurrentIndex(m_packet->findData(static_cast<int>(i)));
            return true;
        }
    }
    return false;
}

void ChoiceStep::solutionChosen()
{
    const int at = m_solution->currentIndex();
    if (at < 0)
        return;
    const formulary::Solution& solution = *m_solutions[static_cast<std::size_t>(at)];
    if (!m_ownName)
        m_name->setText(nextBatchName(solution.role, m_names));
    {
        const QSignalBlocker quiet(m_packet);
        m_packet->clear();
        const auto family = m_formulary.family(solution.id);
        for (std::size_t i = 0; i < m_packets.size(); ++i) {
            if (std::find(family.begin(), family.end(), m_packets[i].solution) != family.end())
                m_packet->addItem(app::packetText(m_packets[i], m_items, m_wording),
                                  static_cast<int>(i));
        }
        m_packet->addItem(tr("no packet of the cupboard"));
    }
    const auto formula = formulary::readComposition(formulary::sourceLine(solution, "composition"));
    if (m_weighed != solution.id) { // else the ways and forms that were chosen stay
        const QSignalBlocker quiet(m_raw);
        m_raw->setChecked(false);
        if (formula)
            m_formula->setFormula(*formula);
        m_weighed = solution.id;
        preferWhatIsHere();
    }
    m_raw->setVisible(formula.has_value());
    packetChosen();
}

void ChoiceStep::setItems(const std::vector<ledger::ItemHere>& items) { m_items = items; }

void ChoiceStep::preferWhatIsHere()
{
    const auto parts = m_formula->formula().ingredients;
    for (std::size_t i = 0; i < parts.size(); ++i)
        m_formula->setAtHand(static_cast<int>(i),
                             cupboard::otherFormHere(parts[i], m_items, namesOfPart));
}

void ChoiceStep::setLacking(const QStringList& lines)
{
    m_lacking->setText(lines.isEmpty()
                           ? QString()
                           : tr("The cupboard has too little:") + u'\n' + lines.join(u'\n'));
    m_form->setRowVisible(m_lacking, m_raw->isChecked() && !lines.isEmpty());
    m_sheet->setEnabled(problem().isEmpty());
}

// Of a concentrate as much is taken as is mixed.
const ledger::Packet* ChoiceStep::wholePacket() const
{
    const ledger::Packet* packet = m_raw->isChecked() ? nullptr : chosenPacket();
    return packet && packet->makes && !ledger::isLiquid(*packet) ? packet : nullptr;
}

void ChoiceStep::packetChosen()
{
    if (const ledger::Packet* packet = wholePacket())
        m_makes->setQuantity(packet->makes);
    else
        showUsualVolume();
    m_formula->setMakes(m_makes->quantity().value_or(chemistry::Millilitres()));
    showWays();
    emit changed();
}

void ChoiceStep::showUsualVolume()
{
    if (const int at = m_vessel->currentIndex(); at >= 0 && !m_ownVolume)
        m_makes->setQuantity(usualVolume(*m_vessels[static_cast<std::size_t>(at)]));
}

// From a packet, from raw chemicals, or neither: then only the powder's weight may be known.
void ChoiceStep::showWays()
{
    const bool raw = m_raw->isChecked();
    m_form->setRowVisible(m_packet, m_packet->count() > 1 && !raw);
    setPlainToolTip(m_packet, m_packet->currentText()); // a long lot has more than its width
    m_form->setRowVisible(m_powder, !raw && !isLiquid());
    m_form->setRowVisible(m_liquid, !raw && isLiquid());
    m_form->setRowVisible(m_formula, raw);
    m_form->setRowVisible(m_lacking, raw && !m_lacking->text().isEmpty());
    m_form->setRowVisible(m_sheet, raw);
}

bool ChoiceStep::isLiquid() const
{
    const int at = m_solution->currentIndex();
    return at >= 0 && m_solutions[static_cast<std::size_t>(at)]->form == formulary::Form::Liquid;
}

void ChoiceStep::vesselChosen()
{
    if (!wholePacket())
        showUsualVolume();
    m_formula->setMakes(m_makes->quantity().value_or(chemistry::Millilitres()));
    emit changed();
}

MixingPlan ChoiceStep::plan() const
{
    MixingPlan plan;
    if (const int at = m_solution->currentIndex(); at >= 0)
        plan.solution = m_solutions[static_cast<std::size_t>(at)];
    if (const int at = m_vessel->currentIndex(); at >= 0)
        plan.vessel = m_vessels[static_cast<std::size_t>(at)];
    plan.makes = m_makes->quantity().value_or(chemistry::Millilitres());
    if (m_raw->isChecked())
        plan.formula = m_formula->formula();
    else if (isLiquid())
        plan.liquid = m_liquid->dilution();
    else
        plan.powderGrams = m_powder->value();
    if (const ledger::Packet* packet = chosenPacket(); packet && !m_raw->isChecked())
        plan.packet = *packet;
    plan.name = m_name->text().trimmed();
    return plan;
}

QString ChoiceStep::problem() const
{
    if (m_vessels.empty())
        return tr("No bottle is free. Add one in the Formulary, or empty one first.");
    for (const QuantityEdit* edit : std::initializer_list<QuantityEdit*>{m_makes, m_powder}) {
        if (!edit->isValid())
            return edit->problem();
    }
    if (plan().liquid && !m_liquid->problem().isEmpty())
        return m_liquid->problem();
    return planProblem(plan(), m_wording);
}

} // namespace ullage::app
