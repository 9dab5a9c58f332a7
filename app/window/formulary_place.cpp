#include "app/window/formulary_place.h"

#include "app/formulary/formulary_page.h"
#include "app/session/store_thread.h"
#include "app/window/main_window.h"
#include "core/store/sql_store.h"

#include <QEvent>
#include <QPointer>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr std::size_t kMost = 200; // bottles whose tests are asked for

} // namespace

FormularyPlace::FormularyPlace(const WindowParts& parts, QObject* parent)
    : QObject(parent), m_parts(parts), m_thread(std::make_unique<StoreThread>())
{
    make();
    connect(&m_parts.door, &Door::wordingChanged, this, &FormularyPlace::wordAnew);
    connect(&m_parts.session, &Session::opened, this,
            [this] { m_thread->setBook(m_parts.session.path()); });
    connect(&m_parts.session, &Session::closing, this, [this] { m_thread->setBook({}); });
    if (m_parts.session.isOpen())
        m_thread->setBook(m_parts.session.path());
    connect(&m_parts.session, &Session::opened, this, &FormularyPlace::refreshAll);
    connect(&m_parts.session, &Session::changed, this, &FormularyPlace::refresh);
}

FormularyPlace::~FormularyPlace() = default;

// Of the bottles mixed last, however long the book is. What cannot be read says nothing.
void FormularyPlace::askTests(const QString& solution)
{
    const auto shown = m_parts.session.formulary().solution(solution.toStdString());
    if (!shown)
        return;
    const auto tell = [this, page = QPointer(m_page), solution](const ledger::OwnRecord& record,
                                                                int bottles) {
        QMetaObject::invokeMethod(this, [page, solution, record, bottles] {
            if (page)
                page->setOwnRecord(solution, record, bottles);
        });
    };
    m_thread->post(
        [tell, shown = *shown, family = m_parts.session.formulary().family(shown->id),
         thread = m_thread.get(), now = m_parts.session.now()](store::SqlStore& store) {
            auto states = store.batches(now, true);
            const auto book = thread->book();
            if (!states || !book)
                return;
            std::erase_if(*states, [&](const ledger::BatchState& state) {
                return std::find(family.begin(), family.end(), state.solution) == family.end();
            });
            std::vector<ledger::Batch> batches;
            const std::size_t most = std::min(kMost, states->size());
            for (std::size_t i = states->size() - most; i < states->size(); ++i) {
                if (thread->stopping())
                    return;
                if (auto batch = (*book)->batch((*states)[i].id, now))
                    batches.push_back(std::move(*batch));
            }
            tell(ledger::ownRecord(shown, batches), static_cast<int>(batches.size()));
        },
        [](const Error&) {});
}

void FormularyPlace::make()
{
    m_page = new FormularyPage(m_parts.door);
    connect(m_page, &FormularyPage::solutionShown, this, &FormularyPlace::askTests);
    m_page->installEventFilter(this);
    m_parts.window.setPage(Page::Formulary, m_page);
    m_language = m_parts.preferences.language();
    refreshAll();
}

bool FormularyPlace::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::Show)
        refresh();
    return QObject::eventFilter(watched, event);
}

void FormularyPlace::refreshAll()
{
    m_entries = -1;
    refresh();
}

void FormularyPlace::refresh()
{
    Session& session = m_parts.session;
    if (!session.isOpen() || !m_page->isVisible())
        return;
    if (session.entries() != m_entries)
        fill();
}

void FormularyPlace::fill()
{
    Session& session = m_parts.session;
    if (!session.isOpen())
        return;
    m_entries = session.entries();
    m_page->setFormulary(session.formulary(), m_parts.wording());
    askTests(m_page->chosenSolution()); // tests may have been made since
}

// Another language is worded by another page; other units by the same one.
void FormularyPlace::wordAnew()
{
    if (m_language == m_parts.preferences.language())
        return fill(); // seen or not: a page keeps no figure in units that are no longer used
    const auto tab = m_page->tab();
    const QString solution = m_page->chosenSolution();
    make();
    fill(); // for what was chosen to be found again
    m_page->chooseSolution(solution);
    m_page->setTab(tab);
}

} // namespace ullage::app
