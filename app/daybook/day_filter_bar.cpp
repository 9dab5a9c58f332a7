#include "app/daybook/day_filter_bar.h"

#include "app/widgets/flow_layout.h"
#include "app/widgets/moment_field.h"
#include "app/widgets/theme.h"
#include "app/words/moment_text.h"

#include <QButtonGroup>
#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QTimer>

namespace ullage::app
{

namespace
{

constexpr int kPauseMs = 250; // between the last letter and the search
constexpr int kHeight = 34;

// A choice stays chosen when the list around it changes.
void refill(QComboBox* combo, const std::vector<std::pair<QString, QString>>& choices)
{
    const QSignalBlocker quiet(combo);
    const QString chosen = combo->currentData().toString();
    const QString name = combo->currentText();
    while (combo->count() > 1)
        combo->removeItem(1);
    for (const auto& [id, text] : choices)
        combo->addItem(text, id);
    if (!chosen.isEmpty() && combo->findData(chosen) < 0)
        combo->addItem(name, chosen);
    combo->setCurrentIndex(std::max(0, combo->findData(chosen)));
}

chemistry::Instant startOf(QDate day) { return instantOf(day.startOfDay()); }

} // namespace

DayFilterBar::DayFilterBar(QWidget* parent)
    : QWidget(parent), m_groups(new QButtonGroup(this)), m_bottle(new QComboBox(this)),
      m_person(new QComboBox(this)), m_span(new QComboBox(this)), m_from(dayField()),
      m_until(dayField()), m_find(new QLineEdit(this)), m_pause(new QTimer(this))
{
    auto* flow = new FlowLayout(this, Space::kSmall);
    for (int i = 0; i < kDayGroups; ++i) {
        auto* chip = new QPushButton(this);
        chip->setCheckable(true);
        chip->setFixedHeight(kHeight);
        setButtonLook(chip, ButtonLook::Chip);
        m_groups->addButton(chip, i);
        flow->addWidget(chip);
    }
    m_groups->button(0)->setChecked(true);
    for (QComboBox* combo : {m_bottle, m_person, m_span}) {
        combo->setFixedHeight(kHeight);
        combo->setMinimumContentsLength(9);
        combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        combo->setMaxVisibleItems(20);
        flow->addWidget(combo);
    }
    m_bottle->addItem(QString(), QString());
    m_person->addItem(QString(), QString());
    for (int i = 0; i <= static_cast<int>(Span::Between); ++i)
        m_span->addItem(QString());
    for (MomentField* edit : {m_from, m_until}) {
        edit->setFixedHeight(kHeight);
        flow->addWidget(edit);
    }
    m_find->setFixedHeight(kHeight);
    m_find->setFixedWidth(150);
    m_find->setClearButtonEnabled(true);
    flow->addWidget(m_find);
    m_person->hide();
    m_pause->setSingleShot(true);
    m_pause->setInterval(kPauseMs);

    connect(m_groups, &QButtonGroup::idToggled, this, [this](int, bool on) {
        if (on)
            emit changed();
    });
    for (QComboBox* combo : {m_bottle, m_person})
        connect(combo, &QComboBox::currentIndexChanged, this, &DayFilterBar::changed);
    connect(m_span, &QComboBox::currentIndexChanged, this, [this] {
        showDates();
        emit changed();
    });
    for (MomentField* edit : {m_from, m_until})
        connect(edit, &MomentField::readingChanged, m_pause, qOverload<>(&QTimer::start));
    connect(m_find, &QLineEdit::textChanged, m_pause, qOverload<>(&QTimer::start));
    connect(m_find, &QLineEdit::returnPressed, this, [this] {
        m_pause->stop();
        emit changed();
    });
    connect(m_pause, &QTimer::timeout, this, &DayFilterBar::changed);
    showDates();
    retranslate();
}

// Days are read from the end of today, which is not to come.
MomentField* DayFilterBar::dayField()
{
    const auto clock = [this] {
        const QDate today = m_today.isValid() ? m_today : QDate::currentDate();
        return instantOf(QDateTime(today, QTime(23, 59)));
    };
    return new MomentField(MomentField::Asks::Day, clock, m_locale, this);
}

void DayFilterBar::setToday(QDate today)
{
    if (today == m_today)
        return;
    m_today = today;
    if (static_cast<Span>(m_span->currentIndex()) != Span::Between) {
        m_from->setShown(today.addMonths(-1));
        m_until->setShown(today);
    }
}

void DayFilterBar::setLocale(const QLocale& locale)
{
    m_locale = locale;
    for (MomentField* edit : {m_from, m_until})
        edit->setReadingLocale(locale);
}

void DayFilterBar::setBottles(const std::vector<ledger::BatchState>& bottles)
{
    std::vector<std::pair<QString, QString>> choices;
    for (const auto& state : bottles)
        choices.emplace_back(QString::fromStdString(state.id), QString::fromStdString(state.name));
    refill(m_bottle, choices);
}

void DayFilterBar::setPeople(const std::vector<std::string>& people)
{
    std::vector<std::pair<QString, QString>> choices;
    for (const std::string& one : people)
        choices.emplace_back(QString::fromStdString(one), QString::fromStdString(one));
    refill(m_person, choices);
    m_person->setVisible(m_person->count() > 1);
}

std::pair<QDate, QDate> DayFilterBar::dates() const
{
    const QDate firstOfMonth(m_today.year(), m_today.month(), 1);
    switch (static_cast<Span>(m_span->currentIndex())) {
    case Span::All:
        return {};
    case Span::Today:
        return {m_today, m_today};
    case Span::Week:
        return {m_today.addDays(-6), m_today};
    case Span::Month:
        return {firstOfMonth, firstOfMonth.addMonths(1).addDays(-1)};
    case Span::Year:
        return {QDate(m_today.year(), 1, 1), QDate(m_today.year(), 12, 31)};
    case Span::LastYear:
        return {QDate(m_today.year() - 1, 1, 1), QDate(m_today.year() - 1, 12, 31)};
    case Span::Between:
        break;
    }
    // Given the wrong way round, the same days are meant.
    return std::minmax(m_from->date(), m_until->date());
}

store::DayFilter DayFilterBar::filter() const
{
    store::DayFilter filter;
    filter.batch = m_bottle->currentData().toString().toStdString();
    filter.kinds = kindsOf(static_cast<DayGroup>(m_groups->checkedId()));
    filter.person = m_person->currentData().toString().toStdString();
    const auto [first, last] = dates();
    if (first.isValid())
        filter.from = startOf(first);
    if (last.isValid())
        filter.until = startOf(last.addDays(1));
    filter.words = store::dayWords(m_find->text());
    return filter;
}

QString DayFilterBar::words() const
{
    QStringList parts{dayGroupName(static_cast<DayGroup>(m_groups->checkedId()))};
    for (const QComboBox* combo : {m_bottle, m_person}) {
        if (combo->currentIndex() > 0)
            parts << combo->currentText();
    }
    const auto span = static_cast<Span>(m_span->currentIndex());
    if (span == Span::Between)
        parts << tr("%1 to %2", "dates")
                     .arg(m_locale.toString(dates().first, QLocale::ShortFormat),
                          m_locale.toString(dates().second, QLocale::ShortFormat));
    else if (span != Span::All)
        parts << m_span->currentText();
    if (!m_find->text().trimmed().isEmpty())
        parts << tr("“%1”", "words looked for").arg(m_find->text().trimmed());
    return parts.join(QStringLiteral(" · "));
}

void DayFilterBar::setGroup(DayGroup group)
{
    m_groups->button(static_cast<int>(group))->setChecked(true);
}

void DayFilterBar::setBottle(const QString& id, const QString& name)
{
    if (m_bottle->findData(id) < 0)
        m_bottle->addItem(name, id);
    m_bottle->setCurrentIndex(m_bottle->findData(id));
}

void DayFilterBar::setSpan(Span span) { m_span->setCurrentIndex(static_cast<int>(span)); }

void DayFilterBar::reset()
{
    {
        const QSignalBlocker quiet(this);
        m_groups->button(0)->setChecked(true);
        for (QComboBox* combo : {m_bottle, m_person, m_span})
            combo->setCurrentIndex(0);
        m_find->clear();
        m_pause->stop();
    }
    emit changed();
}

void DayFilterBar::showDates()
{
    const bool between = static_cast<Span>(m_span->currentIndex()) == Span::Between;
    m_from->setVisible(between);
    m_until->setVisible(between);
}

void DayFilterBar::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        retranslate();
    QWidget::changeEvent(event);
}

void DayFilterBar::retranslate()
{
    for (int i = 0; i < kDayGroups; ++i) {
        const QString name = dayGroupName(static_cast<DayGroup>(i));
        m_groups->button(i)->setText(name);
        m_groups->button(i)->setAccessibleName(name);
    }
    m_bottle->setItemText(0, tr("All bottles"));
    m_bottle->setAccessibleName(tr("Bottle"));
    m_person->setItemText(0, tr("Anyone"));
    m_person->setAccessibleName(tr("Person"));
    const QStringList spans{tr("All time"),  tr("Today"),     tr("Last 7 days"), tr("This month"),
                            tr("This year"), tr("Last year"), tr("Between…")};
    for (int i = 0; i < spans.size(); ++i)
        m_span->setItemText(i, spans[i]);
    m_span->setAccessibleName(tr("Period"));
    m_from->setAccessibleName(tr("From"));
    m_until->setAccessibleName(tr("Until"));
    m_find->setPlaceholderText(tr("Find…"));
    m_find->setAccessibleName(tr("Find"));
}

} // namespace ullage::app
