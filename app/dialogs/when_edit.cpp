#include "app/dialogs/when_edit.h"

#include "app/widgets/theme.h"
#include "app/words/moment_text.h"

#include <QComboBox>
#include <QDateTimeEdit>
#include <QHBoxLayout>
#include <QPushButton>
#include <QSignalBlocker>

namespace ullage::app
{

namespace
{

using chemistry::Instant;

auto minuteOf(Instant moment) { return std::chrono::floor<std::chrono::minutes>(moment); }

// The locale's short form, but with the whole year: "01/06/26" can be read in three ways.
QString fieldFormat(const QLocale& locale)
{
    QString date = locale.dateFormat(QLocale::ShortFormat);
    if (!date.contains(QLatin1String("yyyy")))
        date.replace(QLatin1String("yy"), QLatin1String("yyyy"));
    return date + QLatin1Char(' ') + locale.timeFormat(QLocale::ShortFormat);
}

} // namespace

WhenEdit::WhenEdit(Clock clock, const QLocale& locale, QWidget* parent)
    : QWidget(parent), m_clock(std::move(clock)), m_locale(locale), m_edit(new QDateTimeEdit(this)),
      m_which(new QComboBox(this)), m_now(new QPushButton(tr("Now"), this))
{
    // The field shows what a clock on the wall shows, also where that skips or repeats an hour; by
    // itself it would change such a time while it is typed.
    m_edit->setTimeSpec(Qt::UTC);
    m_edit->setLocale(locale);
    m_edit->setDisplayFormat(fieldFormat(locale));
    m_edit->setCalendarPopup(true);
    m_edit->setAccessibleName(tr("When"));
    m_now->setAccessibleName(tr("Set to now"));
    m_now->setAutoDefault(false);
    setButtonLook(m_now, ButtonLook::Chip);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(Space::kSmall);
    row->addWidget(m_edit, 1);
    m_which->addItems({tr("the first time"), tr("the second time")});
    m_which->setAccessibleName(tr("The clock shows this twice: which is meant"));
    m_which->hide();
    row->addWidget(m_which);
    row->addWidget(m_now);
    setFocusPolicy(Qt::StrongFocus); // so that a label can be its buddy
    setFocusProxy(m_edit);
    showNow();
    connect(m_edit, &QDateTimeEdit::dateTimeChanged, this, [this] {
        m_set = true;
        ask();
        emit changed();
    });
    connect(m_which, &QComboBox::activated, this, &WhenEdit::changed);
    connect(m_now, &QPushButton::clicked, this, [this] {
        showNow();
        emit changed();
    });
}

void WhenEdit::showNow()
{
    put(m_clock());
    m_set = false;
    m_which->hide();
}

void WhenEdit::put(Instant moment)
{
    const QSignalBlocker quiet(m_edit);
    const QDateTime local = localTime(moment);
    m_edit->setDateTime(QDateTime(local.date(), local.time(), Qt::UTC));
}

std::vector<Instant> WhenEdit::meant() const { return momentsAt(m_edit->date(), m_edit->time()); }

bool WhenEdit::isAsked() const { return m_set && meant().size() > 1; }

// Proposes the last that is not still to come.
void WhenEdit::ask()
{
    const auto moments = meant();
    m_which->setVisible(moments.size() > 1);
    if (moments.size() > 1)
        m_which->setCurrentIndex(moments.back() <= m_clock() ? 1 : 0);
}

void WhenEdit::setEarliest(std::optional<Instant> earliest, const QString& what)
{
    m_earliest = earliest;
    m_earliestWhat = what;
}

void WhenEdit::setMoment(Instant moment)
{
    put(moment);
    m_set = true;
    ask();
    if (isAsked())
        m_which->setCurrentIndex(moment == meant().front() ? 0 : 1);
    emit changed();
}

Instant WhenEdit::moment() const
{
    const Instant now = m_clock();
    if (!m_set)
        return now;
    const auto moments = meant();
    // Of a time that no clock has shown, the moment it was skipped at: problem() refuses it.
    const Instant typed = moments.empty() ? skippedAt(m_edit->date(), m_edit->time()).value_or(now)
                          : moments.size() > 1 && m_which->currentIndex() == 0 ? moments.front()
                                                                               : moments.back();
    if (m_earliest && minuteOf(typed) == minuteOf(*m_earliest) && typed < *m_earliest)
        return *m_earliest;
    return minuteOf(typed) == minuteOf(now) ? now : typed;
}

QString WhenEdit::problem() const
{
    const Instant now = m_clock();
    const Instant at = moment();
    const auto skipped =
        m_set ? skippedAt(m_edit->date(), m_edit->time()) : std::optional<Instant>();
    if (skipped) {
        const QDateTime after = localTime(*skipped);
        const QDateTime before = localTime(*skipped - std::chrono::minutes(1));
        const auto written = [this](const QDateTime& time) {
            return m_locale.toString(time.time(), QLocale::ShortFormat);
        };
        return tr("When: no clock showed %1; it was put forward. Allowed is up to %2 and from %3.")
            .arg(m_edit->text(), written(before), written(after));
    }
    if (at > now)
        return tr("When: %1 is still to come; allowed is up to now, %2.")
            .arg(momentText(at, now, m_locale), momentText(now, now, m_locale));
    if (m_earliest && at < *m_earliest)
        return tr("When: %1 is too early: %3 on %2; allowed is from then to now.")
            .arg(momentText(at, now, m_locale), momentText(*m_earliest, now, m_locale),
                 m_earliestWhat);
    return {};
}

} // namespace ullage::app
