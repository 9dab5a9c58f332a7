// The dates of the book in a file for other calendars: written once, or kept up to date.
#pragma once

#include <QObject>

#include "app/calendar/book_calendar.h"
#include "app/session/store_thread.h"
#include "app/window/window_parts.h"

#include <QThreadPool>
#include <QTimer>

#include <memory>
#include <optional>
#include <vector>

namespace ullage::app
{

class BookFiles;

/// For the window's thread. A file that is kept up to date is written again some moments after the
/// book changed, only if what it says is other than before; it is read and written on threads. What
/// was waiting when the book is let go is read before that and written on: a slow disk holds up
/// nothing but the end of the program.
class CalendarPlace : public QObject
{
    Q_OBJECT

public:
    /// `files` outlives it.
    CalendarPlace(const WindowParts& parts, BookFiles& files, QObject* parent = nullptr);
    ~CalendarPlace() override;

    /// Asks what is to be in it, and for the file. Nothing while no book is open.
    void open();
    /// Why the file that is kept is not up to date; none where it is, or none is kept.
    [[nodiscard]] const std::optional<Error>& failing() const { return m_failing; }
    /// Looks soon whether the file still says what it is to, although nothing was entered.
    void anew();

signals:
    void failingChanged();

private:
    struct Written;

    [[nodiscard]] CalendarRequest requestFor(const KeptCalendar& kept) const;

    void soon();
    void write();
    void choose(const cupboard::DateKinds& kinds, bool keep);
    void take(const Result<void>& done);
    void letGo();
    [[nodiscard]] bool isKept() const;

    WindowParts m_parts;
    BookFiles& m_files;
    QTimer m_soon;
    std::optional<Error> m_failing;
    std::int64_t m_entries = -1; ///< of the book when it was last looked at; −1: look in any case
    chemistry::Instant m_writtenAt;
    bool m_underWay = false;            ///< the thread has not answered yet
    std::shared_ptr<Written> m_written; ///< of the book in hand; made anew for another
    std::unique_ptr<StoreThread> m_thread;
    QThreadPool m_writers; ///< of one thread, so in turn
};

} // namespace ullage::app
