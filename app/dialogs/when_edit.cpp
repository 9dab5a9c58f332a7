#include "app/dialogs/when_edit.h"

#include "app/widgets/moment_field.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"
#include "app/words/moment_text.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage::app
{

namespace
{

using chemistry::Instant;

auto minuteOf(Instant moment) { return std::chrono::floor<std::chrono::minutes>(moment); }

} // namespace

WhenEdit::WhenEdit(Clock clock, const QLocale& locale, QWidget* parent)
    : QWidget(parent), m_clock(std::move(clock)), m_locale(locale),
      // The field shows what a clock on the wall shows, also where that skips or repeats an hour.
      m_edit(new MomentField(MomentField::Asks::Moment, m_clock, locale, this)),
      m_which(new QComboBox(this)), m_now(new QPushButton(tr("Now"), this)),
      m_says(new PlainLabel(this))
{
    m_edit->setAccessibleName(tr("When"));
    m_now->setAccessibleName(tr("Set to now"));
    m_now->setAutoDefault(false);
    setButtonLook(m_now, ButtonLook::Chip);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    auto* row = new QHBoxLayout;
    row->setSpacing(Space::kSmall);
    row->addWidget(m_edit, 1);
    m_which->addItems({tr("the first time"), tr("the second time")});
    m_which->setAccessibleName(tr("The clock shows this twice: which is meant"));
    m_which->hide();
    row->addWidget(m_which);
    row->addWidget(m_now);
    column->addLayout(row);
    // Its line is always there, so that nothing moves while one types; it never widens the form.
    m_says->setFont(Theme::font(TextRole::Small));
    m_says->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    m_says->setFixedHeight(m_says->fontMetrics().height());
    column->addWidget(m_says);
    setFocusPolicy(Qt::StrongFocus); // so that a label can be its buddy
    setFocusProxy(m_edit);
    showNow();
    connect(m_edit, &MomentField::readingChanged, this, [this] {
        m_set = !m_edit->isUnderstood() || !m_edit->saysNow();
        ask();
        say();
        emit changed();
    });
    connect(m_which, &QComboBox::activated, this, [this] {
        say();
        emit changed();
    });
    connect(m_now, &QPushButton::clicked, this, [this] {
        showNow();
        emit changed();
    });
}

void WhenEdit::setName(const QString& name) { m_edit->setAccessibleName(name); }

void WhenEdit::showNow()
{
    put(m_clock());
    m_set = false;
    m_which->hide();
    say();
}

void WhenEdit::put(Instant moment)
{
    const QDateTime local = localTime(moment);
    m_edit->setShown(local.date(), local.time());
}

std::vector<Instant> WhenEdit::meant() const { return momentsAt(m_edit->date(), m_edit->time()); }

bool WhenEdit::isAsked() const { return m_set && isUnderstood() && meant().size() > 1; }

bool WhenEdit::isUnderstood() const { return m_edit->isUnderstood(); }

// Proposes the last that is not still to come.
void WhenEdit::ask()
{
    m_which->setVisible(isAsked());
    if (isAsked())
        m_which->setCurrentIndex(meant().back() <= m_clock() ? 1 : 0);
}

QString WhenEdit::understood() const { return m_says->text(); }

// How it was understood; in a narrow place without how long ago that is.
void WhenEdit::say()
{
    if (!isUnderstood()) {
        setTone(m_says, Tone::Discard);
        m_says->setText(m_edit->shortProblem());
        return;
    }
    const QString words = understoodText(m_edit->date(), m_edit->time(), m_locale);
    const Instant now = m_clock();
    const Instant at = moment();
    const QString long_ = tr("%1 · %2", "moment, how long ago")
                              .arg(words, m_set ? agoText(at, now) : tr("now", "when it is saved"));
    const bool fits = m_says->fontMetrics().horizontalAdvance(long_) <= m_says->width();
    setTone(m_says, at > now ? Tone::Discard : Tone::Quiet);
    m_says->setText(fits || at > now ? long_ : words);
}

void WhenEdit::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    say();
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
    say();
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
    if (!isUnderstood())
        return tr("When: %1", "what is wrong").arg(m_edit->problem());
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
            .arg(fieldText(m_edit->date(), m_edit->time(), m_locale), written(before),
                 written(after));
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
