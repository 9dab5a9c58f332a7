#include "app/session/session.h"

#include "app/session/starter.h"
#include "core/store/book_file.h"

#include <QFileInfo>
#include <QThread>
#include <QUuid>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kMinuteMs = 60'000;

std::chrono::milliseconds steadyNow()
{
    return std::chrono::duration_cast<std::chrono::milliseconds>(
        std::chrono::steady_clock::now().time_since_epoch());
}

store::Watch upTo(int ms)
{
    return [end = steadyNow() + std::chrono::milliseconds(ms)](const store::Progress&) {
        return steadyNow() < end;
    };
}

chemistry::Instant systemNow()
{
    return std::chrono::time_point_cast<std::chrono::milliseconds>(
        std::chrono::system_clock::now());
}

std::string newUuid() { return QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString(); }

} // namespace

Session::Session(SessionOptions options, QObject* parent)
    : QObject(parent), m_options(std::move(options)), m_copies([this] { return now(); })
{
    qRegisterMetaType<Error>();
    m_copies.setPlaces(m_options.copies);
    if (!m_options.clock)
        m_options.clock = systemNow;
    if (!m_options.newId)
        m_options.newId = newUuid;
    m_look.setInterval(m_options.lookMs);
    connect(&m_look, &QTimer::timeout, this, &Session::lookForChanges);
    m_minute.setInterval(kMinuteMs);
    connect(&m_minute, &QTimer::timeout, this, [this] { tellIf(true); });
    m_idle.setInterval(m_options.idleMs);
    m_idle.setSingleShot(true);
    connect(&m_idle, &QTimer::timeout, this, &Session::foldInBackground);
}

Session::~Session() { close(); }

void Session::close()
{
    if (m_book)
        emit closing();
    m_copies.stop();
    if (m_checking)
        *m_checking = false;
    for (QThread* thread : findChildren<QThread*>(QString(), Qt::FindDirectChildrenOnly))
        thread->wait();
    m_look.stop();
    m_minute.stop();
    m_idle.stop();
    m_presence.reset();
    m_book.reset();
    m_seat.reset();
    foldLog();
    m_store.reset();
    m_readOnly.reset();
    m_fault.reset();
    m_elsewhere.clear();
    m_bottles.clear();
    m_unread.clear();
}

// A book that does not let itself be written, or should not be, is opened for reading.
Result<Session::Opened> Session::openStore(const QString& path)
{
    Opened opened;
    store::StoreOptions options;
    options.access = store::Access::Create;
    options.volume = m_options.volume;
    options.lastSeen = m_options.lastSeen;
    const QFileInfo file(path);
    const bool mayWrite =
        (!file.exists() || file.isWritable()) && QFileInfo(file.absolutePath()).isWritable();
    if (file.exists() && !mayWrite)
        opened.readOnly = Error{.code = ErrorCode::ReadOnly, .file = path.toStdString()};
    if (!opened.readOnly) {
        auto store = store::SqlStore::open(path, options);
        if (!store)
            return tl::unexpected(store.error());
        const auto sound = (*store)->quickCheck(upTo(m_options.quickCheckMs));
        if (sound || sound.error().code == ErrorCode::Cancelled)
            return Opened{std::move(*store), {}, sound.has_value()};
        if (sound.error().code != ErrorCode::BookDamaged)
            return tl::unexpected(sound.error());
        opened.readOnly = sound.error();
    }
    options.access = store::Access::Read;
    return store::SqlStore::open(path, options).map([&](std::unique_ptr<store::SqlStore> store) {
        opened.store = std::move(store);
        return std::move(opened);
    });
}

Result<void> Session::open(const QString& name)
{
    const auto path = store::bookPath(name);
    if (!path)
        return tl::unexpected(path.error());
    // What took the place of the open book would find that one's log beside it, and take it for its
    // own.
    if (m_store && m_store->path() == *path && !m_store->inPlace())
        close();
    auto found = openStore(*path);
    if (!found)
        return tl::unexpected(found.error());
    auto book = ledger::Book::open(*found->store, m_options.clock, m_options.newId);
    if (!book)
        return tl::unexpected(book.error());
    const auto entries = found->store->lastEntry();
    if (!entries)
        return tl::unexpected(entries.error());
    const bool fresh = *entries == 0 && !found->readOnly;
    if (fresh && !m_options.starter.isEmpty()) {
        if (auto fine = enterJournal(**book, *found->store, m_options.starter); !fine)
            return tl::unexpected(fine.error());
    }
    if (auto fine = takeSeat(**book, *path); !fine)
        return fine;
    if (m_store)
        foldLog(); // of the book before
    m_presence.reset();
    m_book = std::move(*book);
    m_book->setPerson(m_person);
    m_store = std::move(found->store);
    m_unreadTold = 0;
    m_presence = std::make_unique<Presence>(
        *m_store, QUuid::createUuid().toString(QUuid::WithoutBraces), m_options.locks, steadyNow);
    m_path = *path;
    m_readOnly = std::move(found->readOnly);
    const auto faults = m_store->faults();
    m_fault = faults.empty() ? std::nullopt : std::optional(faults.front());
    m_elsewhere.clear();
    m_stale = true;
    m_bottles.clear();
    m_unread.clear();
    m_strips.clear();
    m_look.start();
    m_minute.start();
    m_idle.start();
    m_copies.start(m_path, !fresh && !m_readOnly);
    if (!m_readOnly)
        checkInBackground(!found->checked);
    emit opened();
    lookAround();
    emit standingChanged();
    emit changed();
    if (m_fault)
        emit failed(*m_fault); // one is enough to say; the check lists them all
    return {};
}

