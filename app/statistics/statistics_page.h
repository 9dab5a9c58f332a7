// Statistics of the book: quiet charts over a period, and the same in tables with their sums. They
// are reckoned on a thread of their own and shown when they are there.
#pragma once

#include <QWidget>

#include "app/session/door.h"
#include "app/widgets/period_bar.h"
#include "app/words/units.h"
#include "core/ledger/statistics.h"

#include <optional>

class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;
class QScrollArea;
class QStackedWidget;
class QTimer;

namespace ullage::app
{

class Card;
class EmptyState;
class FiguresView;
class StatisticsCharts;
class StatisticsCount;
class WhereFromButton;

/// Follows the open book, and reads only while the page is seen. Every method
/// is for the window's thread.
class StatisticsPage : public QWidget
{
    Q_OBJECT

public:
    using Span = PeriodBar::Span;
    /// Charts, or one of the tables.
    enum class Face { Charts, Months, Solutions, People, Ends };

    /// `door` outlives the page.
    explicit StatisticsPage(Door& door, QWidget* parent = nullptr);

    /// Reckons anew if the book has grown or the period is another, and if the page is to be seen;
    /// else when it is. A reckoning of another period that is under way gives up; what was shown
    /// stays for a moment, until the new one is there or it is said that it is being counted.
    /// Nothing while no book is open.
    void refresh();
    /// Reckons anew if it is another.
    void setSpan(Span span) { m_period->setSpan(span); }
    [[nodiscard]] PeriodBar* periodBar() const { return m_period; }
    void setFace(Face face);
    [[nodiscard]] FiguresView* table() const { return m_table; }
    /// What is shown; empty until it has been reckoned.
    [[nodiscard]] const std::optional<ledger::Statistics>& statistics() const
    {
        return m_statistics;
    }
    /// Whether what is shown is of the period and of the book as it is.
    [[nodiscard]] bool isCounted() const;
    /// Nothing while nothing is shown. While what is shown is of another period than was chosen
    /// since, it waits for that to be counted; exporting does too.
    void print();
    void exportTable();

signals:
    /// The book could not be read, as readStatistics() refuses; what was shown stays.
    void failed(const ullage::Error& error);
    /// All tables are to be printed; `period` says of which in words.
    void printRequested(const ullage::ledger::Statistics& statistics, const QString& period);

protected:
    void hideEvent(QHideEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    void build();
    void bookOpened();
    void bookClosing();
    void begin(const ledger::Period& period);
    /// Whether what is shown is of the period that stands in the bar.
    [[nodiscard]] bool isOfChosenPeriod() const;
    /// Does it now, or when the period that was chosen is counted.
    void whenCounted(void (StatisticsPage::*deed)());
    void doWhatWaits();
    void sayCounting();
    void showCounted(const ledger::Statistics& statistics, const ledger::Period& period);
    void sayFailed(const Error& error);
    void showAll();
    void sayNothing();
    void showTable();
    void wordAnew();

    Door& m_door;
    StatisticsCount* m_count;
    Wording m_wording;
    std::optional<ledger::Statistics> m_statistics;
    std::optional<ledger::Period> m_shownOf;     ///< the period of what is shown
    void (StatisticsPage::*m_waits)() = nullptr; ///< for the period under way
    bool m_failed = false;                       ///< told once; not tried again by itself
    bool m_stale = true;                         ///< to be reckoned when the page is seen
    QTimer* m_late;                              ///< until it is said that it is being counted
    PeriodBar* m_period;
    QComboBox* m_face;
    QProgressBar* m_progress;
    WhereFromButton* m_ask;
    QPushButton* m_export;
    QPushButton* m_print;
    QStackedWidget* m_stack;
    EmptyState* m_counting;
    EmptyState* m_empty;
    QScrollArea* m_scroll;
    StatisticsCharts* m_charts;
    Card* m_figures; ///< the table and its notes
    FiguresView* m_table;
    QLabel* m_notes;
};

} // namespace ullage::app
