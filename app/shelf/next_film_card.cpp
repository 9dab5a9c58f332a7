#include "app/shelf/next_film_card.h"

#include "app/shelf/filled_row.h"
#include "app/widgets/factor_rows.h"
#include "app/widgets/figure_label.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/theme.h"
#include "app/widgets/verdict_label.h"
#include "app/widgets/where_from_button.h"
#include "app/widgets/where_from_popover.h"
#include "app/widgets/whole_lines.h"
#include "app/widgets/why_not.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QMenu>
#include <QPushButton>
#include <QResizeEvent>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage::app
{

namespace
{

constexpr int kButtonGap = 5;
constexpr int kTight = 470; // a card lower than this sets its rows closer
constexpr int kTightBeside = 400;
constexpr int kLeast = 330; // one column
constexpr int kLeastBeside = 264;
constexpr int kLeastLines = 3; // of the reasons

QLabel* wrapped(QWidget* parent)
{
    auto* label = new PlainLabel(parent);
    label->setWordWrap(true);
    return label;
}

} // namespace

NextFilmCard::NextFilmCard(BottleActions* actions, QWidget* parent)
    : Card({}, parent), m_actions(actions), m_heading(new PlainLabel(this)),
      m_timeRow(new QWidget(this)), m_time(new FigureLabel(m_timeRow)),
      m_timeDetail(wrapped(m_timeRow)), m_noTime(wrapped(this)), m_factors(new FactorRows(this)),
      m_why(new VerdictLabel(this)), m_reasons(wrapped(this)), m_closing(wrapped(this)),
      m_cost(wrapped(this)), m_more(new QPushButton(this)), m_check(new QPushButton(this)),
      m_restore(new QPushButton(this)), m_ask(new WhereFromButton(this))
{
    m_heading->setFont(Theme::font(TextRole::CardTitle));
    m_heading->setWordWrap(true); // the bottle and its solution whole
    m_heading->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    setTone(m_heading, Tone::Quiet);
    auto* timeLine = new QHBoxLayout(m_timeRow);
    timeLine->setContentsMargins(0, 0, 0, 0);
    timeLine->setSpacing(Space::kGap);
    m_time->setFont(Theme::font(TextRole::Hero));
    m_time->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    setTone(m_timeDetail, Tone::Quiet);
    setTone(m_noTime, Tone::Quiet);
    setTone(m_closing, Tone::Quiet);
    setTone(m_cost, Tone::Quiet);
    timeLine->addWidget(m_time);
    timeLine->addWidget(m_timeDetail, 1);

    m_words = new QWidget;
    auto* wordColumn = new QVBoxLayout(m_words);
    wordColumn->setContentsMargins(0, 0, 4, 0);
    wordColumn->setSpacing(0); // lines on one grid: none is cut where they scroll
    wordColumn->addWidget(m_reasons);
    wordColumn->addWidget(m_closing);
    wordColumn->addWidget(m_cost);
    m_filled = new FilledRow(m_words);
    m_filled->setContentsMargins(0, Space::kTight, 0, 0);
    wordColumn->addWidget(m_filled);
    connect(m_filled, &FilledRow::bottleAsked, this, &NextFilmCard::bottleAsked);
    wordColumn->addStretch();
    m_reasons->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_reasonsArea = new WholeLines(m_words, this);

    auto* buttonRow = new QWidget(this);
    m_buttonRow = buttonRow;
    // Ignored: a row too wide for the card must not widen it, layOutButtons() thins it out.
    buttonRow->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    m_buttons = new QHBoxLayout(buttonRow);
    m_buttons->setContentsMargins(0, 0, 0, 0);
    m_buttons->setSpacing(kButtonGap);
    for (const BottleAction which :
         {BottleAction::Dissolved, BottleAction::OneMore, BottleAction::TopUp, BottleAction::Test,
          BottleAction::Discard})
        m_buttons->addWidget(addActionButton(which));
    m_more->setProperty("menu", true); // room for its arrow
    setButtonLook(m_more, ButtonLook::Quiet);
    auto* menu = new QMenu(m_more);
    for (const BottleAction which :
         {BottleAction::Bench, BottleAction::DrawOff, BottleAction::Decant, BottleAction::Move,
          BottleAction::Measured, BottleAction::Filtered, BottleAction::Dissolved,
          BottleAction::Contaminated, BottleAction::Note, BottleAction::Opened,
          BottleAction::StoodOpen, BottleAction::StoredAt, BottleAction::Films,
          BottleAction::History, BottleAction::ExchangeBaths})
        menu->addAction(m_actions->action(which));
    m_more->setMenu(menu);
    m_buttons->addWidget(m_more);
    m_buttons->addStretch();
    m_ask->setFigures([this] { return m_figures; });
    auto* whyLine = new QHBoxLayout;
    whyLine->addWidget(m_why, 1);
    whyLine->addWidget(m_ask);
    m_timeColumn = new QVBoxLayout;
    m_timeColumn->addWidget(m_timeRow);
    m_timeColumn->addWidget(m_noTime);
    m_timeColumn->addWidget(m_factors);
    m_timeColumn->addStretch();
    m_whyColumn = new QVBoxLayout;
    m_whyColumn->addLayout(whyLine);
    m_whyColumn->addWidget(m_reasonsArea, 1);
    m_columns = new QBoxLayout(QBoxLayout::TopToBottom);
    m_columns->addLayout(m_timeColumn);
    m_columns->addLayout(m_whyColumn, 1);
    body()->addWidget(m_heading);
    body()->addLayout(m_columns, 1);
    body()->addWidget(buttonRow);
    m_mending = new QWidget(this);
    auto* mendingRow = new QHBoxLayout(m_mending);
    mendingRow->setContentsMargins(0, 0, 0, 0);
    mendingRow->setSpacing(kButtonGap);
    for (QPushButton* button : {m_check, m_restore}) {
        setButtonLook(button, ButtonLook::Quiet);
        mendingRow->addWidget(button);
    }
    mendingRow->addStretch();
    connect(m_check, &QPushButton::clicked, this, &NextFilmCard::checkRequested);
    connect(m_restore, &QPushButton::clicked, this, &NextFilmCard::copiesRequested);
    body()->addWidget(m_mending);
    // F1 on the time, its factors or the verdict asks for what stands behind them first.
    for (QWidget* figure : std::initializer_list<QWidget*>{m_time, m_factors, m_why})
        askWhereFrom(figure,
                     [this] { return m_figures.empty() ? Explanation{} : m_figures.front(); });
    retranslate();
    setBottle({});
}

QPushButton* NextFilmCard::addActionButton(BottleAction which)
{
    QAction* action = m_actions->action(which);
    auto* button = new QPushButton(this);
    setButtonLook(button, ButtonLook::Quiet);
    followEntry(button, action);
    m_actionButtons.emplace_back(which, button);
    return button;
}

void NextFilmCard::setBottle(const SelectedBottle& bottle, const std::set<QString>& standing)
{
    m_filled->setBottles(bottle.filled, standing);
    m_heading->setText(bottle.nextTitle);
    setAccessibleName(bottle.nextTitle);
    m_time->setText(bottle.nextTime);
    m_timeDetail->setText(bottle.nextDetail);
    m_timeRow->setVisible(!bottle.nextTime.isEmpty());
    m_noTime->setText(bottle.noTime);
    m_noTime->setVisible(bottle.nextTime.isEmpty() && !bottle.noTime.isEmpty());
    m_factors->setRows(bottle.factors);
    m_factors->setVisible(!bottle.factors.empty());
    m_why->setLook(bottle.verdict);
    m_why->setText(bottle.why);
    m_reasons->setText(bottle.reasons.join(u'\n'));
    m_reasons->setAccessibleName(bottle.reasons.join(u' '));
    m_closing->setText(bottle.closing);
    m_closing->setVisible(!bottle.closing.isEmpty());
    m_cost->setText(bottle.cost);
    m_cost->setVisible(!bottle.cost.isEmpty());
    m_buttonRow->setVisible(!bottle.unread);
    m_mending->setVisible(bottle.unread);
    m_figures = bottle.figures;
    m_ask->refresh();
    orderButtons(bottle.verdict);
}

// What is to be done next stands first: where there is room for one button only, it is that one.
void NextFilmCard::orderButtons(VerdictLook verdict)
{
    const bool resting = verdict == VerdictLook::Resting;
    const bool discardFirst = verdict == VerdictLook::Discard;
    if (resting == m_resting &&
        discardFirst == (m_actionButtons.front().first == BottleAction::Discard))
        return;
    m_resting = resting;
    if (discardFirst != (m_actionButtons.front().first == BottleAction::Discard))
        std::reverse(m_actionButtons.begin(), m_actionButtons.end());
    for (const auto& [which, button] : m_actionButtons)
        m_buttons->removeWidget(button);
    int place = 0;
    for (const auto& [which, button] : m_actionButtons) {
        m_buttons->insertWidget(place, button);
        if (place > 0)
            setTabOrder(m_actionButtons[static_cast<std::size_t>(place) - 1].second, button);
        ++place;
    }
    setTabOrder(m_actionButtons.back().second, m_more);
    layOutButtons();
}

void NextFilmCard::setBeside(bool beside)
{
    m_beside = beside;
    m_columns->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    m_columns->setStretch(0, beside ? 1 : 0);
    m_columns->setSpacing(beside ? Space::kPage : body()->spacing());
}

int NextFilmCard::leastHeight(int width)
{
    constexpr int kSpare = 6; // of the width: a word more or less to a line is none too few
    const int column = (width - 2 * Space::kInset - Space::kPage) / 2 - kSpare;
    const int lines = kLeastLines * m_reasonsArea->fontMetrics().lineSpacing();
    m_reasonsArea->setMinimumHeight(
        m_beside ? std::max(lines, m_words->layout()->totalMinimumHeightForWidth(column)) : lines);
    layout()->activate(); // else the columns within still have the words of the bottle before
    return std::max(m_beside ? kLeastBeside : kLeast, layout()->totalMinimumHeightForWidth(width));
}

void NextFilmCard::resizeEvent(QResizeEvent* event)
{
    Card::resizeEvent(event);
    const bool tight = event->size().height() < (m_beside ? kTightBeside : kTight);
    m_factors->setRowHeight(tight ? 22 : 28);
    QFont hero = Theme::font(TextRole::Hero);
    hero.setPixelSize(tight ? 38 : 48);
    m_time->setFont(hero);
    const int gap = tight ? Space::kTight : Space::kSmall;
    for (QBoxLayout* layout : std::initializer_list<QBoxLayout*>{body(), m_timeColumn, m_whyColumn})
        layout->setSpacing(gap);
    m_columns->setSpacing(m_beside ? Space::kPage : gap);
    layOutButtons();
}

void NextFilmCard::layOutButtons()
{
    const int room = width() - 2 * Space::kInset;
    int used = m_more->sizeHint().width();
    bool fits = true;
    for (const auto& [which, button] : m_actionButtons) {
        const bool wanted = which != BottleAction::Dissolved || m_resting;
        if (wanted) {
            used += kButtonGap + button->sizeHint().width();
            fits = fits && used <= room;
        }
        button->setVisible(wanted && fits);
        QAction* action = m_actions->action(which);
        if (wanted && fits)
            m_more->menu()->removeAction(action);
        else
            m_more->menu()->addAction(action);
    }
}

void NextFilmCard::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        retranslate();
    Card::changeEvent(event);
}

void NextFilmCard::retranslate()
{
    for (const auto& [which, button] : m_actionButtons) {
        const QString text = which == BottleAction::Dissolved ? tr("It is clear now…")
                             : which == BottleAction::OneMore ? tr("+ 1 film")
                             : which == BottleAction::TopUp   ? tr("Top up…")
                             : which == BottleAction::Test    ? tr("Test…")
                                                              : tr("Discard…");
        button->setText(text);
        button->setAccessibleName(
            which == BottleAction::OneMore ? tr("One more film, as the last one") : text);
        if (which == BottleAction::OneMore)
            setButtonTip(button, tr("One more film through the baths of the last one (key +)"));
    }
    m_check->setText(tr("Check the book"));
    m_restore->setText(tr("Restore a copy…"));
    m_more->setText(tr("More"));
    m_more->setAccessibleName(tr("More to do with this bottle"));
    layOutButtons();
}

} // namespace ullage::app
