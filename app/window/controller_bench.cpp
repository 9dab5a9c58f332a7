// The Bench in the window: its host is the open book, and its full view the whole screen.
#include "app/window/controller.h"

#include "app/bench/bench_page.h"
#include "app/window/main_window.h"

#include <utility>

namespace ullage::app
{

void Controller::makeBench(ledger::SteadyClock steady)
{
    m_bench = new BenchPage(*m_benchHost, m_benchMemory, m_sounds,
                            {std::move(steady), [this] { return m_session.now(); }});
    m_window.setPage(Page::Bench, m_bench);
    connect(m_bench, &BenchPage::fullViewChanged, &m_window, &MainWindow::setBare);
    connect(&m_session, &Session::opened, m_bench, &BenchPage::bookChanged);
    // A run left by a crash is what the user came for.
    connect(&m_session, &Session::opened, this, [this] {
        if (m_bench->isRunInHand())
            m_window.showPage(Page::Bench);
    });
}

} // namespace ullage::app
