#include "app/mixing/mixing_bottle.h"

#include "app/mixing/choice_step.h"
#include "app/mixing/cool_step.h"
#include "app/mixing/dissolve_step.h"
#include "app/mixing/mixing_figures.h"
#include "app/mixing/mixing_page.h"
#include "app/mixing/mixing_picture.h"
#include "app/mixing/mixing_words.h"
#include "app/mixing/water_step.h"
#include "app/mixing/weigh_list.h"
#include "app/mixing/words_step.h"
#include "app/words/number_text.h"
#include "app/words/weighing_words.h"
#include "core/ledger/item_stock.h"

#include <QLabel>

namespace ullage::app
{

MixingBottle::MixingBottle(std::function<chemistry::Instant()> now, const Wording& wording,
                           QObject* parent)
    : QObject(parent), m_wording(wording), m_choice(new ChoiceStep(wording)),
      m_water(new WaterStep(now, wording)), m_dissolve(new DissolveStep(now)),
      m_topUp(new WordsStep(TextRole::PageTitle)), m_closing(new WordsStep(TextRole::PageTitle)),
      m_airLabel(nullptr),
      m_air(new QuantityField<chemistry::Millilitres>(QuantityKind::Volume, {}, wording)),
      m_cooling(new CoolStep(now, wording)), m_dissolving(new MixingPicture),
      m_filling(new MixingPicture), m_full(new MixingPicture)
{
    m_airLabel = m_closing->addField(m_air);
    m_dissolve->addPicture(m_dissolving);
    m_topUp->addPicture(m_filling);
    m_closing->addPicture(m_full);
    connect(m_choice, &ChoiceStep::changed, this, &MixingBottle::changed);
    connect(m_choice, &ChoiceStep::sheetWanted, this, &MixingBottle::sheetWanted);
    connect(m_dissolve, &DissolveStep::changed, this, &MixingBottle::changed);
    connect(m_dissolve->list(), &WeighList::sheetWanted, this, &MixingBottle::sheetWanted);
    connect(m_air, &QuantityEdit::valueChanged, this, &MixingBottle::changed);
}

void MixingBottle::begin()
{
    m_choice->forgetWeighing();
    m_dissolve->reset();
    m_air->setValue(std::nullopt);
}

void MixingBottle::setWording(const Wording& wording)
{
    m_wording = wording;
    m_choice->setWording(wording);
    m_water->setWording(wording);
    m_dissolve->retranslate();
    m_cooling->setWording(wording);
    m_air->setWording(wording);
}

void MixingBottle::readChoice() { m_plan = m_choice->plan(); }

void MixingBottle::settle()
{
    readChoice();
    const MixingPlan& before = m_water->plan();
    if (before.solution != m_plan.solution || before.vessel != m_plan.vessel ||
        before.makes != m_plan.makes || before.powder() != m_plan.powder() ||
        before.displaced() != m_plan.displaced() || before.liquid != m_plan.liquid)
        m_water->setPlan(m_plan);
    m_air->setRange(0, (m_plan.vessel->capacity - m_plan.makes).value());
}

void MixingBottle::weigh(const std::vector<ledger::ItemHere>& items,
                         const std::vector<ledger::NewBatch::Take>& promised)
{
    m_out = m_plan.formula ? cupboard::weighOut(*m_plan.formula, items, namesOfPart, promised)
                           : cupboard::WeighOut();
}

void MixingBottle::fillWords()
{
    m_choice->setLacking(lackingLines(m_out, m_wording.locale));
    m_topUp->setWords(MixingPage::tr("Fill up to %1").arg(volumeText(m_plan.makes, m_wording)),
                      fillUpText(m_plan, m_dissolve->isClear()));
    m_closing->setWords(MixingPage::tr("Close and label"),
                        MixingPage::tr("Squeeze or press the air out as far as the bottle "
                                       "allows, or fill it to the brim. "
                                       "Write %1 on the label, what it is and today's date.")
                            .arg(m_plan.name));
    m_airLabel->setText(MixingPage::tr("Air left in the bottle"));
    m_air->setName(MixingPage::tr("Air left in the bottle"));
    m_air->setPlaceholderText(MixingPage::tr("all there is above it, if left empty"));
    m_dissolve->setPouring(pouringText(m_plan, m_wording));
    m_dissolve->setWeighOut(m_out, m_wording.locale);
    m_cooling->setWords(MixingPage::tr("Logged as %1").arg(m_plan.name),
                        m_dissolve->isClear()
                            ? MixingPage::tr("It is clear and ready for a run when it has cooled "
                                             "down.")
                            : MixingPage::tr("It rests until it is clear. Mark it as dissolved on "
                                             "the shelf then; "
                                             "before that it is not offered for a run."));
    drawBottle();
}

// With the water in it, with the powder or the liquid too and the mark to fill to, and full.
void MixingBottle::drawBottle()
{
    std::optional<chemistry::Millilitres> water;
    if (m_plan.isComplete()) {
        if (const auto start = m_plan.start())
            water = start->advised;
    }
    for (QWidget* picture : {m_dissolving, m_filling, m_full})
        picture->setVisible(water.has_value());
    if (!water)
        return;
    const auto pours = m_plan.pours();
    const auto with = *water + (pours ? pours->concentrate : m_plan.displaced());
    const auto in = m_dissolve->isPoured() ? with : *water;
    m_dissolving->setBottle(m_plan, in, in, m_wording);
    m_filling->setBottle(m_plan, with, m_plan.makes, m_wording);
    m_full->setBottle(m_plan, m_plan.makes, {}, m_wording);
}

void MixingBottle::closed() { m_cooling->begin(m_plan.makes, m_water->filledUp()); }

QString MixingBottle::problem(MixingStage stage) const
{
    switch (stage) {
    case MixingStage::Choice:
        return m_choice->problem();
    case MixingStage::Dissolve:
        return m_dissolve->isPoured() ? QString()
               : m_plan.liquid        ? MixingPage::tr("Say when the liquid is in.")
                                      : MixingPage::tr("Say when the powder is in.");
    case MixingStage::Close:
        return m_air->problem();
    default:
        return {};
    }
}

std::vector<Explanation> MixingBottle::figures(MixingStage stage) const
{
    switch (stage) {
    case MixingStage::Choice:
        return becomesFigures(m_plan, m_wording);
    case MixingStage::Water:
        return m_water->figures();
    case MixingStage::Dissolve:
        return m_plan.liquid ? std::vector<Explanation>()
                             : std::vector{dissolvingFigure(m_wording.locale)};
    case MixingStage::Done:
        if (const auto clock = m_cooling->box()->figure(); clock && !m_cooling->clock()->isHidden())
            return {*clock};
        break;
    default:
        break;
    }
    return {};
}

ledger::NewBatch MixingBottle::batch() const
{
    ledger::NewBatch batch;
    batch.solution = m_plan.solution->id;
    batch.vessel = m_plan.vessel->id;
    batch.volume = m_plan.makes;
    batch.name = m_plan.name.toStdString();
    if (m_plan.packet) {
        batch.packet = m_plan.packet->id;
        if (const auto taken = ledger::liquidFor(ledger::itemOf(*m_plan.packet), m_plan.makes))
            batch.takes.push_back({m_plan.packet->id, *taken});
    }
    for (const ledger::NewBatch::Take& take : m_out.takes())
        batch.takes.push_back(take);
    // One deed, one undo; of a liquid there is nothing to be said.
    batch.dissolved = m_dissolve->isClear() && !m_plan.liquid;
    batch.airLeft = m_air->quantity();
    return batch;
}

bool MixingBottle::isDissolving() const
{
    return m_dissolve->isPoured() && !m_plan.liquid && !m_dissolve->isClear();
}

QString MixingBottle::inHand() const
{
    if (!m_dissolve->isPoured() || m_plan.liquid)
        return MixingPage::tr("Mixing %1").arg(m_plan.name);
    return MixingPage::tr("Mixing %1 · %2", "batch, time to the next shake")
        .arg(m_plan.name, m_dissolve->shakeNow() && !m_dissolve->isClear()
                              ? MixingPage::tr("shake now", "in the rail")
                              : m_dissolve->clockText());
}

} // namespace ullage::app
