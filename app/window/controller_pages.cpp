// The pages beside the shelf, and the guide to mixing.
#include "app/window/controller.h"

#include "app/dialogs/deed_dialog.h"
#include "app/formulary/formulary_page.h"
#include "app/mixing/mixing_page.h"
#include "app/shelf/selected_bottle.h"
#include "app/shelf/shelf_page.h"
#include "app/shelf/strip_chart.h"
#include "app/window/main_window.h"
#include "app/words/air_words.h"
#include "app/words/explanations.h"
#include "app/words/number_text.h"
#include "core/ledger/range.h"

#include <algorithm>

namespace ullage::app
{

namespace
{

// Enough for months; the span moves by days between one and the next sample of this size.
constexpr int kRangeSamples = 60;

} // namespace

void Controller::makePages()
{
    FormularyDeeds deeds;
    const auto add = [this](const auto& what) {
        return m_session.doing([&](ledger::Book& book) { return book.add(what); });
    };
    deeds.addSolution = add;
    deeds.addVessel = add;
    deeds.addFigure = add;
    deeds.newId = [this] { return m_session.newId(); };
    m_formularyPage = new FormularyPage(deeds);
    m_window.setPage(Page::Formulary, m_formularyPage);
}

void Controller::remakeFormularyPage()
{
    const auto tab = m_formularyPage->tab();
    const QString solution = m_formularyPage->chosenSolution();
    makePages();
    showPages();
    m_formularyPage->chooseSolution(solution);
    m_formularyPage->setTab(tab);
}

void Controller::showPages()
{
    if (m_session.isOpen())
        m_formularyPage->setFormulary(m_session.formulary(), m_wording);
}

std::vector<std::shared_ptr<const formulary::Vessel>> Controller::freeVessels()
{
    auto vessels = m_session.formulary().vessels();
    const auto& bottles = m_session.bottles();
    std::erase_if(vessels, [&](const auto& vessel) {
        return std::any_of(bottles.begin(), bottles.end(), [&](const Bottle& bottle) {
            return bottle.batch.vessel->id == vessel->id;
        });
    });
    return vessels;
}

void Controller::mix()
{
    if (!m_session.isOpen())
        return;
    if (m_mixing && m_mixing->step() != MixingPage::Step::Choice &&
        m_mixing->step() != MixingPage::Step::Done) {
        m_window.showGuide(m_mixing);
        return;
    }
    MixingDeeds deeds;
    deeds.now = [this] { return m_session.now(); };
    deeds.steady = m_steady;
    deeds.packets = [this] { return m_session.packetsAtHand(); };
    deeds.mix = [this](const ledger::NewBatch& batch, ledger::When when) {
        return m_session.doing([&](ledger::Book& book) { return book.mix(batch, when); });
    };
    deeds.dissolved = [this](const std::string& batch) {
        return m_session.doing([&](ledger::Book& book) {
            return book.record(batch, ledger::Dissolved{}, {m_session.now(), {}});
        });
    };
    m_mixing = new MixingPage(deeds, m_wording);
    connect(m_mixing, &MixingPage::plainLogWanted, this, &Controller::logMix);
    connect(m_mixing, &MixingPage::finished, this, [this](const QString& batch) {
        m_window.takeGuideAway();
        m_window.showPage(Page::Shelf);
        if (!batch.isEmpty())
            m_window.shelf()->selectBottle(batch);
    });
    m_window.showGuide(m_mixing);
    m_mixing->begin(m_session.formulary(), freeVessels(), m_session.batchNames());
}

void Controller::addStrips(SelectedBottle& selected, const ledger::Batch& batch)
{
    selected.hasStrips = batch.solution->role == formulary::Role::Developer;
    if (!selected.hasStrips)
        return;
    const auto record = ledger::stripRecord(m_session.strips(batch.solution->id));
    if (record.readings.empty()) {
        selected.stripWords << stripsToCome();
        return;
    }
    selected.strips = stripChart(record, m_session.now(), m_wording);
    selected.stripWords = stripSentences(record, batch.id, m_session.now(), m_wording);
    if (const auto limits = explainStripLimits(record, m_wording))
        selected.figures.push_back(*limits);
}

std::optional<ledger::DateRange> Controller::discardRange(const ledger::Batch& batch)
{
    const auto events = m_session.book().events(batch.id);
    if (!events || !batch.inUse())
        return std::nullopt;
    return ledger::discardRange(*events, m_session.now(), m_session.formulary(),
                                {.samples = kRangeSamples})
        .value_or(std::nullopt);
}

void Controller::addAirAdvice(SelectedBottle& selected, const ledger::Batch& batch)
{
    if (!selected.air)
        return;
    const auto now = m_session.now();
    selected.help << routeSentence(batch, m_wording);
    if (const auto advice = ledger::airAdvice(batch, freeVessels()))
        selected.help << helpSentences(*advice, now, m_wording);
}

} // namespace ullage::app
