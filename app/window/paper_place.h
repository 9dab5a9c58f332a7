// Pages of the book on paper: looked at first, then printed.
#pragma once

#include <QObject>

#include "app/paper/book_papers.h"
#include "app/session/store_thread.h"
#include "app/window/window_parts.h"

#include <QPointer>

#include <atomic>
#include <functional>
#include <memory>

class QProgressDialog;

namespace ullage::app
{

/// For the window's thread. Pages are made on a thread of their own, however long the book is.
class PaperPlace : public QObject
{
    Q_OBJECT

public:
    explicit PaperPlace(const WindowParts& parts, QObject* parent = nullptr);
    ~PaperPlace() override;

    /// Makes the page and opens its preview, from where it is printed; what takes longer can be
    /// given up. A card is that of the bottle chosen on the Shelf; of a report it is asked which
    /// month. Nothing while no book is open.
    void print(PaperKind kind);
    /// What a shopping list is planned for; half a year until it is said.
    void setPlanFor(std::function<cupboard::PlanFor()> planFor) { m_planFor = std::move(planFor); }
    /// Opens the preview of a page that was made elsewhere.
    void preview(const PaperDocument& document);

signals:
    /// What is shown in the preview just opened.
    void shown(const ullage::app::PaperDocument& document);

private:
    [[nodiscard]] std::optional<QDate> askMonth();
    void make(PaperRequest request);
    void take(int turn, const Result<PaperDocument>& made);
    void giveUp();

    WindowParts m_parts;
    std::function<cupboard::PlanFor()> m_planFor;
    std::unique_ptr<StoreThread> m_thread; ///< gone before what its jobs tell
    QPointer<QProgressDialog> m_waiting;
    /// Number of the page that is waited for; read on the thread, so it lives as long as jobs.
    std::shared_ptr<std::atomic<int>> m_turn = std::make_shared<std::atomic<int>>(0);
};

} // namespace ullage::app
