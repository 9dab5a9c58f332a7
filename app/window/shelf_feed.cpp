#include "app/window/shelf_feed.h"

#include "app/dialogs/bottle_choice.h"
#include "app/shelf/shelf_page.h"
#include "app/window/main_window.h"
#include "app/words/event_words.h"
#include "core/ledger/two_baths.h"

#include <QEvent>
#include <QSemaphore>

namespace ullage::app
{

namespace
{

constexpr chemistry::Celsius kUsual{20}; // of the next bath
constexpr int kPatienceMs = 50;          // longer than this, a window is felt to stand still

UnreadBottle unreadBottleOf(const ledger::Unread& unread, const formulary::Formulary& formulary)
{
    const auto solution = formulary.solution(unread.solution);
    return {QString::fromStdString(unread.batch),
            QString::fromStdString(unread.name.empty() ? unread.batch : unread.name),
            solution ? QString::fromStdString(solution->name) : QString()};
}

// The bath that followed this fixer; empty where there is none, or it is the second itself.
QString secondBathAfter(const ledger::Batch& first, const std::vector<Bottle>& bottles)
{
    std::vector<const ledger::Batch*> batches;
    for (const Bottle& bottle : bottles)
        batches.push_back(&bottle.batch);
    const auto second = ledger::secondBathAfter(first, batches);
    return second ? QString::fromStdString(batches[*second]->name) : QString();
}

} // namespace

/// Filled on the thread before `ready`.
struct ShelfFeed::Handed {
    QSemaphore ready;
    Result<SelectedBottle> selected;
    UnreadBottle asked; ///< what can be said of it in any case; the window's thread only
    bool taken = false; ///< the window's thread only
};

ShelfFeed::ShelfFeed(const WindowParts& parts, QObject* parent)
    : QObject(parent), m_parts(parts), m_thread(std::make_unique<StoreThread>())
{
    ShelfPage* shelf = m_parts.window.shelf();
    shelf->installEventFilter(this);
    connect(shelf, &ShelfPage::bottleSelected, this, [this](const QString& id) {
        if (!m_filling)
            showSelected(id);
    });
    connect(&m_parts.session, &Session::opened, this, &ShelfFeed::bookOpened);
    connect(&m_parts.session, &Session::closing, this, &ShelfFeed::bookClosing);
    connect(&m_parts.session, &Session::changed, this, &ShelfFeed::refresh);
    connect(&m_parts.session, &Session::changed, this, &ShelfFeed::forgetDone);
    if (m_parts.session.isOpen())
        bookOpened();
}

ShelfFeed::~ShelfFeed()
{
    ++*m_turn;
    m_thread.reset();
}

bool ShelfFeed::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::Show && m_stale)
        refresh();
    return QObject::eventFilter(watched, event);
}

void ShelfFeed::bookOpened()
{
    m_told = false;
    m_shown.clear();
    m_thread->setBook(m_parts.session.path());
}

void ShelfFeed::bookClosing()
{
    tellDone({});
    ++*m_turn;
    m_thread->setBook({});
    // What is shown is never another book's.
    m_parts.window.shelf()->setSummary({});
    m_parts.window.shelf()->setBottles({});
}

void ShelfFeed::refresh()
{
    m_stale = true;
    if (m_parts.window.shelf()->isVisible())
        showShelf();
}

// The bottles in use are few, however long the book is, and the session has them folded for
// everybody; the newest entry is one row of an index.
void ShelfFeed::showShelf()
{
    Session& session = m_parts.session;
    if (!session.isOpen())
        return;
    m_stale = false;
    ShelfSnapshot snapshot{{}, session.newest(), session.now()};
    for (const Bottle& bottle : session.bottles())
        snapshot.bottles.push_back({bottle.batch, bottle.assessment});
    for (const ledger::Unread& unread : session.unread())
        snapshot.unread.push_back(unreadBottleOf(unread, session.formulary()));
    ShelfShown shown = shelfShown(snapshot, m_parts.wording());
    ShelfPage* shelf = m_parts.window.shelf();
    shelf->setSummary(shown.summary);
    m_filling = true;
    shelf->setBottles(std::move(shown.bottles));
    m_filling = false;
    showSelected(shelf->currentBottle());
}

bool ShelfFeed::select(const QString& id)
{
    if (m_stale)
        showShelf();
    return m_parts.window.shelf()->selectBottle(id);
}

void ShelfFeed::tellDone(const QString& text)
{
    const auto last =
        text.isEmpty() ? std::optional<ledger::Action>() : m_parts.session.book().undoable();
    m_done = last ? last->id : 0;
    m_parts.window.shelf()->tellDone(last ? text : QString());
}

void ShelfFeed::tellUndone(const ledger::Action& undone)
{
    const auto next = m_parts.session.book().undoable();
    m_done = next ? next->id : 0;
    m_parts.window.shelf()->tellDone(
        next ? tr("Undone: %1", "what was done").arg(actionName(undone)) : QString(),
        next ? undoText(next) : QString());
}

// What undo would take back is another deed by now.
void ShelfFeed::forgetDone()
{
    if (m_done == 0)
        return;
    const auto last = m_parts.session.book().undoable();
    if (!last || last->id != m_done)
        tellDone({});
}

