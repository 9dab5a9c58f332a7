#include "app/window/calendar_place.h"

#include "app/calendar/book_calendar.h"
#include "app/session/file_names.h"
#include "app/session/whole_file.h"
#include "app/widgets/prompts.h"
#include "app/window/book_files.h"
#include "app/window/calendar_dialog.h"
#include "app/window/main_window.h"
#include "app/words/left_out_words.h"

#include <QFileInfo>

namespace ullage::app
{

namespace
{

constexpr int kSoonMs = 1000; // several deeds at once are written once
// Dates move with the days although nothing was entered.
constexpr std::chrono::hours kAnewAfter{1};

Result<void> writeEvents(const QString& file, const std::vector<store::CalendarEvent>& events,
                         chemistry::Instant now)
{
    return writeWhole(file, calendarFile(events, now));
}

} // namespace

/// What the kept file says, for m_writers alone.
struct CalendarPlace::Written {
    QString file; ///< empty: not written yet
    std::vector<store::CalendarEvent> events;

    Result<void> write(std::vector<store::CalendarEvent> made, chemistry::Instant now,
                       const QString& to)
    {
        if (file == to && events == made && QFileInfo::exists(to))
            return {};
        auto done = writeEvents(to, made, now);
        file = done ? to : QString();
        events = std::move(made);
        return done;
    }
};

CalendarPlace::CalendarPlace(const WindowParts& parts, BookFiles& files, QObject* parent)
    : QObject(parent), m_parts(parts), m_files(files), m_written(std::make_shared<Written>()),
      m_thread(std::make_unique<StoreThread>())
{
    m_writers.setMaxThreadCount(1); // in turn
    m_soon.setSingleShot(true);
    m_soon.setInterval(kSoonMs);
    connect(&m_soon, &QTimer::timeout, this, &CalendarPlace::write);
    const Session* session = &m_parts.session;
    const auto opened = [this] {
        m_written = std::make_shared<Written>();
        m_entries = -1;
        m_thread->setBook(m_parts.session.path());
        take({});
        soon();
    };
    connect(session, &Session::opened, this, opened);
    connect(session, &Session::closing, this, &CalendarPlace::letGo);
    connect(session, &Session::changed, this, &CalendarPlace::soon);
    connect(&m_parts.door, &Door::wordingChanged, this, &CalendarPlace::anew);
    if (session->isOpen())
        opened();
}

CalendarPlace::~CalendarPlace()
{
    m_thread.reset();
    m_writers.waitForDone();
}

bool CalendarPlace::isKept() const
{
    return m_parts.session.isOpen() &&
           m_parts.preferences.keptCalendar(m_parts.session.path()).has_value();
}

void CalendarPlace::open()
{
    if (!m_parts.session.isOpen())
        return;
    const auto kept = m_parts.preferences.keptCalendar(m_parts.session.path());
    auto* dialog =
        new CalendarDialog(m_parts.wording(), kept ? kept->kinds : cupboard::everyDateKind(),
                           kept ? kept->file : QString(), &m_parts.window);
    connect(dialog, &CalendarDialog::stopRequested, this, [this] {
        m_parts.preferences.setKeptCalendar(m_parts.session.path(), std::nullopt);
        take({});
        prompts().tell(&m_parts.window, tr("Write a calendar"),
                       tr("It is no longer kept up to date. The file stays as it is."));
    });
    connect(dialog, &QDialog::accepted, this,
            [this, dialog] { choose(dialog->kinds(), dialog->isKept()); });
    openOnce(dialog);
}

void CalendarPlace::choose(const cupboard::DateKinds& kinds, bool keep)
{
    const Session& session = m_parts.session;
    if (!session.isOpen())
        return;
    const QString title = tr("Write a calendar");
    const auto kept = m_parts.preferences.keptCalendar(session.path());
    const QString usual =
        kept ? kept->file : QFileInfo(session.path()).completeBaseName() + kCalendarEnding;
    const auto chosen = prompts().saveFile(&m_parts.window, title, usual, tr("Calendars (*.ics)"));
    if (!chosen)
        return;
    const QString file = withEnding(*chosen, kCalendarEnding);
    if (m_files.isOpenBook(title, file))
        return;
    const CalendarRequest request = requestFor({file, kinds});
    const auto leftOut = std::make_shared<std::vector<ledger::Unread>>(); // filled by the job
    const auto job = [path = session.path(), request, file, leftOut]() -> Result<int> {
        auto store = store::SqlStore::open(path, {.access = store::Access::Read});
        if (!store)
            return tl::unexpected(store.error());
        const auto book = ledger::Book::open(
            **store, [now = request.now] { return now; }, [] { return std::string(); });
        if (!book)
            return tl::unexpected(book.error());
        const auto events = calendarEvents(**book, request, leftOut.get());
        if (!events)
            return tl::unexpected(events.error());
        if (const auto done = writeEvents(file, *events, request.now); !done)
            return tl::unexpected(done.error());
        return static_cast<int>(events->size());
    };
    m_files.run(title, job, [this, keep, file, kinds, leftOut, path = session.path()](int dates) {
        // Kept only once it could be written.
        if (keep)
            m_parts.preferences.setKeptCalendar(path, KeptCalendar{file, kinds});
        else if (const auto was = m_parts.preferences.keptCalendar(path); was && was->file == file)
            m_parts.preferences.setKeptCalendar(path, std::nullopt);
        anew();
        const QString written =
            keep ? tr("%Ln date(s) written. The file is kept up to date.", nullptr, dates)
                 : tr("%Ln date(s) written.", nullptr, dates);
        const QString without = leftOutText(*leftOut, m_parts.wording().locale);
        return without.isEmpty() ? written : written + u' ' + without;
    });
}

void CalendarPlace::anew()
{
    m_entries = -1;
    soon();
}

void CalendarPlace::soon()
{
    if (isKept() && !m_soon.isActive())
        m_soon.start();
}

void CalendarPlace::write()
{
    m_soon.stop();
    if (!isKept())
        return;
    const auto now = m_parts.session.now();
    const std::int64_t entries = m_parts.session.entries();
    if (entries == m_entries && now - m_writtenAt < kAnewAfter && !m_failing)
        return;
    m_entries = entries;
    m_writtenAt = now;
    m_underWay = true;
    const auto kept = m_parts.preferences.keptCalendar(m_parts.session.path());
    const auto hand = [this, written = m_written](Result<void> done) {
        QMetaObject::invokeMethod(this, [this, written, done = std::move(done)] {
            if (written == m_written) // else of a book that was let go
                take(done);
        });
    };
    m_thread->post(
        [hand, request = requestFor(*kept), file = kept->file, written = m_written,
         thread = m_thread.get(), writers = &m_writers](store::SqlStore&) {
            const auto book = thread->book();
            if (!book)
                return hand(tl::unexpected(book.error()));
            auto events = calendarEvents(**book, request);
            if (!events)
                return hand(tl::unexpected(events.error()));
            writers->start(
                [hand, written, file, now = request.now, events = std::move(*events)]() mutable {
                    hand(written->write(std::move(events), now, file));
                });
        },
        [hand](const Error& error) { hand(tl::unexpected(error)); });
}

CalendarRequest CalendarPlace::requestFor(const KeptCalendar& kept) const
{
    return {m_parts.session.now(), kept.kinds, m_parts.preferences.beside(),
            m_parts.wording().locale};
}

void CalendarPlace::take(const Result<void>& done)
{
    m_underWay = false;
    const bool was = m_failing.has_value();
    m_failing = done ? std::nullopt : std::optional(done.error());
    if (was || m_failing)
        emit failingChanged();
}

// What waited to be written is written now: nothing comes after it. The thread has let go of it
// then.
void CalendarPlace::letGo()
{
    m_thread->setBook({});
    if ((m_soon.isActive() || m_underWay) && isKept()) {
        const auto kept = m_parts.preferences.keptCalendar(m_parts.session.path());
        const CalendarRequest request = requestFor(*kept);
        if (auto events = calendarEvents(m_parts.session.book(), request))
            m_writers.start([written = m_written, file = kept->file, now = request.now,
                             events = std::move(*events)]() mutable {
                (void)written->write(std::move(events), now, file);
            });
    }
    m_soon.stop();
}

} // namespace ullage::app
