#include "app/daybook/day_book_page.h"

#include "app/daybook/day_delegate.h"
#include "app/daybook/day_facts.h"
#include "app/daybook/day_filter_bar.h"
#include "app/daybook/day_model.h"
#include "app/daybook/looking_strip.h"
#include "app/widgets/card.h"
#include "app/widgets/edge_fade.h"
#include "app/widgets/empty_state.h"
#include "app/widgets/page_header.h"
#include "app/widgets/prompts.h"
#include "app/widgets/seen_stack.h"
#include "app/widgets/theme.h"
#include "app/words/error_words.h"
#include "app/words/moment_text.h"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QListView>
#include <QPushButton>
#include <QShortcut>
#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>

namespace ullage::app
{

namespace
{

constexpr int kBusyMs = 3000; // until it is asked again whether another window has let go

} // namespace

DayBookPage::DayBookPage(Door& door, QWidget* statistics, QWidget* parent)
    : QWidget(parent), m_door(door), m_wording(door.wording()),
      m_pages(std::make_unique<StoreThread>()), m_slow(std::make_unique<StoreThread>()),
      m_keeper(std::make_unique<StoreThread>()), m_again(new QTimer(this)), m_statistics(statistics)
{
    build();
    connectAll();
    wordAnew();
    if (m_door.isOpen())
        bookOpened();
}

DayBookPage::~DayBookPage()
{
    ++*m_counting;
    ++*m_keeping;
    m_pages.reset();
    m_slow.reset();
    m_keeper.reset();
}

void DayBookPage::build()
{
    m_header = new PageHeader({}, this);
    m_toggle = m_header->addButton({});
    m_export = m_header->addButton({});
    m_print = m_header->addButton({});
    m_add = m_header->addButton({}, true);
    for (QPushButton* button : {m_toggle, m_export, m_print})
        button->setMinimumWidth(108);
    m_stack = new SeenStack(this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(Space::kPage, 18, Space::kPage, 20);
    column->setSpacing(12);
    column->addWidget(m_header);
    column->addWidget(m_stack, 1);

    m_entries = new QWidget(this);
    auto* entries = new QVBoxLayout(m_entries);
    entries->setContentsMargins(0, 0, 0, 0);
    entries->setSpacing(12);
    m_filter = new DayFilterBar(m_entries);
    entries->addWidget(m_filter);
    m_looking = new LookingStrip(m_entries);
    m_indexing = new LookingStrip(m_entries);
    entries->addWidget(m_looking);
    entries->addWidget(m_indexing);
    auto* row = new QHBoxLayout;
    row->setSpacing(Space::kGap);
    m_lists = new SeenStack(m_entries);
    auto* card = new Card({}, m_entries);
    m_list = new QListView(card);
    m_list->setObjectName(QStringLiteral("days"));
    m_list->setStyleSheet(QStringLiteral("QListView { background: transparent; border: none; }"));
    m_model = new DayModel(*m_pages, this);
    m_list->setModel(m_model);
    m_list->setItemDelegate(new DayDelegate(m_list));
    m_list->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    fadeEdges(*m_list, FadeGround::Card, [list = m_list](Qt::Edge edge) {
        constexpr int kOfNoMatter = 6; // less than what is empty around a row's words
        const QRect seen = list->viewport()->rect();
        const bool upper = edge == Qt::TopEdge;
        const QRect there = list->visualRect(
            list->indexAt({seen.center().x(), upper ? seen.top() : seen.bottom()}));
        return upper ? there.top() < seen.top() - kOfNoMatter
                     : there.bottom() > seen.bottom() + kOfNoMatter;
    });
    m_list->setSelectionMode(QAbstractItemView::SingleSelection);
    m_list->setEditTriggers(QAbstractItemView::NoEditTriggers);
    card->body()->addWidget(m_list, 1);
    m_none = new EmptyState({}, {}, m_lists);
    m_all = m_none->addButton({});
    m_lists->addWidget(card);
    m_lists->addWidget(m_none);
    row->addWidget(m_lists, 70);
    m_detail = new DayDetail(m_entries);
    m_detail->setMinimumWidth(300);
    m_detail->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    row->addWidget(m_detail, 32);
    entries->addLayout(row, 1);
    m_stack->addWidget(m_entries);

    m_empty = new EmptyState({}, {}, this);
    m_mixFirst = m_empty->addButton({}, true);
    m_stack->addWidget(m_empty);
    m_stack->addWidget(m_statistics);
}

void DayBookPage::connectAll()
{
    connect(m_toggle, &QPushButton::clicked, this,
            [this] { showStatistics(m_stack->currentWidget() != m_statistics); });
    connect(m_export, &QPushButton::clicked, this, &DayBookPage::exportShown);
    connect(m_print, &QPushButton::clicked, this, &DayBookPage::printShown);
    connect(m_add, &QPushButton::clicked, this, &DayBookPage::addEntry);
    connect(m_mixFirst, &QPushButton::clicked, this, &DayBookPage::mixRequested);
    connect(m_all, &QPushButton::clicked, m_filter, &DayFilterBar::reset);
    connect(m_filter, &DayFilterBar::changed, this, &DayBookPage::applyFilter);
    connect(m_model, &DayModel::read, this, &DayBookPage::pageRead);
    connect(m_model, &DayModel::lookedOn, this, &DayBookPage::showLooking);
    connect(m_looking, &LookingStrip::pressed, this, [this] {
        if (m_model->isWaiting())
            m_model->stop();
        else
            m_model->goOn();
        showLooking();
    });
    connect(m_indexing, &LookingStrip::pressed, this, &DayBookPage::leaveIndex);
    m_again->setSingleShot(true);
    m_again->setInterval(kBusyMs);
    connect(m_again, &QTimer::timeout, this, &DayBookPage::keepIndex);
    connect(m_model, &DayModel::failed, this,
            [this](const Error& error) { fail(tr("The book could not be read"), error); });
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this,
            &DayBookPage::showChosen);
    connect(m_detail, &DayDetail::takeBackRequested, this, &DayBookPage::takeBack);
    connect(m_detail, &DayDetail::correctRequested, this, &DayBookPage::correct);
    connect(m_detail, &DayDetail::correctFilmRequested, this, &DayBookPage::correctFilm);
    connect(m_detail, &DayDetail::bottleRequested, this, &DayBookPage::showBottle);
    connect(m_detail, &DayDetail::filmRequested, this, &DayBookPage::filmRequested);
    connect(m_detail, &DayDetail::shelfRequested, this, &DayBookPage::shelfRequested);
    connect(m_detail, &DayDetail::filmsRequested, this, &DayBookPage::filmsRequested);
    connect(&m_door, &Door::wordingChanged, this, &DayBookPage::wordAnew);
    connect(&m_door, &Door::opened, this, &DayBookPage::bookOpened);
    connect(&m_door, &Door::closing, this, &DayBookPage::bookClosing);
    connect(&m_door, &Door::changed, this, &DayBookPage::refresh);
    const auto shortcut = [this](const QKeySequence& keys, QWidget* within, auto deed) {
        auto* made = new QShortcut(keys, within);
        made->setContext(Qt::WidgetWithChildrenShortcut);
        connect(made, &QShortcut::activated, this, deed);
    };
    shortcut(QKeySequence::Find, this, [this] {
        showStatistics(false);
        m_filter->find()->setFocus();
        m_filter->find()->selectAll();
    });
    shortcut(QKeySequence::Print, m_entries, [this] { printShown(); });
    shortcut(QKeySequence::Delete, m_list, [this] { takeBack(); });
    shortcut(QKeySequence(Qt::Key_F2), m_list, [this] { correct(); });
    m_list->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(m_list, &QWidget::customContextMenuRequested, this, &DayBookPage::showMenu);
}

const store::DayEntry* DayBookPage::chosen() const
{
    return m_model->entry(m_list->currentIndex().row());
}

void DayBookPage::showChosen()
{
    const store::DayEntry* entry = chosen();
    if (!entry || !m_door.isOpen()) {
        m_detail->setNothing(tr("Choose an entry to see what it was about, or to take it back."));
        return;
    }
    m_keep = QString::fromStdString(entry->event.id);
    const auto* run = std::get_if<ledger::Processed>(&entry->event.what);
    m_keepRun = run ? run->run : std::string();
    m_detail->setFacts(dayFacts(*entry, m_door, m_wording));
}

void DayBookPage::showHeader()
{
    const bool statistics = m_stack->currentWidget() == m_statistics;
    m_header->setTitle(statistics ? tr("Statistics") : tr("Day book"));
    m_toggle->setText(statistics ? tr("En&tries") : tr("&Statistics"));
    const bool empty = m_stack->currentWidget() == m_empty; // nothing to write out or to add to
    for (QPushButton* button : {m_export, m_print, m_add})
        button->setVisible(!statistics && !empty);
    QString detail;
    if (!statistics && m_totals && m_totals->entries > 0) {
        const QString entries = m_totals->more
                                    ? tr("more than %Ln entry(s)", nullptr, m_totals->entries)
                                    : tr("%Ln entry(s)", nullptr, m_totals->entries);
        detail = m_filter->isOpen() && m_totals->oldest
                     ? tr("%1 since %2", "entries, year")
                           .arg(entries, QString::number(localDate(*m_totals->oldest).year()))
                     : entries;
    }
    if (!statistics && m_totals && m_totals->damaged)
        detail = tr("not all entries can be read"); // nobody knows how many there are
    m_header->setDetail(detail);
}

void DayBookPage::showStatistics(bool on)
{
    const bool empty = m_model->entriesRead() == 0 && m_filter->isOpen() && !m_model->isWaiting();
    m_stack->setCurrentWidget(on      ? static_cast<QWidget*>(m_statistics)
                              : empty ? static_cast<QWidget*>(m_empty)
                                      : m_entries);
    showHeader();
}

void DayBookPage::showBottle(const QString& id, const QString& name)
{
    showStatistics(false);
    m_filter->setBottle(id, name);
    m_list->setFocus();
}

void DayBookPage::fail(const QString& title, const Error& error)
{
    prompts().fail(this, title, errorSentence(error, m_wording));
}

void DayBookPage::failUnlessStopped(const QString& title, const Error& error)
{
    if (error.code != ErrorCode::Cancelled)
        fail(title, error);
}

void DayBookPage::wordAnew()
{
    m_wording = m_door.wording();
    m_filter->setLocale(m_wording.locale);
    m_model->setWords(
        [this](const store::DayEntry& entry) {
            return dayLine(entry, *m_door.formulary(), m_wording);
        },
        m_wording.locale);
    m_export->setText(tr("E&xport…"));
    m_print->setText(tr("&Print…"));
    m_add->setText(tr("&Add an entry…"));
    m_list->setAccessibleName(tr("Entries, newest first"));
    m_empty->setWords(tr("Nothing has happened yet"),
                      tr("Everything that happens to a bottle is kept here: mixing, film, tests, "
                         "notes, discarding. Mix a batch first; its entry will be the first."));
    m_mixFirst->setText(tr("Mix a batch…"));
    m_none->setWords(tr("Nothing matches"),
                     tr("Remove a filter: the words, the period, the bottle or the kind."));
    m_all->setText(tr("Show everything"));
    showHeader();
    showLooking();
    if (m_door.isOpen())
        showChosen();
}

} // namespace ullage::app
