// The Cupboard in the window.
#pragma once

#include <QObject>

#include "app/paper/book_papers.h"
#include "app/session/store_thread.h"
#include "app/window/window_parts.h"
#include "core/cupboard/plan_for.h"

#include <atomic>
#include <memory>

namespace ullage::app
{

class CupboardDeeds;
class CupboardPage;

/// For the window's thread. What stands in the cupboard is read and worded on a thread of its own
/// while the page is seen; what it missed meanwhile is made up for when it is.
class CupboardPlace : public QObject
{
    Q_OBJECT

public:
    explicit CupboardPlace(const WindowParts& parts, QObject* parent = nullptr);
    ~CupboardPlace() override;

    bool eventFilter(QObject* watched, QEvent* event) override;

    /// What the page plans for.
    [[nodiscard]] cupboard::PlanFor planFor() const;

signals:
    /// Mix a batch from this thing.
    void mixRequested(const QString& item);
    void calendarRequested();
    void paperRequested(ullage::app::PaperKind kind);
    void tableOfListRequested();
    /// What is planned for besides the known work is other than before.
    void besideChanged();

private:
    struct Handed;

    void make();
    void wordAnew();
    void refresh();
    void read();
    void take(int turn, const std::shared_ptr<Handed>& handed);

    WindowParts m_parts;
    CupboardDeeds* m_deeds;
    CupboardPage* m_page = nullptr; ///< the window's
    std::unique_ptr<StoreThread> m_thread;
    std::shared_ptr<std::atomic<int>> m_turn = std::make_shared<std::atomic<int>>(0);
    QString m_language; ///< that the page was made in
    QString m_toChoose; ///< entered just now, and not shown yet
    bool m_stale = true;
};

} // namespace ullage::app
