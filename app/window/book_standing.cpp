#include "app/window/book_standing.h"

#include "app/widgets/prompts.h"
#include "app/window/book_copies.h"
#include "app/window/main_window.h"

#include <utility>

namespace ullage::app
{

BookStanding::BookStanding(const WindowParts& parts, BookCopies& copies, QObject* parent)
    : QObject(parent), m_parts(parts), m_copies(copies)
{
    connect(&m_parts.session, &Session::standingChanged, this, &BookStanding::show);
    connect(&m_parts.session, &Session::failed, this, &BookStanding::tell);
}

void BookStanding::show()
{
    MainWindow& window = m_parts.window;
    const auto& why = m_parts.session.readOnly();
    window.offerMending(m_copies.isFaulty());
    if (why) {
        const bool moved = why->code == ErrorCode::BookMoved;
        const QString text = moved ? tr("Moved or replaced: nothing can be entered")
                             : why->code == ErrorCode::BookDamaged ? tr("Damaged: read only")
                                                                   : tr("Read only");
        window.setStanding(text, why->code != ErrorCode::ReadOnly, m_parts.sentence(*why));
        return;
    }
    if (const auto& fault = m_parts.session.fault())
        return window.setStanding(
            tr("Something is wrong in the book"), true,
            tr("%1 “Check the book” finds all there is.").arg(m_parts.sentence(*fault)));
    if (m_calendarFailing)
        return window.setStanding(
            tr("The calendar is not up to date"), true,
            tr("%1 It is tried again; “Write a calendar…” in the File menu chooses another file.")
                .arg(m_parts.sentence(*m_calendarFailing)));
    const QStringList& others = m_parts.session.elsewhere();
    window.setStanding(others.isEmpty() ? QString() : tr("Also open elsewhere"), false,
                       others.isEmpty() ? QString()
                                        : tr("What is entered there appears here. Open in: %1")
                                              .arg(others.join(QStringLiteral(", "))));
}

void BookStanding::setCalendarFailing(const std::optional<Error>& why)
{
    m_calendarFailing = why;
    show();
}

void BookStanding::tell(const Error& error)
{
    const QString title = tr("The book could not be read");
    if (error.code != ErrorCode::NotAsEntered && error.code != ErrorCode::BookDamaged)
        return m_parts.fail(title, error);
    // Once whoever told of it is done, and the pages show what is sound. One fault is enough to ask
    // about: the check lists them all.
    if (!std::exchange(m_asking, true))
        QMetaObject::invokeMethod(
            this, [this, error] { ask(error); }, Qt::QueuedConnection);
}

void BookStanding::ask(const Error& error)
{
    if (m_parts.session.isOpen()) {
        const auto way =
            prompts().choose(&m_parts.window, tr("Something is wrong in the book"),
                             tr("%1 What is sound is shown. What to do about the rest?")
                                 .arg(m_parts.sentence(error)),
                             {tr("Restore a copy…"), tr("Salvage what is left into a new book…")});
        if (way)
            *way == 0 ? m_copies.openCopies() : m_copies.salvage();
    }
    m_asking = false;
}

} // namespace ullage::app
