// The day book in its place in the window, and who its entries are by.
#include "app/daybook/day_book_page.h"
#include "app/widgets/prompts.h"
#include "app/window/controller.h"
#include "app/window/main_window.h"

namespace ullage::app
{

void Controller::makeDayBook()
{
    m_session.setPerson(m_preferences.person());
    m_dayBook = new DayBookPage(m_session, m_preferences);
    m_window.setPage(Page::DayBook, m_dayBook, [this] { return m_dayBook->firstForKeys(); });
    connect(m_dayBook, &DayBookPage::mixRequested, this, &Controller::mix);
    connect(&m_window, &MainWindow::personRequested, this, &Controller::askPerson);
    connect(&m_window, &MainWindow::statisticsRequested, this, [this] {
        m_window.showPage(Page::DayBook);
        m_dayBook->showStatistics(true);
    });
}

void Controller::askPerson()
{
    const auto name = prompts().askText(
        &m_window, tr("Who is working"),
        tr("Your name, for the entries made from now on. Left empty, they name nobody."),
        m_preferences.person());
    if (!name)
        return;
    m_preferences.setPerson(name->trimmed());
    m_session.setPerson(*name);
}

} // namespace ullage::app
