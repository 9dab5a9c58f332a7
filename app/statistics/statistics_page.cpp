#include "app/statistics/statistics_page.h"

#include "app/statistics/figures_view.h"
#include "app/statistics/statistics_charts.h"
#include "app/statistics/statistics_count.h"
#include "app/statistics/statistics_words.h"
#include "app/widgets/card.h"
#include "app/widgets/empty_state.h"
#include "app/widgets/flow_layout.h"
#include "app/widgets/plain_label.h"
#include "app/widgets/seen_stack.h"
#include "app/widgets/theme.h"
#include "app/widgets/where_from_button.h"
#include "app/words/moment_text.h"
#include "app/words/statistics_tables.h"

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

constexpr int kLateMs = 300; // what was shown of another period stays so long
constexpr int kProgressWidth = 140;
constexpr int kHeight = 34; // of what stands in one row

} // namespace

StatisticsPage::StatisticsPage(Door& door, QWidget* parent)
    : QWidget(parent), m_door(door), m_count(new StatisticsCount(door, this)),
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
    connect(m_count, &StatisticsCount::progressed, this, [this](int done, int all) {
        m_progress->setRange(0, all);
        m_progress->setValue(done);
        m_progress->show();
    });
    connect(m_count, &StatisticsCount::ended, this, [this] {
        m_progress->hide();
        m_late->stop();
    });
    connect(m_count, &StatisticsCount::counted, this, &StatisticsPage::showCounted);
    connect(m_count, &StatisticsCount::unchanged, this, [this] {
        if (m_stack->currentWidget() == m_counting)
            showAll();
        doWhatWaits();
    });
    connect(m_count, &StatisticsCount::failed, this, &StatisticsPage::sayFailed);
    connect(m_count, &StatisticsCount::outgrown, this, &StatisticsPage::refresh);
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
    QSizePolicy asWide = m_period->sizePolicy(); // as its words, whatever room there is
    asWide.setHorizontalPolicy(QSizePolicy::Maximum);
    m_period->setSizePolicy(asWide);
    auto* row = new QHBoxLayout;
    row->setSpacing(Space::kSmall);
    row->addWidget(choices, 1);
    m_ask->setFigures([this] {
        return m_statistics ? statisticsFigures(*m_statistics, m_wording)
                            : std::vector<Explanation>();
    });
    // As high as the choices, of one look, and at the top where those take two rows.
    auto* deeds = new QWidget(this);
    deeds->setFixedHeight(kHeight);
    auto* side = new QHBoxLayout(deeds);
    side->setContentsMargins(0, 0, 0, 0);
    side->setSpacing(Space::kSmall);
    for (QPushButton* button : std::initializer_list<QPushButton*>{m_ask, m_export, m_print}) {
        setButtonLook(button, ButtonLook::Quiet);
        button->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Expanding);
        side->addWidget(button);
    }
    row->addWidget(deeds, 0, Qt::AlignTop);
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
    m_count->takeBook();
    m_statistics.reset();
    m_shownOf.reset();
    sayCounting();
    refresh();
}

void StatisticsPage::bookClosing()
{
    m_count->letGoOfBook();
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

bool StatisticsPage::isCounted() const { return m_statistics && !m_count->underWay() && !m_stale; }

bool StatisticsPage::isOfChosenPeriod() const { return m_shownOf == m_period->period(); }

void StatisticsPage::whenCounted(void (StatisticsPage::*deed)())
{
    if (m_count->underWay() != m_period->period())
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
    if (m_count->underWay()) {
        m_count->giveUp();
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
    begin(m_period->period());
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

void StatisticsPage::begin(const ledger::Period& period)
{
    const bool another = m_count->underWay() != period;
    m_count->begin(period);
    if (!another)
        return;
    m_waits = nullptr;
    m_failed = false;
    // Its menu must not write another period's figures either.
    m_table->exportEntry()->setEnabled(m_shownOf == period);
    if (!m_statistics)
        sayCounting();
    else if (!m_count->hasCounted(period))
        m_late->start();
}

void StatisticsPage::showCounted(const ledger::Statistics& statistics, const ledger::Period& period)
{
    m_statistics = statistics;
    m_shownOf = period;
    m_table->exportEntry()->setEnabled(true);
    showAll();
    doWhatWaits();
}

void StatisticsPage::sayFailed(const Error& error)
{
    m_failed = true;
    m_waits = nullptr;
    m_counting->setWords(tr("Not counted"),
                         error.code == ErrorCode::NotAsEntered
                             ? tr("Something in the book is not as it was entered, and a sum "
                                  "without it would be wrong.")
                             : tr("The book could not be read."));
    showAll();
    emit failed(error);
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
