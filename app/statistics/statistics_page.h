// Statistics of the book: quiet charts over a period. They are reckoned on a thread and shown when
// they are there.
#pragma once

#include <QWidget>

#include "app/daybook/store_thread.h"
#include "app/session/session.h"
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

/// `session` and `thread` are the caller's. Every method is for the window's thread.
class StatisticsPage : public QWidget
{
    Q_OBJECT

public:
    /// Calendar months and years of the user's clock; TwelveMonths is this month and the eleven
    /// before it. None but LastYear has an end.
    enum class Span { TwelveMonths, Year, LastYear, All };

    /// `thread` must be gone before the page is.
    StatisticsPage(Session& session, StoreThread& thread, QWidget* parent = nullptr);

    /// The language or the units changed; nothing is reckoned anew.
    void setWording(const Wording& wording);
    /// Reckons anew, if the page is to be seen; else when it is. A reckoning under way gives up;
    /// what was shown stays until the new one is there. Nothing while no book is open.
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
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    struct Bars {
        Card* card = nullptr;
        BarRows* rows = nullptr;
        QLabel* none = nullptr;
    };
    Bars addBars();
    static void showBars(const Bars& bars, const QString& title, const std::vector<BarRow>& rows,
                         const QString& none);
    void take(int generation, const std::optional<ledger::Statistics>& statistics);
    void showAll();
    void retranslate();
    [[nodiscard]] ledger::Period period() const;

    Session& m_session;
    StoreThread& m_thread;
    Wording m_wording;
    std::optional<ledger::Statistics> m_statistics;
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
