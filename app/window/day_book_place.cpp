#include "app/window/day_book_place.h"

#include "app/daybook/day_book_page.h"
#include "app/paper/papers.h"
#include "app/statistics/statistics_page.h"
#include "app/widgets/prompts.h"
#include "app/window/main_window.h"

namespace ullage::app
{

DayBookPlace::DayBookPlace(const WindowParts& parts, QObject* parent)
    : QObject(parent), m_parts(parts), m_statistics(new StatisticsPage(parts.door)),
      m_page(new DayBookPage(parts.door, m_statistics))
{
    m_parts.session.setPerson(m_parts.preferences.person());
    m_parts.window.setPage(Page::DayBook, m_page, [this] { return m_page->firstForKeys(); });
    connect(m_statistics, &StatisticsPage::failed, this, [this](const Error& error) {
        m_parts.failSum(tr("The book could not be read"), error);
    });
    connect(m_statistics, &StatisticsPage::printRequested, this,
            [this](const ledger::Statistics& so, const QString& period) {
                if (const auto* formulary = m_parts.door.formulary())
                    emit paperRequested(statisticsPaper(
                        so, *formulary, period,
                        {m_parts.session.bookName(), m_parts.session.now(), m_parts.wording()}));
            });
    connect(m_page, &DayBookPage::mixRequested, this, &DayBookPlace::mixRequested);
    connect(m_page, &DayBookPage::filmRequested, this, &DayBookPlace::filmRequested);
    connect(m_page, &DayBookPage::filmsRequested, this, &DayBookPlace::filmsRequested);
    connect(m_page, &DayBookPage::shelfRequested, this, &DayBookPlace::shelfRequested);
}

void DayBookPlace::showBottle(const QString& id, const QString& name)
{
    m_parts.window.showPage(Page::DayBook);
    m_page->showBottle(id, name);
}

void DayBookPlace::showStatistics()
{
    m_parts.window.showPage(Page::DayBook);
    m_page->showStatistics(true);
}

void DayBookPlace::askPerson()
{
    const auto name = prompts().askText(
        &m_parts.window, tr("Who is working"),
        tr("Your name, for the entries made from now on. Left empty, they name nobody."),
        m_parts.preferences.person());
    if (!name)
        return;
    m_parts.preferences.setPerson(name->trimmed());
    m_parts.session.setPerson(*name);
}

} // namespace ullage::app
