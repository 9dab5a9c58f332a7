#include "app/daybook/day_filter_bar.h"

#include "app/widgets/flow_layout.h"
#include "app/widgets/theme.h"

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

} // namespace

DayFilterBar::DayFilterBar(QWidget* parent)
    : QWidget(parent), m_groups(new QButtonGroup(this)), m_bottle(new QComboBox(this)),
      m_person(new QComboBox(this)),
      m_period(new PeriodBar({PeriodBar::Span::All, PeriodBar::Span::Today, PeriodBar::Span::Week,
                              PeriodBar::Span::Month, PeriodBar::Span::Quarter,
                              PeriodBar::Span::Year, PeriodBar::Span::Between},
                             this)),
      m_find(new QLineEdit(this)), m_pause(new QTimer(this))
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
    for (QComboBox* combo : {m_bottle, m_person}) {
        combo->setFixedHeight(kHeight);
        combo->setMinimumContentsLength(9);
        combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        combo->setMaxVisibleItems(20);
        flow->addWidget(combo);
    }
    m_bottle->addItem(QString(), QString());
    m_person->addItem(QString(), QString());
    m_period->setFixedHeight(kHeight);
    flow->addWidget(m_period);
    m_find->setFixedHeight(kHeight);
    m_find->setMinimumWidth(150);
    m_find->setClearButtonEnabled(true);
    flow->addWidget(m_find);
    flow->setSecondRow(m_bottle);
    m_person->hide();
    m_pause->setSingleShot(true);
    m_pause->setInterval(kPauseMs);

    connect(m_groups, &QButtonGroup::idToggled, this, [this](int, bool on) {
        if (on)
            emit changed();
    });
    for (QComboBox* combo : {m_bottle, m_person})
        connect(combo, &QComboBox::currentIndexChanged, this, &DayFilterBar::changed);
    connect(m_period, &PeriodBar::changed, this, &DayFilterBar::changed);
    connect(m_find, &QLineEdit::textChanged, m_pause, qOverload<>(&QTimer::start));
    connect(m_find, &QLineEdit::returnPressed, this, [this] {
        m_pause->stop();
        emit changed();
    });
    connect(m_pause, &QTimer::timeout, this, &DayFilterBar::changed);
    retranslate();
}

void DayFilterBar::setToday(QDate today) { m_period->setToday(today); }

void DayFilterBar::setLocale(const QLocale& locale) { m_period->setReadingLocale(locale); }

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

store::DayFilter DayFilterBar::filter() const
{
    store::DayFilter filter;
    filter.batch = m_bottle->currentData().toString().toStdString();
    filter.kinds = kindsOf(static_cast<DayGroup>(m_groups->checkedId()));
    filter.person = m_person->currentData().toString().toStdString();
    const ledger::Period period = m_period->period();
    filter.from = period.from;
    filter.until = period.until;
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
    if (m_period->span() != PeriodBar::Span::All)
        parts << m_period->words();
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

void DayFilterBar::reset()
{
    {
        const QSignalBlocker quiet(this);
        m_groups->button(0)->setChecked(true);
        for (QComboBox* combo : {m_bottle, m_person})
            combo->setCurrentIndex(0);
        m_period->setSpan(PeriodBar::Span::All);
        m_find->clear();
        m_pause->stop();
    }
    emit changed();
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
    m_find->setPlaceholderText(tr("Find…"));
    m_find->setAccessibleName(tr("Find"));
}

} // namespace ullage::app