// The same book opened anew keeps its seat.
Result<void> Session::takeSeat(ledger::Book& book, const QString& path)
{
    if (m_options.seats.isEmpty())
        return {};
    auto seat = m_seat && m_path == path
                    ? nullptr
                    : std::make_unique<Seat>(m_options.seats, m_options.machine, path);
    const auto seated = book.sitAt((seat ? *seat : *m_seat).name().toStdString());
    if (seated && seat)
        m_seat = std::move(seat);
    return seated;
}

void Session::setPerson(const QString& name)
{
    m_person = name.trimmed().toStdString();
    if (m_book)
        m_book->setPerson(m_person);
}

QString Session::bookName() const { return QFileInfo(m_path).fileName(); }

Result<void> Session::undo()
{
    return doing([](ledger::Book& book) { return book.undo(); });
}

Result<void> Session::redo()
{
    return doing([](ledger::Book& book) { return book.redo(); });
}

void Session::lookForChanges()
{
    if (!m_book)
        return;
    lookAtPlace();
    lookAround();
    const auto changes = m_book->refresh();
    if (!changes)
        emit failed(changes.error());
    else
        tellIf(*changes);
}

void Session::tellIf(bool done)
{
    if (!done)
        return;
    m_idle.start();
    m_stale = true;
    m_strips.clear();
    emit changed();
}

// Whether the file that is open is still the one at its path. Where it went the log does not
// follow: so what the log holds is put into the file at once.
void Session::lookAtPlace()
{
    const bool known = m_readOnly && m_readOnly->code == ErrorCode::BookMoved;
    if (!m_store || (m_readOnly && !known))
        return;
    const auto fine = m_store->inPlace();
    if (fine.has_value() != known)
        return;
    if (!fine && fine.error().text != "log")
        foldLog();
    setReadOnly(fine ? std::nullopt : std::optional(fine.error()));
}

void Session::lookAround()
{
    m_presence->lookAround();
    if (m_presence->others() == m_elsewhere)
        return;
    m_elsewhere = m_presence->others();
    emit standingChanged();
}

void Session::setReadOnly(std::optional<Error> why)
{
    m_readOnly = std::move(why);
    emit standingChanged();
}

// What stays in the log because somebody reads it is folded the next time.
void Session::foldLog()
{
    if (m_store)
        (void)m_store->foldLog();
}

// By a connection of its own: the disk may take its time.
void Session::foldInBackground()
{
    if (!m_store || m_readOnly || !m_store->usesLog())
        return;
    onThread([path = m_path, volume = m_options.volume] {
        store::StoreOptions options;
        options.volume = volume;
        if (const auto store = store::SqlStore::open(path, options))
            (void)(*store)->foldLog();
    });
}

// Of a big book also what opening did not get done with.
void Session::checkInBackground(bool quick)
{
    if (m_checking)
        *m_checking = false; // of the book before
    m_checking = std::make_shared<std::atomic<bool>>(true);
    if (!quick && !m_options.wholeCheck)
        return;
    onThread([this, path = m_path, quick, whole = m_options.wholeCheck, goOn = m_checking] {
        const store::Watch watch = [goOn](const store::Progress&) { return goOn->load(); };
        Result<void> found;
        if (quick) {
            const auto store = store::SqlStore::open(path, {.access = store::Access::Read});
            found = store ? (*store)->quickCheck(watch) : tl::unexpected(store.error());
        }
        if (found && whole)
            found = whole(path, watch);
        QMetaObject::invokeMethod(this, [this, found, goOn] {
            if (found || !*goOn || found.error().code == ErrorCode::Busy)
                return;
            if (found.error().code == ErrorCode::BookDamaged)
                return setReadOnly(found.error());
            m_fault = found.error();
            emit standingChanged();
        });
    });
}

// close() waits for it.
void Session::onThread(std::function<void()> work)
{
    QThread* thread = QThread::create(std::move(work));
    thread->setParent(this);
    connect(thread, &QThread::finished, thread, &QObject::deleteLater);
    thread->start();
}

} // namespace ullage::app
