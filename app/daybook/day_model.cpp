#include "app/daybook/day_model.h"

#include "app/words/moment_text.h"

#include <algorithm>
#include <utility>

namespace ullage::app
{

struct DayModel::Answer {
    store::DayPage page;
    std::int64_t lastEntry = 0;
    bool same = false; // the book has not grown
    bool done = false; // the last part of the page
};

DayModel::DayModel(StoreThread& thread, QObject* parent)
    : QAbstractListModel(parent), m_thread(thread)
{
}

void DayModel::setWords(std::function<DayLine(const store::DayEntry&)> words, const QLocale& locale)
{
    m_words = std::move(words);
    m_locale = locale;
    if (!m_rows.empty())
        emit dataChanged(index(0), index(rowCount() - 1));
}

void DayModel::setFilter(const store::DayFilter& filter)
{
    m_filter = filter;
    m_later = false;
    m_shown = true;
    ask({}, kPage, -1);
}

void DayModel::refresh()
{
    if (!m_shown)
        return;
    if (!m_filter.words.empty() && (m_waiting || m_stopped)) {
        m_later = m_waiting; // what takes a while is not begun again each time somebody writes
        return;
    }
    // What is on its way was asked for before the change; the answer to this comes after it.
    ask({}, std::max(kPage, entriesRead()), m_waiting ? -1 : m_lastEntry);
}

void DayModel::stop()
{
    if (!m_waiting)
        return;
    ++*m_generation;
    m_waiting = m_more = false;
    m_stopped = true;
    if (std::exchange(m_anew, false))
        emit read(true);
    emit lookedOn();
}

void DayModel::goOn()
{
    if (m_stopped)
        ask(m_last, kPage, -1);
}

QDate DayModel::lookedBackTo() const
{
    if (m_filter.words.empty() || !m_last || !(m_waiting || m_stopped || m_more))
        return {};
    return localDate(chemistry::Instant(std::chrono::milliseconds(m_last->atMs)));
}

void DayModel::clear()
{
    ++*m_generation;
    m_shown = m_more = m_waiting = m_stopped = m_anew = false;
    m_last.reset();
    m_lastEntry = -1;
    beginResetModel();
    m_entries.clear();
    m_rows.clear();
    endResetModel();
}

// Whoever asks next is answered instead: what was asked before gives up. Looking for words may take
// several goes for one page; each is shown when it comes, but for a refresh, which replaces what is
// shown all at once.
void DayModel::ask(const std::optional<store::DayKey>& after, int limit, std::int64_t unless)
{
    const int generation = ++*m_generation;
    const bool atOnce = unless >= 0;
    m_waiting = true;
    m_stopped = false;
    m_anew = !after;
    const auto stop = [thread = &m_thread, current = m_generation, generation] {
        return thread->stopping() || *current != generation;
    };
    const auto fail = [this, generation](const Error& error) {
        QMetaObject::invokeMethod(this, [this, generation, error] {
            if (*m_generation != generation)
                return;
            m_waiting = false;
            emit failed(error);
        });
    };
    const auto hand = [this, generation](const Answer& answer) {
        QMetaObject::invokeMethod(this, [this, generation, answer] { take(generation, answer); });
    };
    m_thread.post(
        [=, this, filter = m_filter](store::SqlStore& store) {
            if (stop())
                return;
            const auto last = store.lastEntry();
            if (!last)
                return fail(last.error());
            Answer answer;
            answer.lastEntry = *last;
            answer.same = answer.done = unless == *last;
            answer.page.last = after;
            store::DayBook days(store, filter.words.empty() ? nullptr : m_thread.index());
            int left = limit;
            while (!answer.done) {
                auto page = days.page(filter, answer.page.last, left, stop);
                if (!page)
                    return fail(page.error());
                if (page->stopped)
                    return;
                left -= static_cast<int>(page->entries.size());
                answer.done = left <= 0 || !page->more;
                answer.page.more = page->more;
                answer.page.last = page->last;
                std::move(page->entries.begin(), page->entries.end(),
                          std::back_inserter(answer.page.entries));
                if (!answer.done && !atOnce) {
                    hand(answer);
                    answer.page.entries.clear();
                }
            }
            hand(answer);
        },
        fail);
}

void DayModel::take(int generation, const Answer& answer)
{
    if (*m_generation != generation)
        return;
    m_waiting = !answer.done;
    if (answer.same) {
        m_anew = false;
        return;
    }
    // Before the rows: views ask for more as soon as they are there.
    m_last = answer.page.last;
    m_more = answer.page.more;
    const bool nothingYet = answer.page.entries.empty() && !answer.done;
    if (m_anew && !(nothingYet && m_rows.empty())) {
        m_lastEntry = answer.lastEntry;
        beginResetModel();
        m_entries = answer.page.entries;
        m_rows.clear();
        m_rows = rowsFor(0);
        endResetModel();
    } else {
        append(answer.page.entries);
    }
    if (!nothingYet)
        emit read(std::exchange(m_anew, false));
    emit lookedOn();
    if (!m_waiting && std::exchange(m_later, false))
        refresh();
}

store::DayTotals DayModel::totals() const
{
    store::DayTotals totals;
    totals.entries = entriesRead();
    if (!m_entries.empty())
        totals.oldest = m_entries.back().event.at;
    return totals;
}

std::vector<DayModel::Row> DayModel::rowsFor(std::size_t from) const
{
    std::vector<Row> rows;
    QDate day = m_rows.empty() ? QDate() : m_rows.back().day;
    for (std::size_t i = from; i < m_entries.size(); ++i) {
        const QDate its = localDate(m_entries[i].event.at);
        if (its != day)
            rows.push_back({its, -1});
        day = its;
        rows.push_back({its, static_cast<int>(i)});
    }
    return rows;
}

void DayModel::append(std::vector<store::DayEntry> entries)
{
    if (entries.empty())
        return;
    const std::size_t from = m_entries.size();
    std::move(entries.begin(), entries.end(), std::back_inserter(m_entries));
    const std::vector<Row> rows = rowsFor(from);
    const int first = rowCount();
    beginInsertRows({}, first, first + static_cast<int>(rows.size()) - 1);
    m_rows.insert(m_rows.end(), rows.begin(), rows.end());
    endInsertRows();
}

const store::DayEntry* DayModel::entry(int row) const
{
    if (row < 0 || row >= rowCount())
        return nullptr;
    const int which = m_rows[static_cast<std::size_t>(row)].entry;
    return which < 0 ? nullptr : &m_entries[static_cast<std::size_t>(which)];
}

template <class Fits>
int DayModel::firstRow(Fits fits) const
{
    const auto found = std::find_if(m_rows.begin(), m_rows.end(), [&](const Row& row) {
        return row.entry >= 0 && fits(m_entries[static_cast<std::size_t>(row.entry)]);
    });
    return found == m_rows.end() ? -1 : static_cast<int>(found - m_rows.begin());
}

int DayModel::rowOf(const QString& event) const
{
    if (event.isEmpty())
        return -1; // gaps have no id
    return firstRow(
        [id = event.toStdString()](const store::DayEntry& entry) { return entry.event.id == id; });
}

int DayModel::rowOfRun(const std::string& run) const
{
    if (run.empty())
        return -1;
    return firstRow([&](const store::DayEntry& entry) {
        const auto* bath = std::get_if<ledger::Processed>(&entry.event.what);
        return !entry.mark && bath && bath->run == run;
    });
}

int DayModel::rowEnteredAfter(std::int64_t last, const ledger::Event& like, bool mark) const
{
    return firstRow([&](const store::DayEntry& entry) {
        return entry.key.seq > last && entry.mark.has_value() == mark &&
               entry.event.batch == like.batch && entry.event.what.index() == like.what.index();
    });
}

int DayModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant DayModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid) || !m_words)
        return {};
    const store::DayEntry* one = entry(index.row());
    if (!one) {
        const QDate day = m_rows[static_cast<std::size_t>(index.row())].day;
        if (role == Qt::DisplayRole || role == Qt::AccessibleTextRole)
            return dayHeading(day, m_locale);
        return role == IsDayRole ? QVariant(true) : QVariant();
    }
    switch (role) {
    case Qt::DisplayRole:
        return m_words(*one).title;
    case Qt::AccessibleTextRole:
        return daySentence(*one, m_words(*one), m_locale);
    case IsDayRole:
        return false;
    case GroupRole:
        return static_cast<int>(groupOf(one->event));
    case TimeRole:
        return dayTime(*one, m_locale);
    case DetailRole:
        return m_words(*one).detail;
    case TakenRole:
        return m_words(*one).taken;
    case PersonRole:
        return QString::fromStdString(one->event.by);
    case IdRole:
        return QString::fromStdString(one->event.id);
    default:
        return {};
    }
}

Qt::ItemFlags DayModel::flags(const QModelIndex& index) const
{
    if (!index.isValid() || !entry(index.row()))
        return Qt::NoItemFlags; // the keyboard passes over headings
    return Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
}

QHash<int, QByteArray> DayModel::roleNames() const
{
    QHash<int, QByteArray> names = QAbstractListModel::roleNames();
    names.insert({{IsDayRole, "isDay"},
                  {GroupRole, "group"},
                  {TimeRole, "time"},
                  {DetailRole, "detail"},
                  {TakenRole, "taken"},
                  {PersonRole, "person"},
                  {IdRole, "event"}});
    return names;
}

bool DayModel::canFetchMore(const QModelIndex& parent) const
{
    return !parent.isValid() && m_more && !m_waiting;
}

void DayModel::fetchMore(const QModelIndex& parent)
{
    if (canFetchMore(parent))
        ask(m_last, kPage, -1);
}

} // namespace ullage::app
