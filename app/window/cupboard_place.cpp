#include "app/window/cupboard_place.h"

#include "app/cupboard/cupboard_page.h"
#include "app/window/cupboard_deeds.h"
#include "app/window/main_window.h"
#include "app/words/local_calendar.h"

#include <QEvent>
#include <QSemaphore>

namespace ullage::app
{

namespace
{

constexpr int kCupboardPatienceMs = 50; // longer than this, a window is felt to stand still

} // namespace

/// Filled on the thread before `ready`.
struct CupboardPlace::Handed {
    QSemaphore ready;
    Result<CupboardShown> shown;
    bool taken = false; ///< the window's thread only
};

CupboardPlace::CupboardPlace(const WindowParts& parts, QObject* parent)
    : QObject(parent), m_parts(parts), m_deeds(new CupboardDeeds(parts, this)),
      m_thread(std::make_unique<StoreThread>())
{
    make();
    connect(m_deeds, &CupboardDeeds::mixRequested, this, &CupboardPlace::mixRequested);
    connect(m_deeds, &CupboardDeeds::entered, this, [this](const QString& item) {
        if (!m_page->choose(item))
            m_toChoose = item;
    });
    const Session* session = &m_parts.session;
    connect(&m_parts.door, &Door::wordingChanged, this, &CupboardPlace::wordAnew);
    connect(session, &Session::opened, this, [this] {
        m_thread->setBook(m_parts.session.path());
        refresh();
    });
    connect(session, &Session::closing, this, [this] {
        ++*m_turn;
        m_thread->setBook({});
        m_page->setShown({}); // what is shown is never another book's
    });
    connect(session, &Session::changed, this, &CupboardPlace::refresh);
    if (session->isOpen())
        m_thread->setBook(session->path());
}

CupboardPlace::~CupboardPlace()
{
    ++*m_turn;
    m_thread.reset();
}

void CupboardPlace::make()
{
    m_page = new CupboardPage;
    m_page->installEventFilter(this);
    connect(m_page, &CupboardPage::addRequested, m_deeds, &CupboardDeeds::add);
    connect(m_page, &CupboardPage::actionRequested, m_deeds, &CupboardDeeds::doWith);
    connect(m_page, &CupboardPage::canRequested, m_deeds, &CupboardDeeds::doWithCan);
    connect(m_page, &CupboardPage::workRequested, this,
            [this](WorkAction action, const QString& work) {
                action == WorkAction::Export ? emit calendarRequested()
                                             : m_deeds->doWithWork(action, work);
            });
    PlanFor planFor;
    planFor.beside = m_parts.preferences.beside();
    m_page->setPlanFor(planFor);
    connect(m_page, &CupboardPage::planForChanged, this, [this] {
        if (const auto beside = m_page->planFor().beside; beside != m_parts.preferences.beside()) {
            m_parts.preferences.setBeside(beside);
            emit besideChanged();
        }
        refresh();
    });
    connect(m_page, &CupboardPage::paperRequested, this, &CupboardPlace::paperRequested);
    connect(m_page, &CupboardPage::tableOfListRequested, this,
            &CupboardPlace::tableOfListRequested);
    m_parts.window.setPage(Page::Cupboard, m_page,
                           [page = m_page] { return page->firstForKeys(); });
    m_language = m_parts.preferences.language();
}

cupboard::PlanFor CupboardPlace::planFor() const { return m_page->planFor(); }

// Another language is worded by another page; other units by the same one.
void CupboardPlace::wordAnew()
{
    if (m_language != m_parts.preferences.language()) {
        m_toChoose = m_page->chosen();
        const PlanFor planFor = m_page->planFor();
        make();
        m_page->setPlanFor(planFor);
    }
    refresh();
}

bool CupboardPlace::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::Show && m_stale)
        refresh();
    return QObject::eventFilter(watched, event);
}

void CupboardPlace::refresh()
{
    m_stale = true;
    if (m_parts.session.isOpen() && m_page->isVisible())
        read();
}

void CupboardPlace::read()
{
    m_stale = false;
    const int turn = ++*m_turn;
    auto handed = std::make_shared<Handed>();
    const auto hand = [this, turn, handed](Result<CupboardShown> shown) {
        handed->shown = std::move(shown);
        handed->ready.release();
        QMetaObject::invokeMethod(this, [this, turn, handed] { take(turn, handed); });
    };
    m_thread->post(
        [=, current = m_turn, thread = m_thread.get(), now = m_parts.session.now(),
         planFor = m_page->planFor(), wording = m_parts.wording()](store::SqlStore&) {
            if (*current != turn)
                return;
            const auto book = thread->book();
            if (!book)
                return hand(tl::unexpected(book.error()));
            auto needs = cupboard::readNeeds(**book, now, planFor, wallClock());
            if (!needs)
                return hand(tl::unexpected(needs.error()));
            CupboardSnapshot snapshot{needs->cupboard, now};
            hand(cupboardShown(snapshot, needsSnapshot(std::move(*needs), planFor),
                               (*book)->formulary(), wording));
        },
        [hand](const Error& error) { hand(tl::unexpected(error)); });
    if (handed->ready.tryAcquire(1, kCupboardPatienceMs))
        take(turn, handed);
}

void CupboardPlace::take(int turn, const std::shared_ptr<Handed>& handed)
{
    if (handed->taken || *m_turn != turn)
        return;
    handed->taken = true;
    if (!handed->shown)
        return m_page->setUnreadable(m_parts.sentence(handed->shown.error()));
    m_page->setShown(std::move(*handed->shown));
    if (!m_toChoose.isEmpty() && m_page->choose(m_toChoose))
        m_toChoose.clear();
}

} // namespace ullage::app
