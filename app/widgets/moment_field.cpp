#include "app/widgets/moment_field.h"

#include "app/widgets/colours.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"
#include "app/words/moment_text.h"

#include <QCalendarWidget>
#include <QEvent>
#include <QFrame>
#include <QKeyEvent>
#include <QScreen>
#include <QStyle>
#include <QTextCharFormat>
#include <QToolButton>
#include <QVBoxLayout>

namespace ullage::app
{

namespace
{

constexpr int kButton = 24;
constexpr int kLongestPart = 16; // letters of what was not understood that are repeated
const QSize kCalendar(308, 268); // a head, the weekdays and six weeks

// Where the figures of a text stand: beginning and end of each run of digits.
std::vector<std::pair<int, int>> figuresIn(const QString& text)
{
    std::vector<std::pair<int, int>> runs;
    for (int i = 0; i < text.size(); ++i) {
        if (text[i].digitValue() < 0)
            continue;
        if (!runs.empty() && runs.back().second == i)
            ++runs.back().second;
        else
            runs.emplace_back(i, i + 1);
    }
    return runs;
}

} // namespace

MomentField::MomentField(Asks asks, Clock clock, const QLocale& locale, QWidget* parent)
    : QLineEdit(parent), m_asks(asks), m_clock(std::move(clock)), m_locale(locale),
      m_open(new QToolButton(this))
{
    m_open->setArrowType(Qt::DownArrow);
    m_open->setCursor(Qt::ArrowCursor);
    m_open->setFocusPolicy(Qt::NoFocus); // Alt+Down does the same
    setTextMargins(0, 0, kButton - 6, 0);
    retranslate();
    const QDateTime now = localTime(m_clock());
    setShown(now.date(), now.time());
    connect(m_open, &QToolButton::clicked, this, &MomentField::openCalendar);
    connect(this, &QLineEdit::textEdited, this, &MomentField::readTyped);
}

void MomentField::retranslate()
{
    m_open->setAccessibleName(tr("Choose from a calendar"));
    setPlainToolTip(m_open, tr("Choose from a calendar (Alt+Down)"));
}

QString MomentField::written() const
{
    return m_asks == Asks::Day ? fieldText(m_date, m_locale) : fieldText(m_date, m_time, m_locale);
}

void MomentField::setReadingLocale(const QLocale& locale)
{
    m_locale = locale;
    if (!m_typed && isUnderstood())
        setText(written());
}

void MomentField::setLooksAhead() { m_ahead = true; }

void MomentField::setMayBeEmpty()
{
    m_mayBeEmpty = true;
    showNone();
}

void MomentField::showNone()
{
    m_read = {};
    m_read.problem = MomentProblem::Empty;
    m_typed = false;
    clear();
    showValidity();
}

void MomentField::setShown(QDate date, QTime time)
{
    m_date = date;
    m_time = QTime(time.hour(), time.minute());
    m_read = {};
    m_read.date = m_date;
    m_read.time = m_time;
    m_typed = false;
    setText(written());
    showValidity();
}

void MomentField::readTyped()
{
    m_typed = true;
    m_read = readMoment(text(), m_clock(), m_locale, MomentWords::translated(),
                        m_ahead ? Meant::IsToCome : Meant::HasBeen);
    if (m_asks == Asks::Day && m_read.isUnderstood() && m_read.timeWritten && !m_read.now) {
        m_read.problem = MomentProblem::NotUnderstood;
        m_read.length = text().size();
    }
    if (m_read.isUnderstood()) {
        m_date = m_read.date;
        m_time = m_read.time;
    }
    showValidity();
    emit readingChanged();
}

QString MomentField::wrongPart() const
{
    QString part = text().mid(m_read.at, m_read.length).trimmed();
    if (part.size() > kLongestPart)
        part = part.left(kLongestPart) + u'…';
    return part;
}

QString MomentField::shortProblem() const
{
    switch (m_read.problem) {
    case MomentProblem::None:
        return {};
    case MomentProblem::Empty:
        if (m_mayBeEmpty)
            return {};
        return m_asks == Asks::Day ? tr("A day is needed.") : tr("A day and a time are needed.");
    case MomentProblem::NotUnderstood:
        return tr("“%1” is not understood.").arg(wrongPart());
    case MomentProblem::NoSuchDay:
        return tr("“%1” is not a day.").arg(wrongPart());
    case MomentProblem::NoSuchTime:
        return tr("“%1” is not a time of day.").arg(wrongPart());
    case MomentProblem::Twice:
        return tr("“%1” comes on top of what stands already.").arg(wrongPart());
    case MomentProblem::OtherWeekday:
        return tr("That day is not a “%1”.").arg(wrongPart());
    }
    return {};
}

QString MomentField::problem() const
{
    const QString what = shortProblem();
    if (what.isEmpty())
        return {};
    const QDate day = localTime(m_clock()).date().addDays(m_ahead ? 2 : -2);
    if (m_asks == Asks::Day) {
        return (m_ahead ? tr("%1 Write it like %2, “tomorrow” or “Monday”.", "problem, date")
                        : tr("%1 Write it like %2, “yesterday” or “Monday”.", "problem, date"))
            .arg(what, fieldText(day, m_locale));
    }
    return (m_ahead
                ? tr("%1 Write it like %2, “tomorrow 20:00” or “Monday 18:00”.", "problem, date")
                : tr("%1 Write it like %2, “yesterday 20:00”, “18:00” or “now”.", "problem, date"))
        .arg(what, fieldText(day, QTime(18, 0), m_locale));
}

void MomentField::showValidity()
{
    const QString trouble = problem();
    setPlainToolTip(this, trouble);
    setAccessibleDescription(trouble);
    if (property("invalid").toBool() == !trouble.isEmpty())
        return;
    setProperty("invalid", !trouble.isEmpty());
    style()->unpolish(this);
    style()->polish(this);
}

QChar MomentField::figureAt(int cursor) const
{
    const QString order = figuresOf(m_date, m_asks == Asks::Day ? QTime() : m_time, m_locale);
    const auto runs = figuresIn(text());
    if (m_typed || runs.size() != static_cast<std::size_t>(order.size()))
        return u'd';
    for (std::size_t i = 0; i < runs.size(); ++i) {
        if (cursor >= runs[i].first && cursor <= runs[i].second)
            return order[static_cast<qsizetype>(i)];
    }
    return u'd';
}

void MomentField::selectFigure(QChar figure)
{
    const QString order = figuresOf(m_date, m_asks == Asks::Day ? QTime() : m_time, m_locale);
    const auto runs = figuresIn(text());
    const auto at = order.indexOf(figure);
    if (at < 0 || runs.size() != static_cast<std::size_t>(order.size()))
        return;
    const auto [from, to] = runs[static_cast<std::size_t>(at)];
    setSelection(from, to - from);
}

void MomentField::step(int by)
{
    if (!isUnderstood())
        return;
    const int cursor = hasSelectedText() ? selectionStart() : cursorPosition();
    const QChar figure = figureAt(cursor);
    // By the calendar and the clock on the wall; UTC has no hours that are skipped.
    QDateTime at(m_date, m_time, Qt::UTC);
    switch (figure.unicode()) {
    case u'y':
        at = at.addYears(by);
        break;
    case u'M':
        at = at.addMonths(by);
        break;
    case u'h':
        at = at.addSecs(by * 3600);
        break;
    case u'm':
        at = at.addSecs(by * 60);
        break;
    default:
        at = at.addDays(by);
    }
    if (at.date().year() < 1900 || at.date().year() > 2200)
        return;
    setShown(at.date(), at.time());
    selectFigure(figure);
    emit readingChanged();
}

void MomentField::keyPressEvent(QKeyEvent* event)
{
    const bool up = event->key() == Qt::Key_Up;
    const bool down = event->key() == Qt::Key_Down;
    if ((down && event->modifiers() == Qt::AltModifier) || event->key() == Qt::Key_F4)
        return openCalendar();
    if ((up || down) && !(event->modifiers() & ~Qt::KeypadModifier))
        return step(up ? 1 : -1);
    QLineEdit::keyPressEvent(event);
}

void MomentField::focusOutEvent(QFocusEvent* event)
{
    if (m_typed && isUnderstood() && !m_read.now)
        setShown(m_date, m_time);
    QLineEdit::focusOutEvent(event);
}

void MomentField::placeButton()
{
    m_open->setGeometry(width() - kButton - 3, (height() - kButton) / 2, kButton, kButton);
}

void MomentField::resizeEvent(QResizeEvent* event)
{
    QLineEdit::resizeEvent(event);
    placeButton();
}

void MomentField::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange) {
        retranslate();
        showValidity();
    }
    QLineEdit::changeEvent(event);
}

