// The shelf: bottles standing in rows on boards, as many to a row as fit.
//
// Arrow keys move along and between the boards, Return opens the bottle, the menu key its menu.
// Where there is room for them bottles are drawn roomy and as tall as the view allows, else
// compact.
#pragma once

#include "app/shelf/bottle_delegate.h"

#include <QListView>

#include <optional>

namespace ullage::app
{

class ShelfModel;

class ShelfView : public QListView
{
    Q_OBJECT

public:
    /// With more bottles than this the shelf is compact, as long as nobody asked chooseForm().
    static constexpr int kMostRoomy = 12;

    explicit ShelfView(QWidget* parent = nullptr);

    void setShelfModel(ShelfModel* model);
    /// Where the window is low, few bottles too are drawn compact.
    void setLow(bool low);
    /// Roomy where all bottles stand in one row, or all rows of them have room in that; else
    /// compact.
    void chooseForm(const QSize& room);
    [[nodiscard]] bool isCompact() const;
    /// The selected batch, empty if none.
    [[nodiscard]] QString currentBatch() const;
    /// Selects a batch and scrolls to it; false if it is not on the shelf.
    bool selectBatch(const QString& id);

    /// The height that the bottles can use of a room; of many, rows are whole.
    [[nodiscard]] int usedOf(const QSize& room) const;
    /// The least in which as many bottles are seen as in that room, in the form that they have.
    [[nodiscard]] int leastOf(const QSize& room) const;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] QSize sizeHint() const override;

signals:
    void batchSelected(const QString& id);
    /// Return or a double click on a bottle.
    void batchActivated(const QString& id);
    /// A menu is asked for, by mouse or keyboard, at a point of the screen.
    void menuRequested(const QString& id, const QPoint& at);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void focusInEvent(QFocusEvent* event) override;

private:
    void fitCells();
    [[nodiscard]] int rowHeight(ShelfLayout layout, int rows) const;
    [[nodiscard]] int compactRows(const QSize& room) const;
    [[nodiscard]] int roomyRows(int width) const;
    void rememberSelection();
    void restoreSelection();

    ShelfModel* m_model = nullptr;
    BottleDelegate* m_delegate;
    bool m_low = false;
    std::optional<ShelfLayout> m_chosen;
    QString m_remembered;
    bool m_resetting = false;
};

} // namespace ullage::app
