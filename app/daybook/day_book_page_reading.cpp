// How the day book comes to what it shows: rows, their number, what there is to choose from, and
// the index that makes words found fast.
#include "app/daybook/day_book_page.h"

#include "app/daybook/day_filter_bar.h"
#include "app/daybook/day_model.h"
#include "app/daybook/looking_strip.h"
#include "app/widgets/empty_state.h"
#include "app/widgets/why_not.h"
#include "app/words/moment_text.h"

#include <QDir>
#include <QElapsedTimer>
#include <QListView>
#include <QPushButton>
#include <QStackedWidget>
#include <QStandardPaths>
#include <QTimer>

#include <utility>

namespace ullage::app
{

namespace
{

constexpr int kBottlesOffered = 500; // older ones are found by their name
constexpr int kWorthAnIndex = 5000;  // entries; fewer are walked through in no time
constexpr int kTellEveryMs = 100;

QString indexFolder()
{
    const QString cache = QStandardPaths::writableLocation(QStandardPaths::CacheLocation);
    return cache.isEmpty() ? QString() : QDir(cache).filePath(QStringLiteral("words"));
}

} // namespace

void DayBookPage::bookOpened()
{
    const QString indexes = indexFolder();
    for (StoreThread* thread : {m_pages.get(), m_slow.get(), m_keeper.get()})
        thread->setBook(m_door.path(), indexes);
    m_indexLeft = false;
    m_model->clear();
    m_totals.reset();
    m_stale = true;
    if (isVisible())
        refresh();
}

void DayBookPage::bookClosing()
{
    ++*m_keeping;
    for (StoreThread* thread : {m_pages.get(), m_slow.get(), m_keeper.get()})
        thread->setBook({});
    m_indexing->rest();
}

QWidget* DayBookPage::firstForKeys() const { return m_list; }

void DayBookPage::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    refresh();
    if (!m_stale && !m_totals && m_model->entriesRead() > 0)
        count();
    keepIndex();
}

// A page that is not seen does no work: what it was at goes on when it is seen again.
void DayBookPage::hideEvent(QHideEvent* event)
{
    QWidget::hideEvent(event);
    ++*m_keeping;
    m_again->stop();
    m_indexing->rest();
    ++*m_counting;
    if (m_model->isWaiting()) {
        m_model->clear();
        m_stale = true;
    }
}

// The book is said to change every minute, and with it nothing but the time: the model looks
// whether the book has grown.
void DayBookPage::refresh()
{
    if (!m_door.isOpen() || !isVisible())
        return;
    m_filter->setToday(localDate(m_door.now()));
    if (m_stale)
        applyFilter();
    else
        m_model->refresh();
}

store::DayFilter DayBookPage::shownFilter() const
{
    store::DayFilter filter = m_filter->filter();
    addMeanings(filter, *m_door.formulary());
    return filter;
}

void DayBookPage::applyFilter()
{
    if (!m_door.isOpen())
        return;
    m_stale = false;
    m_keep = m_list->currentIndex().data(DayModel::IdRole).toString();
    m_totals.reset();
    m_model->setFilter(shownFilter());
    showLooking();
}

void DayBookPage::pageRead(bool anew)
{
    if (!anew)
        return;
    const bool nothing = m_model->entriesRead() == 0;
    m_lists->setCurrentIndex(nothing ? 1 : 0);
    const bool empty = nothing && m_filter->isOpen();
    if (m_stack->currentWidget() != m_statistics)
        m_stack->setCurrentWidget(empty ? static_cast<QWidget*>(m_empty) : m_entries);
    for (QPushButton* button : {m_export, m_print})
        setWhyNot(button, nothing ? tr("Nothing is shown.") : QString());
    int row = -1;
    if (const auto corrected = std::exchange(m_corrected, std::nullopt))
        row = m_model->rowEnteredAfter(corrected->last, corrected->was, corrected->mark);
    if (row < 0)
        row = m_model->rowOf(m_keep);
    if (row < 0)
        row = m_model->rowOfRun(m_keepRun);
    if (row < 0 && !nothing)
        row = 1; // below the first day's heading
    m_list->setCurrentIndex(m_model->index(row));
    showChosen();
    readChoices();
    count();
    keepIndex();
}

