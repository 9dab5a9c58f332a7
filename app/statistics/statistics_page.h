// Statistics of the book: quiet charts over a period. They are reckoned on a thread of their own
// and shown when they are there.
#pragma once

#include <QWidget>

#include "app/session/door.h"
#include "app/session/store_thread.h"
#include "app/statistics/bar_rows.h"
#include "app/words/units.h"
#include "core/ledger/statistics.h"

#include <atomic>
#include <memory>
#include <optional>
#include <vector>

class QComboBox;
class QLabel;
class QProgressBar;
class QStackedWidget;

namespace ullage::app
{

class Card;
class ChartView;
class EmptyState;
class WhereFromButton;

/// Follows the open book, and reads only while the page is seen. Every method
/// is for the window's thread.
class StatisticsPage : public QWidget
{
    Q_OBJECT

public:
    /// Calendar months and years of the user's clock; TwelveMonths is this month and the eleven
    /// before it. None but LastYear has an end.
    enum class Span { TwelveMonths, Year, LastYear, All };

    /// `door` outlives the page.
    explicit StatisticsPage(Door& door, QWidget* parent = nullptr);
    ~StatisticsPage() override;

    /// Reckons anew if the book has grown or the period is another, and if the page is to be seen;
    /// else when it is. A reckoning of another period that is under way gives up; what was shown
    /// stays until the new one is there. Nothing while no book is open.
    void refresh();
    /// Reckons anew if it is another.
    void setSpan(Span span);
    /// What is shown; empty until it has been reckoned.
    [[nodiscard]] const std::optional<ledger::Statistics>& statistics() const
    {
        return m_statistics;
    }

signals:
    /// The book could not be read, as readStatistics() refuses; what was shown stays.
    void failed(const ullage::Error& error);

protected:
    void hideEvent(QHideEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    /// What a reckoning is of: the same again gives the same.
    struct Basis {
        std::int64_t lastEntry = 0;
        ledger::Period period;
        bool operator==(const Basis&) const = default;
    };
    struct Bars {
        Card* card = nullptr;
        BarRows* rows = nullptr;
        QLabel* none = nullptr;
    };
    Bars addBars();
    static void showBars(const Bars& bars, const QString& title, const std::vector<BarRow>& rows,
                         const QString& none);
    void bookOpened();
    void bookClosing();
    void begin(const ledger::Period& period);
    void giveUp();
    /// The reckoning of that number is over; false if it is not the one waited for.
    bool ended(int generation);
    void showAll();
    void wordAnew();
    [[nodiscard]] ledger::Period period() const;

    Door& m_door;
    std::unique_ptr<StoreThread> m_thread; ///< gone before what its jobs tell
    Wording m_wording;
    std::optional<ledger::Statistics> m_statistics;
    std::optional<Basis> m_basis;             ///< of what is shown
    std::optional<ledger::Period> m_underWay; ///< being reckoned
    bool m_again = false;                     ///< the book may have grown since that began
    bool m_failed = false;                    ///< told once; not tried again by itself
    /// Number of the reckoning that is waited for; read on the thread, so it lives as long as jobs.
    std::shared_ptr<std::atomic<int>> m_generation = std::make_shared<std::atomic<int>>(0);
    bool m_stale = true; ///< to be reckoned when the page is seen
    QComboBox* m_span;
    QProgressBar* m_progress;
    WhereFromButton* m_ask;
    QStackedWidget* m_stack;
    EmptyState* m_empty;
    Card* m_filmsCard;
    ChartView* m_films;
    QLabel* m_summary;
    Bars m_solutions;
    Bars m_lives;
    Bars m_ends;
    Bars m_costs;
};

} // namespace ullage::app