void MomentField::buildCalendar()
{
    auto* frame = new QFrame(this, Qt::Popup);
    frame->setFrameShape(QFrame::StyledPanel);
    frame->setObjectName(QStringLiteral("calendar"));
    // The room that tables give their cells would leave none for the words here.
    frame->setStyleSheet(QStringLiteral("QAbstractItemView { padding: 0; border: none; }"
                                        "QAbstractItemView::item { padding: 0; }"));
    m_popup = frame;
    m_calendar = new QCalendarWidget(frame);
    m_calendar->setAccessibleName(tr("Calendar"));
    m_calendar->setHorizontalHeaderFormat(QCalendarWidget::ShortDayNames);
    m_calendar->setVerticalHeaderFormat(QCalendarWidget::NoVerticalHeader);
    m_calendar->setDateRange(QDate(1900, 1, 1), QDate(2200, 12, 31));
    m_calendar->setMinimumSize(kCalendar);
    auto* column = new QVBoxLayout(frame);
    column->setContentsMargins(Space::kTight, Space::kTight, Space::kTight, Space::kTight);
    column->addWidget(m_calendar);
    connect(m_calendar, &QCalendarWidget::clicked, this, &MomentField::choose);
    connect(m_calendar, &QCalendarWidget::activated, this, &MomentField::choose);
}

void MomentField::openCalendar()
{
    if (!m_calendar)
        buildCalendar();
    // Weekends are days like others, and their colour follows the theme.
    QTextCharFormat plain;
    plain.setForeground(palette().color(QPalette::Text));
    m_calendar->setWeekdayTextFormat(Qt::Saturday, plain);
    m_calendar->setWeekdayTextFormat(Qt::Sunday, plain);
    m_calendar->setLocale(m_locale);
    m_calendar->setFirstDayOfWeek(m_locale.firstDayOfWeek());
    m_calendar->setSelectedDate(m_date);
    m_popup->adjustSize();
    QPoint at = mapToGlobal(QPoint(0, height() + 2));
    if (const QScreen* here = screen()) {
        const QRect room = here->availableGeometry();
        if (at.y() + m_popup->height() > room.bottom())
            at.setY(mapToGlobal(QPoint(0, -2)).y() - m_popup->height());
        at.setX(std::max(room.left(), std::min(at.x(), room.right() - m_popup->width())));
    }
    m_popup->move(at);
    m_popup->show();
    m_calendar->setFocus();
}

// The time of day stays.
void MomentField::choose(QDate date)
{
    m_popup->close();
    setFocus(Qt::PopupFocusReason);
    setShown(date, m_time);
    emit readingChanged();
}

} // namespace ullage::app
