#include "app/session/copy_keeper.h"

#include <QDeadlineTimer>
#include <QDir>
#include <QFileInfo>
#include <QThread>

#include <utility>

namespace ullage::app
{

namespace
{

constexpr int kLookMs = 300'000; // five minutes
constexpr int kClosingWaitsMs = 1000;
constexpr int kSettledMs = 500;
constexpr auto kDay = std::chrono::hours(24);
constexpr auto kAgain = std::chrono::hours(1);

std::optional<chemistry::Instant> lastGoodOf(const QString& path, const QString& folder)
{
    constexpr int kPatience = 1000; // ms
    const auto book = store::Connection::open(path, store::FileMode::Read, kPatience);
    if (!book)
        return std::nullopt;
    const auto copies = store::copies(path, store::bookId(**book).value_or(QString()), {folder});
    for (const store::Copy& copy : copies) {
        if (copy.state == store::CopyState::Sound)
            return copy.at;
    }
    return std::nullopt;
}

QStringList copyNames(const QString& folder)
{
    return QDir(folder).entryList({QStringLiteral("*.ullage")}, QDir::Files, QDir::Name);
}

// On the thread: one copy in each place; neither waits for the other's luck.
CopyStanding copied(const QString& path, const CopyPlaces& places, chemistry::Instant now,
                    const store::Watch& goingOn = {})
{
    CopyStanding standing;
    QDir().mkpath(places.own); // where that fails the copy says so
    if (const auto made = store::backUp(path, places.own, now, {}, goingOn); !made) {
        standing.failure = made.error();
    } else if (made->fault) {
        standing.fault = made->fault;
        standing.names = store::namesIn(path, {&*made->fault, 1});
    }
    if (!places.second.isEmpty()) {
        if (const auto made = store::backUp(path, places.second, now, {}, goingOn); !made)
            standing.secondFailure = made.error();
    }
    standing.lastGood = lastGoodOf(path, places.own);
    return standing;
}

} // namespace

QStringList CopyPlaces::folders() const
{
    return second.isEmpty() ? QStringList{own} : QStringList{own, second};
}

std::optional<Error> copyBefore(const QString& path, const CopyPlaces& places,
                                chemistry::Instant now)
{
    const CopyStanding standing = copied(path, places, now);
    return standing.failure ? standing.failure : standing.secondFailure;
}

CopyKeeper::CopyKeeper(ledger::Clock clock, QObject* parent)
    : QObject(parent), m_clock(std::move(clock)),
      m_wanted(std::make_shared<std::atomic<bool>>(true))
{
    m_timer.setInterval(kLookMs);
    connect(&m_timer, &QTimer::timeout, this, &CopyKeeper::lookAtTheClock);
    m_settled.setSingleShot(true);
    m_settled.setInterval(kSettledMs);
    connect(&m_settled, &QTimer::timeout, this, &CopyKeeper::lookForOthers);
    connect(&m_folder, &QFileSystemWatcher::directoryChanged, this, [this] { m_settled.start(); });
}

CopyKeeper::~CopyKeeper() { stop(); }

void CopyKeeper::setPlaces(const std::optional<CopyPlaces>& places) { m_places = places; }

void CopyKeeper::start(const QString& path, bool now)
{
    // A copy of the book before goes on by itself; nobody waits for it.
    m_timer.stop();
    m_settled.stop();
    m_thread = nullptr;
    m_again = false;
    m_path.clear();
    m_names.clear();
    m_standing = {};
    if (!m_places)
        return;
    m_path = path;
    m_tried.reset();
    m_timer.start();
    if (now) {
        copyNow();
    } else {
        m_tried = m_clock();
        work(false);
    }
}

void CopyKeeper::stop()
{
    m_timer.stop();
    m_settled.stop();
    const QDeadlineTimer patience(kClosingWaitsMs);
    for (QThread* thread : findChildren<QThread*>()) { // they delete themselves on the loop's turn
        if (!thread->wait(patience)) {
            *m_wanted = false;
            thread->wait();
        }
    }
    m_wanted = std::make_shared<std::atomic<bool>>(true);
    m_thread = nullptr;
    m_again = false;
    m_path.clear();
}

void CopyKeeper::copyNow()
{
    if (m_path.isEmpty() || !m_places)
        return;
    if (m_thread) { // after it; that it has ended may be on its way to us already
        m_again = true;
        return;
    }
    m_tried = m_clock();
    work(true);
}

// Names alone are compared: looking at the copies may itself make a file beside one for a moment.
void CopyKeeper::lookForOthers()
{
    if (m_path.isEmpty() || !m_places || m_thread)
        return;
    if (copyNames(m_places->own) != m_names)
        work(false);
}

void CopyKeeper::watchFolder()
{
    if (!m_places || m_folder.directories().contains(m_places->own))
        return;
    if (const QStringList before = m_folder.directories(); !before.isEmpty())
        m_folder.removePaths(before);
    if (QFileInfo(m_places->own).isDir())
        m_folder.addPath(m_places->own);
}

void CopyKeeper::lookAtTheClock()
{
    lookForOthers(); // where the system does not tell of changes in a folder
    const bool failed = m_standing.failure || m_standing.secondFailure;
    const auto now = m_clock();
    // A clock that was set back must not put the next copy off for long.
    const bool due = !m_tried || now >= *m_tried + (failed ? kAgain : kDay) || now < *m_tried;
    if (due)
        copyNow();
}

void CopyKeeper::work(bool copy)
{
    m_thread = QThread::create([this, path = m_path, places = *m_places, copy, now = m_clock(),
                                wanted = m_wanted, known = m_standing] {
        CopyStanding standing = known;
        if (copy)
            standing = copied(path, places, now,
                              [wanted](const store::Progress&) { return wanted->load(); });
        else
            standing.lastGood = lastGoodOf(path, places.own);
        QMetaObject::invokeMethod(this, [this, path, standing] {
            if (path == m_path)
                take(standing);
        });
    });
    QThread* const thread = m_thread;
    thread->setParent(this);
    connect(thread, &QThread::finished, this, [this, thread] {
        thread->deleteLater();
        if (m_thread != thread)
            return;
        m_thread = nullptr;
        if (std::exchange(m_again, false))
            copyNow();
    });
    thread->start();
}

void CopyKeeper::take(const CopyStanding& standing)
{
    m_standing = standing;
    if (m_places)
        m_names = copyNames(m_places->own);
    watchFolder();
    emit changed();
}

} // namespace ullage::app
