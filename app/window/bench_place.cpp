#include "app/window/bench_place.h"

#include "app/bench/bench_page.h"
#include "app/bench/run_sheet_paper.h"
#include "app/widgets/prompts.h"
#include "app/widgets/theme.h"
#include "app/window/main_window.h"

namespace ullage::app
{

BenchPlace::BenchPlace(const WindowParts& parts, ledger::SteadyClock steady, QObject* parent)
    : QObject(parent), m_parts(parts), m_steady(std::move(steady)),
      m_memory(parts.preferences.settings())
{
    make();
    connect(&m_parts.session, &Session::opened, this, &BenchPlace::bookOpened);
    connect(&m_parts.door, &Door::wordingChanged, this, &BenchPlace::wordAnew);
}

BenchPlace::~BenchPlace() { delete m_page; }

void BenchPlace::make()
{
    m_language = m_parts.preferences.language();
    m_page = new BenchPage(m_parts.door, m_memory, m_sounds,
                           {m_steady, [&session = m_parts.session] { return session.now(); }});
    m_parts.window.setPage(Page::Bench, m_page, [this] { return m_page->firstForKeys(); });
    connect(m_page, &BenchPage::fullViewChanged, &m_parts.window, &MainWindow::setBare);
    connect(m_page, &BenchPage::printWanted, this, &BenchPlace::printSheet);
    connect(m_page, &BenchPage::exchangeWanted, this, [this](const std::string& first) {
        emit exchangeRequested(QString::fromStdString(first));
    });
}

void BenchPlace::bookOpened()
{
    m_page->bookChanged();
    // A run left by a crash is what the user came for.
    if (m_page->isRunInHand())
        m_parts.window.showPage(Page::Bench);
}

void BenchPlace::plan(const QString& batch)
{
    m_page->plan(batch.toStdString());
    m_parts.window.showPage(Page::Bench);
}

void BenchPlace::printSheet()
{
    if (const auto sheet = m_page->sheet()) {
        emit paperRequested(runSheetPaper(
            *sheet, {m_parts.session.bookName(), m_parts.session.now(), m_parts.wording()}));
        return;
    }
    m_parts.window.showPage(Page::Bench);
    prompts().tell(&m_parts.window, tr("The run sheet"),
                   tr("There are no steps to print yet. The Bench says under “Run sheet” what is "
                      "still to be chosen."));
}

// Another language is worded by another page; other units by the same one.
void BenchPlace::wordAnew()
{
    emit m_parts.door.changed();
    if (m_language == m_parts.preferences.language())
        return;
    // A run in hand goes through its file, as after a crash.
    const bool running = m_page->run() != nullptr;
    const bool dark = Theme::instance().isDarkRoom();
    m_parts.window.setPage(Page::Bench, new QWidget); // the other pages keep their places
    delete m_page;
    make();
    m_page->setDarkRoom(dark);
    if (running)
        m_page->goOn();
}

} // namespace ullage::app
