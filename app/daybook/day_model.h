// The rows of the day book: a heading for each day and its entries, newest first, read from the
// store page by page as they come into sight. The window's thread never waits for the store.
#pragma once

#include <QAbstractListModel>

#include "app/daybook/day_words.h"
#include "app/session/store_thread.h"

#include <functional>
#include <memory>
#include <vector>

namespace ullage::app
{

/// Used on the window's thread; jobs on `thread` read and hand their answers over.
class DayModel : public QAbstractListModel
{
    Q_OBJECT

public:
    /// Raw values; Qt::DisplayRole is the heading or the title.
    enum Role {
        IsDayRole = Qt::UserRole + 1, ///< a heading
        GroupRole,                    ///< DayGroup as int
        TimeRole,                     ///< dayTime()
        DetailRole,
        TakenRole, ///< "taken back: …", empty unless it was
        PersonRole,
        IdRole, ///< of the event
    };

    /// `thread` must outlive all jobs it was given, and be gone before the model is.
    explicit DayModel(StoreThread& thread, QObject* parent = nullptr);

    /// How rows are worded; tells the views that all words changed.
    void setWords(std::function<DayLine(const store::DayEntry&)> words, const QLocale& locale);
    /// Shows what this lets through, from the newest on. The old rows stay until the first answer.
    void setFilter(const store::DayFilter& filter);
    [[nodiscard]] const store::DayFilter& filter() const { return m_filter; }
    /// Reads again what is shown, if the book has grown since.
    void refresh();
    /// Shows nothing, until setFilter().
    void clear();
    /// Gives up what is being looked for; what was found stays. goOn() takes it up again there.
    void stop();
    void goOn();
    /// It was given up, and there may be more.
    [[nodiscard]] bool isStopped() const { return m_stopped; }
    /// How far back words were looked for; invalid if they were not, or all of it was looked at.
    [[nodiscard]] QDate lookedBackTo() const;

    /// Null for a heading and for no row. Good until the rows change.
    [[nodiscard]] const store::DayEntry* entry(int row) const;
    /// The row of an event among those read, -1 if it is not.
    [[nodiscard]] int rowOf(const QString& event) const;
    /// The row of a run, whichever of its events stands for it; -1 if it is not among those read.
    [[nodiscard]] int rowOfRun(const std::string& run) const;
    /// The row of what was entered of that kind for a bottle after the book's entry `last`, the
    /// first if there are several; -1 if nothing was.
    [[nodiscard]] int rowEnteredAfter(std::int64_t last, const ledger::Event& like,
                                      bool mark) const;
    /// The book's last entry when the rows were read.
    [[nodiscard]] std::int64_t lastEntry() const { return m_lastEntry; }
    [[nodiscard]] bool mayHaveMore() const { return m_more || m_waiting || m_stopped; }
    /// Of what was read.
    [[nodiscard]] store::DayTotals totals() const;
    [[nodiscard]] int entriesRead() const { return static_cast<int>(m_entries.size()); }
    /// A page has not come yet, or not all of it.
    [[nodiscard]] bool isWaiting() const { return m_waiting; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;
    [[nodiscard]] bool canFetchMore(const QModelIndex& parent) const override;
    void fetchMore(const QModelIndex& parent) override;

    static constexpr int kPage = 200; ///< entries read at a time

signals:
    /// A page has come, or some of it; after a change of filter or a refresh all of it is new. Of
    /// words, told once there is anything to show or all was looked at.
    void read(bool anew);
    /// Words were looked for a good way back, and it goes on; or it has come to an end.
    void lookedOn();
    /// The book cannot be read; what was shown stays.
    void failed(const ullage::Error& error);

private:
    struct Row {
        QDate day;
        int entry = -1; ///< none for a heading
    };
    struct Answer;

    void ask(const std::optional<store::DayKey>& after, int limit, std::int64_t unless);
    void take(int generation, const Answer& answer);
    void append(std::vector<store::DayEntry> entries);
    template <class Fits>
    [[nodiscard]] int firstRow(Fits fits) const;
    [[nodiscard]] std::vector<Row> rowsFor(std::size_t from) const;

    StoreThread& m_thread;
    std::function<DayLine(const store::DayEntry&)> m_words;
    QLocale m_locale;
    store::DayFilter m_filter;
    std::vector<store::DayEntry> m_entries;
    std::vector<Row> m_rows;
    std::optional<store::DayKey> m_last;
    std::int64_t m_lastEntry = -1; ///< of the book, when the rows were read
    bool m_more = false;
    bool m_waiting = false;
    bool m_shown = false;   ///< a filter was set
    bool m_stopped = false; ///< by stop()
    bool m_later = false;   ///< to be refreshed once nothing is waited for
    bool m_anew = false;    ///< what comes first replaces what is shown
    std::shared_ptr<std::atomic<int>> m_generation = std::make_shared<std::atomic<int>>(0);
};

} // namespace ullage::app
