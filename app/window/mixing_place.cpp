#include "app/window/mixing_place.h"

#include "app/dialogs/bottle_choice.h"
#include "app/mixing/mixing_page.h"
#include "app/window/main_window.h"

namespace ullage::app
{

MixingPlace::MixingPlace(const WindowParts& parts, ledger::SteadyClock steady, QObject* parent)
    : QObject(parent), m_parts(parts), m_steady(std::move(steady))
{
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
    m_guide = new MixingPage(m_parts.door, m_steady, m_parts.wording());
    connect(m_guide, &MixingPage::plainLogWanted, this, &MixingPlace::plainLogWanted);
    connect(m_guide, &MixingPage::finished, this, [this](const QString& batch) {
        m_parts.window.takeGuideAway();
        emit finished(batch);
    });
    m_parts.window.showGuide(m_guide);
    m_guide->begin(session.formulary(), freeVessels(session.formulary(), session.bottles()),
                   session.batchNames());
}

void MixingPlace::logged()
{
    if (m_guide && m_guide->step() == MixingPage::Step::Choice)
        m_parts.window.takeGuideAway();
}

void MixingPlace::setWording()
{
    if (m_guide)
        m_guide->setWording(m_parts.wording());
}

} // namespace ullage::app