BottleSnapshot ShelfFeed::snapshotOf(const Bottle& bottle)
{
    const formulary::Solution& solution = *bottle.batch.solution;
    const Preferences& preferences = m_parts.preferences;
    KnownTimes times{preferences.baseTimes(solution.id), {}, {}, true};
    QStringList films;
    for (const auto& film : preferences.baseTimesFor(solution.id)) {
        if (!film.name.empty())
            films << QString::fromStdString(film.name);
    }
    times.film = films.join(QStringLiteral(", "));
    if (times.pairs.empty())
        times = notebookTimes(m_parts.session.formulary(), solution);
    Session& session = m_parts.session;
    return {{bottle.batch, bottle.assessment},
            {},
            {},
            freeVessels(session.formulary(), session.bottles()),
            std::move(times),
            kUsual,
            secondBathAfter(bottle.batch, session.bottles())};
}

void ShelfFeed::showSelected(const QString& id)
{
    const int turn = ++*m_turn;
    const Bottle* bottle = m_parts.session.isOpen() ? m_parts.session.bottle(id) : nullptr;
    if (!bottle)
        return showUnread(id);
    auto handed = std::make_shared<Handed>();
    handed->asked = {id, QString::fromStdString(bottle->batch.name),
                     QString::fromStdString(bottle->batch.solution->name)};
    const auto hand = [this, turn, handed](Result<SelectedBottle> selected) {
        handed->selected = std::move(selected);
        handed->ready.release();
        QMetaObject::invokeMethod(this, [this, turn, handed] { take(turn, handed); });
    };
    m_thread->post(
        [=, current = m_turn, thread = m_thread.get(), snapshot = snapshotOf(*bottle),
         wording = m_parts.wording()](store::SqlStore&) mutable {
            if (*current != turn)
                return;
            const auto book = thread->book();
            if (!book)
                return hand(tl::unexpected(book.error()));
            const ledger::Batch& batch = snapshot.bottle.batch;
            auto events = (*book)->connectedEvents(batch.id);
            if (!events)
                return hand(tl::unexpected(events.error()));
            snapshot.events = std::move(*events);
            if (batch.solution->role == formulary::Role::Developer) {
                auto strips = (*book)->strips(batch.solution->id, batch.asOf);
                // Another bottle's that are not as they were entered take nothing from this one.
                if (!strips && strips.error().code == ErrorCode::StoreFailed)
                    return hand(tl::unexpected(strips.error()));
                if (strips)
                    snapshot.strips = std::move(*strips);
            }
            // A thing of the cupboard that does not add up takes nothing else from the bottle.
            auto cost = (*book)->cost(batch.id, batch.asOf);
            if (!cost && cost.error().code == ErrorCode::StoreFailed)
                return hand(tl::unexpected(cost.error()));
            if (cost)
                snapshot.cost = std::move(*cost);
            hand(selectedBottle(snapshot, (*book)->formulary(), wording));
        },
        [hand](const Error& error) { hand(tl::unexpected(error)); });
    if (handed->ready.tryAcquire(1, kPatienceMs))
        return take(turn, handed);
    if (m_shown == id)
        return; // what is told of it stands until it is told anew
    SelectedBottle waiting;
    waiting.id = id;
    waiting.name = QString::fromStdString(bottle->batch.name);
    waiting.nextTitle = waiting.name;
    waiting.verdict = bottleView(bottle->batch, bottle->assessment, m_parts.wording()).verdict;
    waiting.noTime = tr("Calculating…");
    m_parts.window.shelf()->setSelected(waiting);
}

// What is wrong in it is known already.
void ShelfFeed::showUnread(const QString& id)
{
    Session& session = m_parts.session;
    if (!session.isOpen())
        return;
    for (const ledger::Unread& unread : session.unread()) {
        if (unread.batch == id.toStdString()) {
            m_shown = id;
            m_parts.window.shelf()->setSelected(unreadBottle(
                unreadBottleOf(unread, session.formulary()), m_parts.sentence(unread.why)));
        }
    }
}

void ShelfFeed::take(int turn, const std::shared_ptr<Handed>& handed)
{
    if (handed->taken || *m_turn != turn)
        return;
    handed->taken = true;
    if (handed->selected) {
        m_shown = handed->selected->id;
        m_parts.window.shelf()->setSelected(*handed->selected);
        return;
    }
    // What was shown before is another bottle's, or this one's as it no longer is.
    const Error& why = handed->selected.error();
    const bool changed = why.entry > 0 || why.code == ErrorCode::NotAsEntered;
    m_shown.clear();
    m_parts.window.shelf()->setSelected(
        changed ? unreadBottle(handed->asked, m_parts.sentence(why))
                : unreachedBottle(handed->asked, m_parts.sentence(why)));
    // Where something is known to be wrong in the book, that was told already.
    const Session& session = m_parts.session;
    if (std::exchange(m_told, true) || session.fault() || session.readOnly())
        return;
    emit m_parts.session.failed(handed->selected.error());
}

} // namespace ullage::app
