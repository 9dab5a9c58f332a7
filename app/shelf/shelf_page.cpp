#include "app/shelf/shelf_page.h"

#include "app/charts/chart_view.h"
#include "app/shelf/next_film_card.h"
#include "app/shelf/shelf_view.h"
#include "app/widgets/card.h"
#include "app/widgets/done_line.h"
#include "app/widgets/empty_state.h"
#include "app/widgets/page_header.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/seen_stack.h"
#include "app/widgets/theme.h"
#include "app/widgets/why_not.h"

#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QMenu>
#include <QPushButton>
#include <QSplitter>
#include <QTabBar>
#include <QVBoxLayout>

#include <algorithm>
#include <array>
#include <numeric>
#include <set>
#include <utility>

namespace ullage::app
{

namespace
{

constexpr int kRoomForThree = 1080; // cards beside one another
constexpr int kChartBelow = 330;
constexpr int kLowWindow = 800;   // bottles with their words below leave no room in it for deeds
constexpr int kLowestCards = 332; // that bottles in rows make room for
constexpr int kGoodCards = 370;   // that taller bottles leave them
constexpr int kEasyCards = 470;   // in which all that is said of a bottle has room
constexpr std::array kShares{37, 33, 31}; // of the width: what is next, what is left, each film

} // namespace

/// A card with a chart, or with a sentence where there is nothing to draw.
class ShelfPage::ChartCard : public Card
{
public:
    explicit ChartCard(QWidget* parent)
        : Card({}, parent), m_chart(makeChartView(this)), m_none(new PlainLabel(this)),
          m_words(new PlainLabel(this))
    {
        m_none->setWordWrap(true);
        m_none->setAlignment(Qt::AlignCenter);
        setTone(m_none, Tone::Quiet);
        body()->addWidget(m_chart, 1);
        body()->addWidget(m_none, 1);
        m_words->setWordWrap(true);
        m_words->setFont(Theme::font(TextRole::Small));
        body()->addWidget(m_words);
        setChart(std::nullopt, {}, {});
    }

    /// A second chart for the same card, with a switch between the two and words under it or, for
    /// a face that is there without a chart, in place of it.
    void setOther(const std::optional<ChartSpec>& other, bool shown, const QString& firstName,
                  const QString& otherName, const QStringList& words)
    {
        m_other = other;
        m_otherName = otherName;
        m_words->setText(words.join(u'\n'));
        if (!m_switch) {
            m_switch = new QTabBar(this);
            m_switch->setDrawBase(false);
            m_switch->setExpanding(false);
            m_switch->addTab(firstName);
            m_switch->addTab(otherName);
            body()->insertWidget(0, m_switch);
            QObject::connect(m_switch, &QTabBar::currentChanged, this, [this] { showChosen(); });
        }
        m_switch->setAccessibleName(ShelfPage::tr("What the chart shows"));
        m_switch->setTabText(0, firstName);
        m_switch->setTabText(1, otherName);
        m_switch->setVisible(shown);
        m_hasOther = shown;
        showChosen();
    }

    void setChart(const std::optional<ChartSpec>& chart, const QString& title, const QString& none)
    {
        m_first = chart;
        m_title = title;
        m_sentence = none;
        showChosen();
    }

private:
    void showChosen()
    {
        const bool other = m_hasOther && m_switch->currentIndex() == 1;
        const std::optional<ChartSpec>& chart = other ? m_other : m_first;
        m_words->setVisible(other && m_other && !m_words->text().isEmpty());
        // Where there is a switch it names the chart, and stands in the heading's place.
        const QString heading = chart ? chart->title : other ? m_otherName : m_title;
        setTitle(m_hasOther ? QString() : heading);
        setAccessibleName(heading);
        m_none->setText(other ? m_words->text() : m_sentence);
        m_none->setVisible(!chart);
        m_chart->setVisible(chart.has_value());
        if (chart)
            m_chart->setChart(*chart);
    }

