#include "app/session/session.h"

#include "app/session/starter.h"
#include "core/store/day_book.h"
#include "core/store/packet_reader.h"

#include <QFileInfo>
#include <QUuid>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kMinuteMs = 60'000;

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
}

Session::~Session() { close(); }

void Session::close()
{
    if (m_book)
        emit closing();
    m_copies.stop();
    m_look.stop();
    m_minute.stop();
    m_book.reset();
    m_store.reset();
    m_bottles.clear();
}

Result<void> Session::open(const QString& path)
{
    auto store = store::SqlStore::open(
        path, {.access = store::Access::Create, .lastSeen = m_options.lastSeen});
    if (!store)
        return tl::unexpected(store.error());
    auto book = ledger::Book::open(**store, m_options.clock, m_options.newId);
    if (!book)
        return tl::unexpected(book.error());
    const auto entries = (*store)->lastEntry();
    if (!entries)
        return tl::unexpected(entries.error());
    const bool fresh = *entries == 0;
    if (fresh && !m_options.starter.isEmpty()) {
        if (auto fine = enterJournal(**book, **store, m_options.starter); !fine)
            return tl::unexpected(fine.error());
    }
    m_book = std::move(*book);
    m_book->setPerson(m_person);
    m_store = std::move(*store);
    m_path = path;
    m_unreadTold = 0;
    m_stale = true;
    m_bottles.clear();
    m_strips.clear();
    m_look.start();
    m_minute.start();
    m_copies.start(path, !fresh);
    emit opened();
    emit changed();
    if (const auto faults = m_store->faults(); !faults.empty())
        emit failed(faults.front()); // one is enough to say; the check lists them all
    return {};
}

void Session::setPerson(const QString& name)
{
    m_person = name.trimmed().toStdString();
    if (m_book)
        m_book->setPerson(m_person);
}

QString Session::bookName() const { return QFileInfo(m_path).fileName(); }

const std::vector<Bottle>& Session::bottles()
{
    if (!m_stale || !m_book)
        return m_bottles;
    m_stale = false;
    // A bottle that is not what was entered is said and left out; the others are shown.
    std::vector<Error> unread;
    auto batches = m_book->batches(now(), false, &unread);
    if (unread.size() > std::exchange(m_unreadTold, unread.size()))
        emit failed(unread.front());
    if (!batches) {
        emit failed(batches.error());
        return m_bottles;
    }
    m_bottles.clear();
    for (ledger::Batch& batch : *batches) {
        auto assessment = ledger::assess(batch);
        m_bottles.push_back({std::move(batch), std::move(assessment)});
    }
    return m_bottles;
}

const Bottle* Session::bottle(const QString& id)
{
    const auto& all = bottles();
    const auto found = std::find_if(all.begin(), all.end(), [&](const Bottle& bottle) {
        return bottle.batch.id == id.toStdString();
    });
    return found == all.end() ? nullptr : &*found;
}

const std::vector<ledger::StripReading>& Session::strips(const std::string& solution)
{
    if (const auto known = m_strips.find(solution); known != m_strips.end())
        return known->second;
    auto strips = m_book->strips(solution, now());
    if (!strips)
        emit failed(strips.error());
    return m_strips[solution] = strips.value_or(std::vector<ledger::StripReading>());
}

std::vector<ledger::BatchState> Session::standingAt(chemistry::Instant at)
{
    auto states = m_store->batches(at, false);
    if (!states)
        emit failed(states.error());
    return states ? std::move(*states) : std::vector<ledger::BatchState>();
}

QStringList Session::batchNames()
{
    QStringList names;
    // All there are, also where the machine's clock stands before them.
    const auto states = m_store->batches(chemistry::Instant::max(), true);
    if (!states) {
        emit failed(states.error());
        return names;
    }
    for (const auto& state : *states)
        names << QString::fromStdString(state.name);
    return names;
}

std::vector<ledger::Packet> Session::packetsAtHand()
{
    auto packets = store::packetsAtHand(*m_store);
    if (!packets) {
        emit failed(packets.error());
        return {};
    }
    return std::move(*packets);
}

std::optional<chemistry::Instant> Session::newest()
{
    const auto page = store::DayBook(*m_store).page({}, {}, 1);
    if (!page)
        emit failed(page.error());
    if (!page || page->entries.empty())
        return std::nullopt;
    return chemistry::Instant(std::chrono::milliseconds(page->entries.front().key.atMs));
}

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
    m_stale = true;
    m_strips.clear();
    emit changed();
}

} // namespace ullage::app
