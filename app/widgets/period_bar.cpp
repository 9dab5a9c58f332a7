#include "app/widgets/period_bar.h"

#include "app/widgets/moment_field.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"
#include "app/words/local_calendar.h"
#include "app/words/moment_text.h"
#include "app/words/number_text.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QTimer>
#include <QToolButton>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kPauseMs = 250; // between the last letter and the counting
constexpr int kDayWidth = 124;

} // namespace

PeriodBar::PeriodBar(std::vector<Span> offered, QWidget* parent)
    : QWidget(parent), m_span(new QComboBox(this)), m_earlier(stepButton("left", -1)),
      m_which(new PlainLabel(this)), m_later(stepButton("right", 1)), m_from(dayField()),
      m_until(dayField()), m_pause(new QTimer(this))
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(Space::kSmall);
    for (const Span span : offered)
        m_span->addItem(QString(), static_cast<int>(span));
    m_which->setAlignment(Qt::AlignCenter);
    for (QWidget* part : std::initializer_list<QWidget*>{m_span, m_earlier, m_which, m_later})
        row->addWidget(part);
    for (MomentField* day : {m_from, m_until}) {
        day->setFixedWidth(kDayWidth);
        row->addWidget(day);
        connect(day, &MomentField::readingChanged, m_pause, qOverload<>(&QTimer::start));
    }
    m_pause->setSingleShot(true);
    m_pause->setInterval(kPauseMs);
    connect(m_pause, &QTimer::timeout, this, [this] {
        if (m_from->isUnderstood() && m_until->isUnderstood())
            emit changed();
    });
    connect(m_span, &QComboBox::currentIndexChanged, this, [this] {
        m_pause->stop();
        m_back = 0;
        showParts();
        emit changed();
    });
    setToday(QDate::currentDate());
    retranslate();
}

// Days are read from the end of today, which is not to come.
MomentField* PeriodBar::dayField()
{
    const auto clock = [this] {
        const QDate today = m_today.isValid() ? m_today : QDate::currentDate();
        return instantOf(QDateTime(today, QTime(23, 59)));
    };
    return new MomentField(MomentField::Asks::Day, clock, m_locale, this);
}

QToolButton* PeriodBar::stepButton(const char* arrow, int by)
{
    auto* button = new QToolButton(this);
    button->setProperty("arrow", QLatin1String(arrow));
    button->setFocusPolicy(Qt::StrongFocus);
    connect(button, &QToolButton::clicked, this, [this, by] { step(by); });
    return button;
}

// What was gone back to stays when another day begins.
void PeriodBar::setToday(QDate today)
{
    if (today == m_today)
        return;
    const QDate looked = m_back > 0 ? firstDay() : QDate();
    m_today = today;
    while (looked.isValid() && firstDay() > looked)
        ++m_back;
    showParts();
    if (span() != Span::Between) {
        m_from->setShown(QDate(today.year(), today.month(), 1));
        m_until->setShown(today);
    }
}

void PeriodBar::setReadingLocale(const QLocale& locale)
{
    m_locale = locale;
    m_from->setReadingLocale(locale);
    m_until->setReadingLocale(locale);
    showParts();
}

void PeriodBar::setSpan(Span span)
{
    m_span->setCurrentIndex(m_span->findData(static_cast<int>(span)));
}

void PeriodBar::step(int by)
{
    const int back = std::max(0, m_back - by);
    if (monthsEach() == 0 || back == m_back)
        return;
    m_back = back;
    showParts();
    emit changed();
}

void PeriodBar::setDays(QDate from, QDate until)
{
    m_from->setShown(from);
    m_until->setShown(until);
    if (span() == Span::Between)
        emit changed();
    else
        setSpan(Span::Between);
}

PeriodBar::Span PeriodBar::span() const { return static_cast<Span>(m_span->currentData().toInt()); }

int PeriodBar::monthsEach() const
{
    switch (span()) {
    case Span::Month:
        return 1;
    case Span::Quarter:
        return 3;
    case Span::Year:
        return 12;
    case Span::All:
    case Span::Today:
    case Span::Week:
    case Span::TwelveMonths:
    case Span::Between:
        break;
    }
    return 0;
}

