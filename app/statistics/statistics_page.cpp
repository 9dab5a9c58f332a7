#include "app/statistics/statistics_page.h"

#include "app/statistics/figures_view.h"
#include "app/statistics/statistics_charts.h"
#include "app/statistics/statistics_words.h"
#include "app/widgets/card.h"
#include "app/widgets/empty_state.h"
#include "app/widgets/flow_layout.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/seen_stack.h"
#include "app/widgets/theme.h"
#include "app/widgets/where_from_button.h"
#include "app/words/local_calendar.h"
#include "app/words/moment_text.h"
#include "app/words/statistics_tables.h"
#include "core/ledger/statistics_reader.h"

#include <QAction>
#include <QComboBox>
#include <QHBoxLayout>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QShortcut>
#include <QTimer>
#include <QVBoxLayout>

#include <utility>

namespace ullage::app
{

namespace
{

constexpr int kTellEvery = 50; // batches between two signs of progress
constexpr int kLateMs = 300;   // what was shown of another period stays so long
constexpr int kProgressWidth = 140;
constexpr int kHeight = 34; // of what stands in one row

} // namespace

StatisticsPage::StatisticsPage(Door& door, QWidget* parent)
    : QWidget(parent), m_door(door), m_thread(std::make_unique<StoreThread>()),
      m_late(new QTimer(this)),
      m_period(new PeriodBar(
          {Span::TwelveMonths, Span::Month, Span::Quarter, Span::Year, Span::All, Span::Between},
          this)),
      m_face(new QComboBox(this)), m_progress(new QProgressBar(this)),
      m_ask(new WhereFromButton(this)), m_export(new QPushButton(this)),
      m_print(new QPushButton(this)), m_stack(new SeenStack(this)),
      m_counting(new EmptyState({}, {}, this)), m_empty(new EmptyState({}, {}, this)),
      m_scroll(new QScrollArea(this)), m_charts(new StatisticsCharts),
      m_figures(new Card({}, this)), m_table(new FiguresView(m_figures)),
      m_notes(new PlainLabel(m_figures))
{
    build();
    m_late->setSingleShot(true);
    m_late->setInterval(kLateMs);
    connect(m_late, &QTimer::timeout, this, &StatisticsPage::sayCounting);
    connect(m_period, &PeriodBar::changed, this, &StatisticsPage::refresh);
    connect(m_face, &QComboBox::currentIndexChanged, this, &StatisticsPage::showAll);
    connect(m_export, &QPushButton::clicked, this, &StatisticsPage::exportTable);
    connect(m_print, &QPushButton::clicked, this, &StatisticsPage::print);
    auto* printing = new QShortcut(QKeySequence::Print, this);
    printing->setContext(Qt::WidgetWithChildrenShortcut);
    connect(printing, &QShortcut::activated, this, &StatisticsPage::print);
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

void StatisticsPage::build()
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(Space::kGap);
    auto* choices = new QWidget(this);
    auto* flow = new FlowLayout(choices, Space::kSmall);
    for (int i = 0; i <= static_cast<int>(Face::Ends); ++i)
        m_face->addItem(QString());
    m_progress->setFixedWidth(kProgressWidth);
    m_progress->hide();
    for (QWidget* choice : std::initializer_list<QWidget*>{m_period, m_face, m_progress})
        flow->addWidget(choice);
    auto* row = new QHBoxLayout;
    row->setSpacing(Space::kSmall);
    row->addWidget(choices, 1);
    m_ask->setFigures([this] {
        return m_statistics ? statisticsFigures(*m_statistics, m_wording)
                            : std::vector<Explanation>();
    });
    for (QPushButton* button : std::initializer_list<QPushButton*>{m_ask, m_export, m_print}) {
        button->setFixedHeight(kHeight);
        row->addWidget(button, 0, Qt::AlignTop);
    }
    column->addLayout(row);
    column->addWidget(m_stack, 1);

    m_scroll->setWidgetResizable(true);
    m_scroll->setWidget(m_charts);
    m_charts->setAutoFillBackground(false);
    m_scroll->viewport()->setAutoFillBackground(false);
    m_notes->setWordWrap(true);
    setTone(m_notes, Tone::Quiet);
    m_table->setFrameShape(QFrame::NoFrame);
    m_table->setStyleSheet(QStringLiteral("QTableView { border: none; }"));
    QVBoxLayout* body = m_figures->body();
    body->addWidget(m_table, 1);
    body->addWidget(m_notes);
    m_empty->setObjectName(QStringLiteral("nothingToCount"));
    for (QWidget* page : std::initializer_list<QWidget*>{m_scroll, m_figures, m_empty, m_counting})
        m_stack->addWidget(page);
}

void StatisticsPage::bookOpened()
{
    m_thread->setBook(m_door.path());
    m_basis.reset();
    m_statistics.reset();
    m_shownOf.reset();
    sayCounting();
    refresh();
}

void StatisticsPage::bookClosing()
{
    giveUp();
    m_thread->setBook({});
    m_waits = nullptr;
    m_statistics.reset();
    m_shownOf.reset();
    sayCounting();
}

void StatisticsPage::setFace(Face face) { m_face->setCurrentIndex(static_cast<int>(face)); }

void StatisticsPage::print()
{
    if (!m_statistics || !m_print->isVisibleTo(this))
        return;
    if (isOfChosenPeriod())
        emit printRequested(*m_statistics, m_period->words());
    else
        whenCounted(&StatisticsPage::print);
}

void StatisticsPage::exportTable()
{
    if (!m_statistics || !m_export->isVisibleTo(this))
        return;
    if (isOfChosenPeriod())
        m_table->exportEntry()->trigger();
    else
        whenCounted(&StatisticsPage::exportTable);
}

bool StatisticsPage::isOfChosenPeriod() const { return m_shownOf == m_period->period(); }

void StatisticsPage::whenCounted(void (StatisticsPage::*deed)())
{
    if (m_underWay != m_period->period())
        refresh(); // lets go of what waited for another
    m_waits = deed;
}

void StatisticsPage::doWhatWaits()
{
    if (!isOfChosenPeriod())
        return;
    if (const auto deed = std::exchange(m_waits, nullptr))
        (this->*deed)();
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
    m_waits = nullptr;
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
    m_period->setToday(localDate(m_door.now()));
    const ledger::Period wanted = m_period->period();
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
    m_late->stop();
}

// Nothing is shown in the place of figures that are not there yet.
void StatisticsPage::sayCounting()
{
    m_counting->setWords(tr("Counting…"),
                         tr("Every bottle of the period is read and added up. In a long book that "
                            "takes a moment."));
    m_stack->setCurrentWidget(m_counting);
    for (QWidget* button : std::initializer_list<QWidget*>{m_ask, m_export, m_print})
        button->hide();
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
    m_waits = nullptr;
    m_failed = false;
    m_underWay = period;
    // Its menu must not write another period's figures either.
    m_table->exportEntry()->setEnabled(m_shownOf == period);
    if (!m_statistics)
        sayCounting();
    else if (!m_basis || m_basis->period != period)
        m_late->start();
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
            m_waits = nullptr;
            m_counting->setWords(tr("Not counted"), tr("The book could not be read."));
            showAll();
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
                QMetaObject::invokeMethod(this, [this, generation] {
                    if (!ended(generation))
                        return;
                    if (m_stack->currentWidget() == m_counting)
                        showAll();
                    doWhatWaits();
                });
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
                m_shownOf = basis.period;
                m_table->exportEntry()->setEnabled(true);
                showAll();
                doWhatWaits();
            });
        },
        fail);
}

