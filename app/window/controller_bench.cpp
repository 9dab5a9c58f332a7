// The Bench in the window: its host is the open book, and its full view the whole screen.
#include "app/window/controller.h"

#include "app/bench/bench_page.h"
#include "app/widgets/theme.h"
#include "app/window/main_window.h"

namespace ullage::app
{

void Controller::makeBench()
{
    m_bench = new BenchPage(*m_benchHost, m_benchMemory, m_sounds,
                            {m_steady, [this] { return m_session.now(); }});
    m_window.setPage(Page::Bench, m_bench, [this] { return m_bench->firstForKeys(); });
    connect(m_bench, &BenchPage::fullViewChanged, &m_window, &MainWindow::setBare);
}

void Controller::showBookOnBench()
{
    m_bench->bookChanged();
    // A run left by a crash is what the user came for.
    if (m_bench->isRunInHand())
        m_window.showPage(Page::Bench);
}

void Controller::remakeBench()
{
    // The page sets its words when it is made. A run in hand goes through its file, as after a
    // crash, and on at the same second.
    const bool running = m_bench->run() != nullptr;
    const bool dark = Theme::instance().isDarkRoom();
    m_window.setPage(Page::Bench, new QWidget); // the other pages keep their places
    delete m_bench;
    makeBench();
    m_bench->setDarkRoom(dark);
    if (running)
        m_bench->goOn();
}

} // namespace ullage::app
