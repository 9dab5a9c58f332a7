#include "app/statistics/statistics_page.h"

#include "app/charts/chart.h"
#include "app/charts/chart_view.h"
#include "app/statistics/statistics_words.h"
#include "app/widgets/card.h"
#include "app/widgets/empty_state.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/seen_stack.h"
#include "app/widgets/theme.h"
#include "app/widgets/where_from_button.h"
#include "app/words/local_calendar.h"
#include "app/words/moment_text.h"
#include "core/ledger/statistics_reader.h"

#include <QComboBox>
#include <QGridLayout>
#include <QProgressBar>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace ullage::app
{

namespace
{

constexpr int kTellEvery = 50; // batches between two signs of progress

} // namespace

StatisticsPage::StatisticsPage(Door& door, QWidget* parent)
    : QWidget(parent), m_door(door), m_thread(std::make_unique<StoreThread>()),
      m_span(new QComboBox(this)), m_progress(new QProgressBar(this)),
      m_ask(new WhereFromButton(this)), m_stack(new SeenStack(this)),
      m_empty(new EmptyState({}, {}, this)), m_filmsCard(new Card({}, this)),
      m_films(makeChartView(m_filmsCard)), m_summary(new PlainLabel(m_filmsCard))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Space::kGap);
    auto* row = new QHBoxLayout;
    row->setSpacing(Space::kGap);
    for (int i = 0; i <= static_cast<int>(Span::All); ++i)
        m_span->addItem(QString());
    row->addWidget(m_span);
    m_progress->setFixedWidth(180);
    m_progress->hide();
    row->addWidget(m_progress);
    row->addStretch(1);
    m_ask->setFigures([this] {
        return m_statistics ? statisticsFigures(*m_statistics, m_wording)
                            : std::vector<Explanation>();
    });
    row->addWidget(m_ask);
    column->addLayout(row);
    column->addWidget(m_stack, 1);

    auto* page = new QWidget;
    page->setAutoFillBackground(false);
    auto* grid = new QGridLayout(page);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(Space::kGap);
    m_films->setMinimumHeight(210);
    setTone(m_summary, Tone::Quiet);
    m_filmsCard->body()->addWidget(m_films, 1);
    m_filmsCard->body()->addWidget(m_summary);
    m_solutions = addBars();
    m_lives = addBars();
    m_ends = addBars();
    m_costs = addBars();
    grid->addWidget(m_filmsCard, 0, 0, 1, 2);
    grid->addWidget(m_solutions.card, 1, 0);
    grid->addWidget(m_lives.card, 1, 1);
    grid->addWidget(m_ends.card, 2, 0);
    grid->addWidget(m_costs.card, 2, 1);
    grid->setColumnStretch(0, 1);
    grid->setColumnStretch(1, 1);
    grid->setRowStretch(0, 1);
    auto* scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setWidget(page);
    page->setAutoFillBackground(false);
    scroll->viewport()->setAutoFillBackground(false);
    m_stack->addWidget(scroll);
    m_stack->addWidget(m_empty);
    connect(m_span, &QComboBox::currentIndexChanged, this, [this] { refresh(); });
    m_ask->hide(); // until there is something to ask about
    connect(&m_door, &Door::wordingChanged, this, &StatisticsPage::wordAnew);
    connect(&m_door, &Door::opened, this, &StatisticsPage::bookOpened);
    connect(&m_door, &Door::closing, this, &StatisticsPage::bookClosing);
    connect(&m_door, &Door::changed, this, [this] {
        if (!m_failed)
            refresh();
    });
    wordAnew();
    if (m_door.isOpen())
        bookOpened();
}

StatisticsPage::~StatisticsPage()
{
    ++*m_generation;
    m_thread.reset();
}

void StatisticsPage::bookOpened()
{
    m_thread->setBook(m_door.path());
    m_basis.reset();
    refresh();
}

void StatisticsPage::bookClosing()
{
    giveUp();
    m_thread->setBook({});
}

StatisticsPage::Bars StatisticsPage::addBars()
{
    Bars bars{new Card({}, this), nullptr, nullptr};
    bars.rows = new BarRows(bars.card);
    bars.none = new PlainLabel(bars.card);
    bars.none->setWordWrap(true);
    setTone(bars.none, Tone::Quiet);
    bars.card->body()->addWidget(bars.rows);
    bars.card->body()->addWidget(bars.none);
    bars.card->body()->addStretch(1);
    return bars;
}

void StatisticsPage::setSpan(Span span) { m_span->setCurrentIndex(static_cast<int>(span)); }

ledger::Period StatisticsPage::period() const
{
    const QDate today = localDate(m_door.now());
    const QDate thisMonth(today.year(), today.month(), 1);
    const QDate thisYear(today.year(), 1, 1);
    switch (static_cast<Span>(m_span->currentIndex())) {
    case Span::TwelveMonths:
        return periodOf(thisMonth.addMonths(-11), {});
    case Span::Year:
        return periodOf(thisYear, {});
    case Span::LastYear:
        return periodOf(thisYear.addYears(-1), thisYear);
    case Span::All:
        break;
    }
    return {};
}

void StatisticsPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    if (m_stale)
        refresh();
}