    ChartView* m_chart;
    QLabel* m_none;
    QLabel* m_words;
    QTabBar* m_switch = nullptr;
    std::optional<ChartSpec> m_first;
    std::optional<ChartSpec> m_other;
    QString m_title;
    QString m_otherName;
    QString m_sentence;
    bool m_hasOther = false;
};

ShelfPage::ShelfPage(QWidget* parent)
    : QWidget(parent), m_model(new ShelfModel(this)), m_actions(new BottleActions(this)),
      m_header(new PageHeader({}, this)), m_done(new DoneLine(this)),
      m_run(m_header->addButton({})), m_plan(m_header->addButton({})),
      m_mix(m_header->addButton({}, true)), m_stack(new SeenStack(this)),
      m_empty(new EmptyState({}, {}, this)), m_mixFirst(m_empty->addButton({}, true)),
      m_enterFirst(m_empty->addButton({}, false)), m_demoFirst(m_empty->addButton({}, false)),
      m_splitter(new QSplitter(Qt::Vertical, this)), m_view(new ShelfView(this))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 18, 0, 20);
    column->setSpacing(12);
    auto* headerRow = new QHBoxLayout;
    headerRow->setContentsMargins(Space::kPage, 0, Space::kPage, 0);
    headerRow->addWidget(m_header);
    column->addLayout(headerRow);
    m_header->setInstead(m_done);
    connect(m_done, &DoneLine::undoRequested, this, &ShelfPage::undoRequested);
    column->addWidget(m_stack, 1);

    m_cards = new QWidget(this);
    m_grid = new QGridLayout(m_cards);
    m_grid->setContentsMargins(Space::kPage, 2, Space::kPage, 0);
    m_grid->setSpacing(Space::kGap);
    m_next = new NextFilmCard(m_actions, m_cards);
    m_left = new ChartCard(m_cards);
    m_perFilm = new ChartCard(m_cards);
    m_next->setMinimumWidth(290);
    m_left->setMinimumWidth(230);
    m_perFilm->setMinimumWidth(200);
    for (Card* card :
         {static_cast<Card*>(m_next), static_cast<Card*>(m_left), static_cast<Card*>(m_perFilm)})
        card->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored);

    auto* shelf = new QWidget(this);
    auto* shelfRow = new QHBoxLayout(shelf);
    shelfRow->setContentsMargins(Space::kPage, 0, Space::kPage - 12, 0);
    shelfRow->addWidget(m_view);
    m_films = new QPushButton(m_perFilm);
    setButtonLook(m_films, ButtonLook::Quiet);
    m_perFilm->body()->addWidget(m_films, 0, Qt::AlignLeft);
    QAction* films = m_actions->action(BottleAction::Films);
    connect(m_films, &QPushButton::clicked, films, &QAction::trigger);
    connect(films, &QAction::changed, m_films,
            [this, films] { m_films->setVisible(films->isEnabled()); });
    m_splitter->addWidget(shelf);
    m_splitter->addWidget(m_cards);
    m_splitter->setChildrenCollapsible(false);
    m_splitter->setHandleWidth(10);
    m_splitter->setStretchFactor(0, 40);
    m_splitter->setStretchFactor(1, 60);
    m_splitter->installEventFilter(this);
    connect(m_splitter, &QSplitter::splitterMoved, this, [this] { m_splitByHand = true; });
    m_stack->addWidget(m_splitter);
    m_stack->addWidget(m_empty);

    m_view->setShelfModel(m_model);
    m_view->addAction(m_actions->action(BottleAction::OneMore)); // its key is the shelf's
    connect(m_view, &ShelfView::batchSelected, this, &ShelfPage::bottleSelected);
    connect(m_view, &ShelfView::batchActivated, this, [this](const QString& id) {
        if (m_actions->action(BottleAction::RunFilm)->isEnabled())
            emit actionRequested(BottleAction::RunFilm, id);
    });
    connect(m_view, &ShelfView::menuRequested, this, [this](const QString&, const QPoint& at) {
        QMenu menu(this);
        m_actions->fill(menu);
        menu.exec(at);
    });
    connect(m_actions, &BottleActions::requested, this, &ShelfPage::actionRequested);
    connect(m_next, &NextFilmCard::checkRequested, this, &ShelfPage::checkRequested);
    connect(m_next, &NextFilmCard::copiesRequested, this, &ShelfPage::copiesRequested);
    connect(m_next, &NextFilmCard::bottleAsked, this, &ShelfPage::selectBottle);
    connect(m_run, &QPushButton::clicked, this,
            [this] { emit actionRequested(BottleAction::RunFilm, currentBottle()); });
    followEntry(m_plan, m_actions->action(BottleAction::Bench));
    connect(m_mix, &QPushButton::clicked, this, &ShelfPage::mixRequested);
    connect(m_mixFirst, &QPushButton::clicked, this, &ShelfPage::mixRequested);
    connect(m_enterFirst, &QPushButton::clicked, this, &ShelfPage::enterRequested);
    connect(m_demoFirst, &QPushButton::clicked, this, &ShelfPage::demoRequested);
    retranslate();
    setBottles({});
    placeCards();
}

void ShelfPage::tellDone(const QString& text, const QString& undo) { m_done->tell(text, undo); }

void ShelfPage::setSummary(const QString& summary) { m_header->setDetail(summary); }

void ShelfPage::setBottles(std::vector<BottleView> bottles)
{
    const bool none = bottles.empty();
    const bool first = !none && m_model->bottles().empty();
    m_stack->setCurrentWidget(none ? static_cast<QWidget*>(m_empty) : m_splitter);
    m_run->setEnabled(!none);
    m_mix->setVisible(!none); // the empty shelf has the same button where the eye is
    m_run->setVisible(!none);
    m_plan->setVisible(!none);
    if (none) {
        setSelected({});
        m_mixFirst->setFocus();
    }
    m_model->setBottles(std::move(bottles));
    shareHeight();
    if (first)
        m_view->setFocus();
}