// Counting a long book takes a while, and what was counted for another filter helps nobody.
void DayBookPage::count()
{
    const int turn = ++*m_counting;
    if (!m_model->filter().words.empty() && !m_model->mayHaveMore()) {
        m_totals = m_model->totals(); // all of them were found
        showHeader();
        return;
    }
    const auto stop = [thread = m_slow.get(), counting = m_counting, turn] {
        return thread->stopping() || *counting != turn;
    };
    showHeader();
    m_slow->post(
        [=, this, thread = m_slow.get(), filter = m_model->filter()](store::SqlStore& store) {
            const auto totals = store::DayBook(store, thread->index()).count(filter, stop);
            if (!totals || totals->stopped)
                return; // the rows themselves have told of a failure
            QMetaObject::invokeMethod(this, [this, turn, found = *totals] {
                if (*m_counting != turn)
                    return;
                m_totals = found;
                showHeader();
            });
        },
        [](const Error&) {});
}

void DayBookPage::readChoices()
{
    m_pages->post(
        [this](store::SqlStore& store) {
            store::DayBook days(store);
            const auto bottles = days.bottles(kBottlesOffered);
            const auto people = days.people();
            if (!bottles || !people)
                return; // the rows themselves have told of a failure
            QMetaObject::invokeMethod(this, [this, bottles = *bottles, people = *people] {
                m_filter->setBottles(bottles);
                m_filter->setPeople(people);
            });
        },
        [](const Error&) {});
}

// Another program may be at it, or nobody; either way it is only a cache.
void DayBookPage::keepIndex()
{
    if (m_indexLeft || !m_door.isOpen() || !isVisible())
        return;
    const int turn = ++*m_keeping;
    const auto isOn = [thread = m_keeper.get(), keeping = m_keeping, turn] {
        return !thread->stopping() && *keeping == turn;
    };
    const auto tell = [this, turn](const std::function<void()>& what) {
        QMetaObject::invokeMethod(this, [this, turn, what] {
            if (*m_keeping == turn)
                what();
        });
    };
    m_keeper->post(
        [=, this, thread = m_keeper.get()](store::SqlStore& store) {
            const auto entries = store.lastEntry();
            if (!isOn() || !entries || *entries < kWorthAnIndex || thread->indexes().isEmpty())
                return;
            QElapsedTimer told;
            told.start();
            const auto outcome = store::SearchKeeper::catchUp(
                store, thread->indexes(), [&](const store::Progress& so) {
                    if (told.elapsed() >= kTellEveryMs) {
                        told.start();
                        const int percent = static_cast<int>(so.done * 100 / so.all);
                        tell([this, percent] { showIndexing(percent); });
                    }
                    return isOn();
                });
            const bool busy = outcome && *outcome == store::SearchKeeper::Outcome::Busy;
            tell([this, busy] {
                m_indexing->rest();
                if (busy)
                    m_again->start();
            });
        },
        [](const Error&) {}); // the rows themselves tell of it
}

void DayBookPage::showIndexing(int percent)
{
    m_indexing->showProgress(tr("Making an index, so that words are found faster"),
                             tr("Not now", "make an index"), percent);
}

void DayBookPage::leaveIndex()
{
    m_indexLeft = true;
    ++*m_keeping;
    m_indexing->rest();
}

void DayBookPage::showLooking()
{
    const QDate back = m_model->lookedBackTo();
    const QString date = m_wording.locale.toString(back, QLocale::ShortFormat);
    if (m_model->isWaiting() && !m_model->filter().words.empty())
        m_looking->showProgress(back.isValid() ? tr("Searching, back to %1 so far").arg(date)
                                               : tr("Searching"),
                                tr("Stop", "looking for words"));
    else if (m_model->isStopped())
        m_looking->showRest(back.isValid() ? tr("Searched back to %1").arg(date)
                                           : tr("Not searched"),
                            tr("Go on", "looking for words"));
    else
        m_looking->rest();
}

} // namespace ullage::app
