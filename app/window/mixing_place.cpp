#include "app/window/mixing_place.h"

#include "app/dialogs/bottle_choice.h"
#include "app/mixing/choice_step.h"
#include "app/mixing/mixing_page.h"
#include "app/mixing/mixing_set.h"
#include "app/paper/weighing_paper.h"
#include "app/window/main_window.h"

namespace ullage::app
{

MixingPlace::MixingPlace(const WindowParts& parts, ledger::SteadyClock steady, QObject* parent)
    : QObject(parent), m_parts(parts), m_steady(std::move(steady))
{
    constexpr int kLookMs = 500;
    m_timer.setInterval(kLookMs);
    connect(&m_timer, &QTimer::timeout, this, &MixingPlace::showLine);
    connect(&m_parts.door, &Door::wordingChanged, this, &MixingPlace::showLine);
}

void MixingPlace::open()
{
    Session& session = m_parts.session;
    if (!session.isOpen())
        return;
    if (m_guide && m_guide->step() != MixingPage::Step::Choice &&
        m_guide->step() != MixingPage::Step::Done) {
        m_parts.window.showGuide(m_guide);
        return;
    }
    m_guide = new MixingPage(m_parts.door, m_steady);
    connect(m_guide, &MixingPage::plainLogWanted, this, &MixingPlace::logPlainly);
    connect(m_guide, &MixingPage::batchesLogged, this, &MixingPlace::batchesLogged);
    connect(m_guide, &MixingPage::weighingSheetWanted, this, [this](const WeighingSheet& sheet) {
        const Session& book = m_parts.session;
        emit paperMade(weighingPaper(sheet, {book.bookName(), book.now(), m_parts.wording()}));
    });
    connect(m_guide, &MixingPage::labelsWanted, this, &MixingPlace::labelsRequested);
    connect(m_guide, &MixingPage::finished, this, [this](const QString& batch) {
        takeAway();
        emit finished(batch);
    });
    m_timer.start();
    m_parts.window.showGuide(m_guide);
    m_guide->begin(session.formulary(), freeVessels(session.formulary(), session.bottles()),
                   session.batchNames());
}

void MixingPlace::openWith(const QString& packet)
{
    open();
    if (m_guide && m_guide->step() == MixingPage::Step::Choice)
        m_guide->choice()->choosePacket(packet);
}

void MixingPlace::logPlainly()
{
    std::vector<MixChoice> begun;
    for (const int bottle : m_guide->set()->bottles()) {
        const MixingPlan plan = m_guide->choice(bottle)->plan();
        begun.push_back({plan.solution ? plan.solution->id : std::string(),
                         plan.vessel ? plan.vessel->id : std::string(), plan.makes,
                         MixingSet::roleOf(bottle)});
    }
    emit plainLogWanted(begun);
}

void MixingPlace::loggedPlainly(bool inItsPlace)
{
    if (m_guide && (inItsPlace || m_guide->step() == MixingPage::Step::Choice))
        takeAway();
}

void MixingPlace::takeAway()
{
    m_parts.window.takeGuideAway();
    m_guide.clear(); // it goes when nothing uses it any more
    showLine();
}

void MixingPlace::showLine()
{
    if (!m_guide)
        m_timer.stop();
    m_parts.window.setGuideLine(m_guide ? m_guide->inHand() : QString());
}

} // namespace ullage::app