void ShelfPage::setSelected(const SelectedBottle& bottle)
{
    m_selected = bottle;
    m_actions->setBottle(bottle.id, bottle.refused);
    std::set<QString> standing;
    for (const BottleView& view : m_model->bottles())
        standing.insert(view.id);
    m_next->setBottle(bottle, standing);
    m_left->setChart(bottle.left, tr("What is left, over time"), bottle.noLeft);
    m_left->setOther(bottle.air, bottle.air.has_value(), tr("What is left"), tr("Air"),
                     bottle.help);
    m_perFilm->setChart(bottle.perFilm, bottle.perFilmTitle, bottle.noPerFilm);
    m_perFilm->setOther(bottle.strips, bottle.hasStrips, bottle.perFilmTitle, tr("Control strips"),
                        bottle.stripWords);
    giveRoom();
}

void ShelfPage::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    placeCards();
}

// Side by side where the charts can be read there; else what is next above them, as wide as both,
// and the page scrolls.
void ShelfPage::placeCards()
{
    const bool wide = width() >= kRoomForThree;
    if (m_wide != wide) {
        m_wide = wide;
        m_next->setBeside(!wide);
        for (QWidget* card : {static_cast<QWidget*>(m_next), static_cast<QWidget*>(m_left),
                              static_cast<QWidget*>(m_perFilm)})
            m_grid->removeWidget(card);
        m_grid->addWidget(m_next, 0, 0, 1, wide ? 1 : 2);
        m_grid->addWidget(m_left, wide ? 0 : 1, wide ? 1 : 0);
        m_grid->addWidget(m_perFilm, wide ? 0 : 1, wide ? 2 : 1);
        m_grid->setRowStretch(0, wide ? 1 : 0);
        m_grid->setRowStretch(1, wide ? 0 : 1);
        for (QWidget* chart : {static_cast<QWidget*>(m_left), static_cast<QWidget*>(m_perFilm)})
            chart->setMinimumHeight(wide ? 0 : kChartBelow);
    }
    const auto shares = wide ? kShares : std::array{1, 1, 0};
    for (int column = 0; column < 3; ++column)
        m_grid->setColumnStretch(column, shares[static_cast<std::size_t>(column)]);
    m_view->setLow(!wide && window()->height() < kLowWindow);
    giveRoom();
}

// To the card whose height goes by its words.
void ShelfPage::giveRoom()
{
    const int all = width() - 2 * Space::kPage;
    const int share =
        (all - 2 * Space::kGap) * kShares[0] / std::accumulate(kShares.begin(), kShares.end(), 0);
    m_next->setMinimumHeight(m_next->leastHeight(m_wide == true ? share : all));
}

QString ShelfPage::currentBottle() const { return m_view->currentBatch(); }

bool ShelfPage::selectBottle(const QString& id) { return m_view->selectBatch(id); }

// No higher than the bottles there are can use; many may push the cards down to what those need.
void ShelfPage::shareHeight()
{
    const int all = m_splitter->height() - m_splitter->handleWidth();
    const int cards = std::max(m_cards->minimumSizeHint().height(), kLowestCards);
    const int width = m_splitter->width() - 2 * Space::kPage;
    m_view->chooseForm({width, all - std::max(cards, kGoodCards)});
    if (m_splitByHand)
        return;
    // As many bottles are seen as can be; being tall they leave to the words below.
    const int easy = all - std::max(cards, kEasyCards);
    const int most = m_view->isCompact() ? easy : std::max(easy, all * 4 / 9);
    const int used = std::max(m_view->usedOf({width, most}), m_view->leastOf({width, all - cards}));
    m_splitter->setSizes({used, all - used});
}

QByteArray ShelfPage::split() const
{
    return m_splitByHand ? m_splitter->saveState() : QByteArray();
}

void ShelfPage::restoreSplit(const QByteArray& state)
{
    m_splitByHand = m_splitter->restoreState(state);
}

bool ShelfPage::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_splitter && event->type() == QEvent::Resize)
        shareHeight();
    return QWidget::eventFilter(watched, event);
}

void ShelfPage::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        retranslate();
    QWidget::changeEvent(event);
}

void ShelfPage::retranslate()
{
    m_header->setTitle(tr("Shelf"));
    m_run->setText(tr("Log a run…"));
    m_plan->setText(tr("Plan a run…"));
    m_mix->setText(tr("Mix a batch…"));
    m_mixFirst->setText(tr("Mix a batch…"));
    m_enterFirst->setText(tr("Enter a bottle…"));
    m_demoFirst->setText(tr("Look around in a demo"));
    setPlainToolTip(m_demoFirst, tr("A year of invented work, in a window of its own; your book "
                                    "stays as it is."));
    m_empty->setWords(
        tr("No bottle stands here yet"),
        tr("Mix your first developer or fixer, or enter a bottle you have already. From then on "
           "the shelf shows how much is in it, what it has done, how long the next film takes and "
           "when it must go."));
    m_view->setAccessibleName(tr("Bottles in use"));
    m_films->setText(tr("Films that went through it…"));
    m_actions->retranslate();
    setSelected(SelectedBottle(m_selected));
}

} // namespace ullage::app
