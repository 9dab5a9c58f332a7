// What a window must know about its book: it is not alone with it, or can only read it, or
// something is wrong in it; and what can be done about that, where it is said.
#pragma once

#include <QObject>

#include "app/window/window_parts.h"

namespace ullage::app
{

class BookCopies;

class BookStanding : public QObject
{
    Q_OBJECT

public:
    /// `copies` outlives it.
    BookStanding(const WindowParts& parts, BookCopies& copies, QObject* parent = nullptr);

    /// In the rail; again when the words for it change.
    void show();
    /// Why the calendar's file is not up to date; none where it is.
    void setCalendarFailing(const std::optional<Error>& why);

private:
    void tell(const Error& error);
    void ask(const Error& error);

    WindowParts m_parts;
    BookCopies& m_copies;
    std::optional<Error> m_calendarFailing;
    bool m_asking = false; ///< what to do about a fault, or about to
};

} // namespace ullage::app
