#include "app/statistics/period_bar.h"

#include "app/widgets/moment_field.h"
#include "app/widgets/theme.h"
#include "app/words/local_calendar.h"
#include "app/words/moment_text.h"
#include "app/words/number_text.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QTimer>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kPauseMs = 250; // between the last letter and the counting
constexpr int kDayWidth = 124;

} // namespace

PeriodBar::PeriodBar(QWidget* parent)
    : QWidget(parent), m_span(new QComboBox(this)), m_from(dayField()), m_until(dayField()),
      m_pause(new QTimer(this))
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(Space::kSmall);
    for (int i = 0; i <= static_cast<int>(Span::Between); ++i)
        m_span->addItem(QString());
    row->addWidget(m_span);
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
        showDays();
        emit changed();
    });
    setToday(QDate::currentDate());
    showDays();
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

void PeriodBar::setToday(QDate today)
{
    if (today == m_today)
        return;
    m_today = today;
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
}

void PeriodBar::setSpan(Span span) { m_span->setCurrentIndex(static_cast<int>(span)); }

void PeriodBar::setDays(QDate from, QDate until)
{
    m_from->setShown(from);
    m_until->setShown(until);
    if (span() == Span::Between)
        emit changed();
    else
        setSpan(Span::Between);
}

PeriodBar::Span PeriodBar::span() const { return static_cast<Span>(m_span->currentIndex()); }

// Given the wrong way round, the same days are meant.
std::pair<QDate, QDate> PeriodBar::days() const
{
    return std::minmax(m_from->date(), m_until->date());
}

ledger::Period PeriodBar::period() const
{
    const QDate thisMonth(m_today.year(), m_today.month(), 1);
    const QDate thisYear(m_today.year(), 1, 1);
    switch (span()) {
    case Span::TwelveMonths:
        return periodOf(thisMonth.addMonths(-11), {});
    case Span::Year:
        return periodOf(thisYear, {});
    case Span::LastYear:
        return periodOf(thisYear.addYears(-1), thisYear);
    case Span::Between:
        return periodOf(days().first, days().second.addDays(1));
    case Span::All:
        break;
    }
    return {};
}

QString PeriodBar::words() const
{
    switch (span()) {
    case Span::Year:
        return QString::number(m_today.year());
    case Span::LastYear:
        return QString::number(m_today.year() - 1);
    case Span::Between:
        return tr("%1 to %2", "dates")
            .arg(yearDateText(days().first, m_locale), yearDateText(days().second, m_locale));
    case Span::TwelveMonths:
    case Span::All:
        break;
    }
    return m_span->currentText();
}

void PeriodBar::showDays()
{
    m_from->setVisible(span() == Span::Between);
    m_until->setVisible(span() == Span::Between);
}

void PeriodBar::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        retranslate();
    QWidget::changeEvent(event);
}

void PeriodBar::retranslate()
{
    const QStringList spans{tr("Last 12 months"), tr("This year"), tr("Last year"), tr("All time"),
                            tr("Between …")};
    for (int i = 0; i < spans.size(); ++i)
        m_span->setItemText(i, spans[i]);
    m_span->setAccessibleName(tr("Period"));
    m_from->setAccessibleName(tr("From"));
    m_until->setAccessibleName(tr("Until"));
}

} // namespace ullage::app