// A page that is not seen does no work.
void StatisticsPage::hideEvent(QHideEvent* event)
{
    QWidget::hideEvent(event);
    if (m_underWay) {
        giveUp();
        m_stale = true;
    }
}

// The book is said to change every minute, and with it nothing but the time: what is under way goes
// on, and whether the book has grown is looked at on the thread.
void StatisticsPage::refresh()
{
    m_stale = !isVisible();
    if (m_stale || !m_door.isOpen())
        return;
    const ledger::Period wanted = period();
    if (m_underWay == wanted)
        m_again = true;
    else
        begin(wanted);
}

void StatisticsPage::giveUp()
{
    ++*m_generation;
    m_underWay.reset();
    m_again = false;
    m_progress->hide();
}

bool StatisticsPage::ended(int generation)
{
    if (*m_generation != generation)
        return false;
    const bool again = m_again;
    giveUp();
    if (again)
        QMetaObject::invokeMethod(this, &StatisticsPage::refresh, Qt::QueuedConnection);
    return true;
}

void StatisticsPage::begin(const ledger::Period& period)
{
    giveUp();
    m_failed = false;
    m_underWay = period;
    const int generation = *m_generation;
    const auto current = m_generation;
    ledger::StatisticsRequest request;
    request.period = period;
    request.now = m_door.now();
    request.calendar = localCalendar();
    request.progress = [this, generation, current, thread = m_thread.get()](int done, int all) {
        if (thread->stopping() || *current != generation)
            return false;
        if (done % kTellEvery == 0)
            QMetaObject::invokeMethod(this, [this, generation, current, done, all] {
                if (*current != generation)
                    return;
                m_progress->setRange(0, all);
                m_progress->setValue(done);
                m_progress->show();
            });
        return true;
    };
    const auto fail = [this, generation](const Error& error) {
        QMetaObject::invokeMethod(this, [this, generation, error] {
            if (!ended(generation))
                return;
            m_failed = true;
            emit failed(error);
        });
    };
    m_thread->post(
        [=, this, known = m_basis](store::SqlStore& store) {
            if (*current != generation)
                return;
            const auto last = store.lastEntry();
            if (!last)
                return fail(last.error());
            const Basis basis{*last, period};
            if (known == basis) {
                QMetaObject::invokeMethod(this, [this, generation] { ended(generation); });
                return;
            }
            const auto read = ledger::readStatistics(store, request);
            if (!read)
                return fail(read.error());
            if (!*read)
                return; // stopped: nobody waits for it
            QMetaObject::invokeMethod(this, [this, generation, basis, found = *read] {
                const bool again = m_again;
                if (!ended(generation))
                    return;
                // What was entered meanwhile may be counted as an entry and yet lie after the
                // moment that was asked about.
                m_basis = again ? std::nullopt : std::optional(basis);
                m_statistics = found;
                showAll();
            });
        },
        fail);
}

void StatisticsPage::showBars(const Bars& bars, const QString& title,
                              const std::vector<BarRow>& rows, const QString& none)
{
    bars.card->setTitle(title);
    bars.rows->setRows(rows);
    bars.rows->setVisible(!rows.empty());
    bars.none->setText(none);
    bars.none->setVisible(rows.empty());
}

void StatisticsPage::showAll()
{
    if (!m_statistics || !m_door.isOpen())
        return;
    const auto& formulary = *m_door.formulary();
    const ledger::Statistics& so = *m_statistics;
    const bool nothing = so.solutions.empty();
    m_stack->setCurrentIndex(nothing ? 1 : 0);
    m_ask->setVisible(!nothing);
    if (nothing)
        return;
    const ChartSpec films = filmsChart(so, m_wording);
    m_filmsCard->setTitle(films.title);
    m_films->setChart(films);
    m_films->setVisible(!films.categories.isEmpty());
    m_summary->setText(films.categories.isEmpty() ? tr("No film was developed in this period.")
                                                  : films.summary);
    showBars(m_solutions, tr("Films by solution"), filmRows(so, formulary, m_wording),
             tr("No film in this period."));
    showBars(m_lives, tr("How long bottles lasted, from mixing to their end"),
             lifeRows(so, formulary, m_wording), tr("No bottle ended in this period."));
    showBars(m_ends, tr("Why bottles ended"), endRows(so, m_wording),
             tr("No bottle ended in this period."));
    showBars(m_costs, tr("Chemistry for one film"), costRows(so, formulary, m_wording),
             tr("Not known: of no bottle that did film and ended in this period is it known what "
                "all that went in cost."));
}

void StatisticsPage::wordAnew()
{
    m_wording = m_door.wording();
    const QStringList spans{tr("Last 12 months"), tr("This year"), tr("Last year"), tr("All time")};
    for (int i = 0; i < spans.size(); ++i)
        m_span->setItemText(i, spans[i]);
    m_span->setAccessibleName(tr("Period"));
    m_progress->setAccessibleName(tr("Calculating"));
    m_empty->setWords(tr("Nothing to count yet"),
                      tr("Once film has gone through a bottle, or a bottle has ended, this page "
                         "shows films by month and solution, how long bottles lasted, why they "
                         "ended and what a film cost. Try a longer period, or log a run first."));
    showAll();
}

} // namespace ullage::app