void StatisticsPage::showAll()
{
    if (!m_statistics || !m_door.isOpen())
        return;
    const ledger::Statistics& so = *m_statistics;
    const bool nothing = so.solutions.empty() && so.months.empty();
    const auto face = static_cast<Face>(m_face->currentIndex());
    const bool charts = face == Face::Charts;
    m_ask->setVisible(!nothing);
    m_print->setVisible(!nothing);
    m_export->setVisible(!nothing && !charts);
    QWidget* shown = m_figures;
    if (nothing)
        shown = m_empty;
    else if (charts)
        shown = m_scroll;
    m_stack->setCurrentWidget(shown);
    m_counting->setWords({}, {}); // what is not seen any more is not worded anew either
    if (nothing)
        sayNothing();
    else if (charts)
        m_charts->showStatistics(so, *m_door.formulary(), m_wording);
    else
        showTable();
}

void StatisticsPage::sayNothing()
{
    const auto span = m_period->span();
    if (span == PeriodBar::Span::All || span == PeriodBar::Span::TwelveMonths)
        m_empty->setWords(tr("Nothing to count yet"),
                          tr("Once film has gone through a bottle, or a bottle has ended, this "
                             "page shows films by month, solution and person, how long bottles "
                             "lasted, why they ended and what a film cost. Log a run first, or "
                             "choose another period above."));
    else
        m_empty->setWords((span == PeriodBar::Span::Between ? tr("Nothing from %1", "day to day")
                                                            : tr("Nothing in %1", "period"))
                              .arg(m_period->words()),
                          tr("No film went through a bottle, no bottle was mixed or ended and "
                             "nothing was bought. Choose another period above."));
}

void StatisticsPage::showTable()
{
    const ledger::Statistics& so = *m_statistics;
    const auto& formulary = *m_door.formulary();
    FiguresTable table;
    switch (static_cast<Face>(m_face->currentIndex())) {
    case Face::Charts:
    case Face::Months:
        table = monthTable(so, m_wording);
        break;
    case Face::Solutions:
        table = solutionTable(so, formulary, m_wording);
        break;
    case Face::People:
        table = personTable(so, m_wording);
        break;
    case Face::Ends:
        table = endTable(so, m_wording);
        break;
    }
    m_table->setTable(table);
    QStringList notes = statisticsNotes(so, m_wording);
    if (table.rows.empty())
        notes.push_front(table.none);
    m_notes->setText(notes.join(u'\n'));
}

void StatisticsPage::wordAnew()
{
    m_wording = m_door.wording();
    m_period->setReadingLocale(m_wording.locale);
    const QStringList faces{tr("Charts"), tr("Month by month"), tr("By solution"), tr("By person"),
                            tr("Why bottles ended")};
    for (int i = 0; i < faces.size(); ++i)
        m_face->setItemText(i, faces[i]);
    m_face->setAccessibleName(tr("What is shown"));
    m_export->setText(tr("E&xport…"));
    m_export->setAccessibleName(tr("Export table"));
    m_print->setText(tr("&Print…"));
    m_print->setAccessibleName(tr("Print the statistics"));
    m_progress->setAccessibleName(tr("Counting"));
    if (m_statistics)
        showAll();
    else if (!m_failed)
        sayCounting();
}

} // namespace ullage::app
