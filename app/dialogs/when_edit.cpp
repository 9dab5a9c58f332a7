#include "app/dialogs/when_edit.h"

#include "app/widgets/theme.h"
#include "app/words/moment_text.h"

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
      m_now(new QPushButton(tr("Now"), this))
{
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
    row->addWidget(m_now);
    setFocusPolicy(Qt::StrongFocus); // so that a label can be its buddy
    setFocusProxy(m_edit);
    showNow();
    connect(m_edit, &QDateTimeEdit::dateTimeChanged, this, [this] {
        m_set = true;
        emit changed();
    });
    connect(m_now, &QPushButton::clicked, this, [this] {
        showNow();
        emit changed();
    });
}

void WhenEdit::showNow()
{
    const QSignalBlocker quiet(m_edit);
    m_edit->setDateTime(localTime(m_clock()));
    m_set = false;
}

void WhenEdit::setEarliest(std::optional<Instant> earliest, const QString& what)
{
    m_earliest = earliest;
    m_earliestWhat = what;
}

void WhenEdit::setMoment(Instant moment) { m_edit->setDateTime(localTime(moment)); }

Instant WhenEdit::moment() const
{
    const Instant now = m_clock();
    if (!m_set)
        return now;
    const Instant typed = instantOf(m_edit->dateTime());
    if (m_earliest && minuteOf(typed) == minuteOf(*m_earliest) && typed < *m_earliest)
        return *m_earliest;
    return minuteOf(typed) == minuteOf(now) ? now : typed;
}

QString WhenEdit::problem() const
{
    const Instant now = m_clock();
    const Instant at = moment();
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