QDate PeriodBar::firstDay() const
{
    const int each = monthsEach();
    const int month = (m_today.month() - 1) / each * each + 1;
    return QDate(m_today.year(), month, 1).addMonths(-each * m_back);
}

// Given the wrong way round, the same days are meant.
std::pair<QDate, QDate> PeriodBar::days() const
{
    return std::minmax(m_from->date(), m_until->date());
}

ledger::Period PeriodBar::period() const
{
    if (const int each = monthsEach())
        return periodOf(firstDay(), firstDay().addMonths(each));
    switch (span()) {
    case Span::Today:
        return periodOf(m_today, m_today.addDays(1));
    case Span::Week:
        return periodOf(m_today.addDays(-6), m_today.addDays(1));
    case Span::TwelveMonths:
        return periodOf(QDate(m_today.year(), m_today.month(), 1).addMonths(-11), {});
    case Span::Between:
        return periodOf(days().first, days().second.addDays(1));
    case Span::All:
    case Span::Month:
    case Span::Quarter:
    case Span::Year:
        break;
    }
    return {};
}

QString PeriodBar::wordsFrom(QDate first) const
{
    const QString month = m_locale.standaloneMonthName(first.month());
    if (span() == Span::Month)
        return tr("%1 %2", "month, year").arg(month).arg(first.year());
    if (span() == Span::Quarter)
        return tr("%1 to %2 %3", "month, month, year of both")
            .arg(month, m_locale.standaloneMonthName(first.addMonths(2).month()))
            .arg(first.year());
    return QString::number(first.year());
}

QString PeriodBar::words() const
{
    if (monthsEach() > 0)
        return wordsFrom(firstDay());
    if (span() == Span::Between)
        return tr("%1 to %2", "dates")
            .arg(yearDateText(days().first, m_locale), yearDateText(days().second, m_locale));
    return m_span->currentText();
}

// The words have the room of the longest, so that the arrows stay where they are.
void PeriodBar::showParts()
{
    const bool steps = monthsEach() > 0;
    for (QWidget* part : std::initializer_list<QWidget*>{m_earlier, m_which, m_later})
        part->setVisible(steps);
    if (steps) {
        m_which->setText(words());
        m_later->setEnabled(m_back > 0);
        int widest = 0;
        for (int back = 0; back < 12; ++back) {
            const QDate first = firstDay().addMonths(-back * monthsEach());
            widest = std::max(widest, m_which->fontMetrics().horizontalAdvance(wordsFrom(first)));
        }
        m_which->setMinimumWidth(widest);
    }
    m_from->setVisible(span() == Span::Between);
    m_until->setVisible(span() == Span::Between);
}

void PeriodBar::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        retranslate();
    QWidget::changeEvent(event);
}

QString PeriodBar::nameOf(Span span)
{
    switch (span) {
    case Span::All:
        return tr("All time");
    case Span::Today:
        return tr("Today");
    case Span::Week:
        return tr("Last 7 days");
    case Span::TwelveMonths:
        return tr("Last 12 months");
    case Span::Month:
        return tr("Month");
    case Span::Quarter:
        return tr("Quarter");
    case Span::Year:
        return tr("Year");
    case Span::Between:
        return tr("Between…");
    }
    return {};
}

void PeriodBar::retranslate()
{
    for (int i = 0; i < m_span->count(); ++i)
        m_span->setItemText(i, nameOf(static_cast<Span>(m_span->itemData(i).toInt())));
    m_span->setAccessibleName(tr("Period"));
    setPlainToolTip(m_earlier, tr("Earlier"));
    m_earlier->setAccessibleName(tr("Earlier"));
    setPlainToolTip(m_later, tr("Later"));
    m_later->setAccessibleName(tr("Later"));
    m_from->setAccessibleName(tr("From"));
    m_until->setAccessibleName(tr("Until"));
    showParts();
}

} // namespace ullage::app
