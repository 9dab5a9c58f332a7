#include "app/shelf/shelf_view.h"

#include "app/shelf/shelf_model.h"
#include "app/widgets/theme.h"

#include <QContextMenuEvent>
#include <QPainter>
#include <QScrollBar>

#include <algorithm>
#include <set>

namespace ullage::app
{

namespace
{

constexpr int kNarrowest = 156;        // cell of a roomy shelf
constexpr int kNarrowestCompact = 188; // and of a compact one
constexpr int kWidestCompact = 330;
constexpr int kEasyCompact = 236; // one whose words are not cut
constexpr int kWidest = 216;
constexpr int kScrollBar = 12;
constexpr int kLowestCompact = 96;
constexpr int kStepsARow = 3;           // of the wheel's three lines, so that a notch is a row
constexpr double kLeastScale = 0.5;     // in a low window
constexpr double kSmallestScale = 0.75; // that another row is made room for
constexpr double kLargestScale = 1.3;

} // namespace

ShelfView::ShelfView(QWidget* parent) : QListView(parent), m_delegate(new BottleDelegate(this))
{
    setObjectName(QStringLiteral("shelf"));
    setAccessibleName(tr("Bottles in use"));
    setItemDelegate(m_delegate);
    setViewMode(QListView::IconMode);
    setMovement(QListView::Static);
    setResizeMode(QListView::Adjust);
    setWrapping(true);
    setUniformItemSizes(true);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setSelectionRectVisible(false);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFrameShape(QFrame::NoFrame);
    setMouseTracking(true);
    viewport()->setAutoFillBackground(false);
    connect(this, &QListView::activated, this, [this](const QModelIndex& index) {
        emit batchActivated(index.data(ShelfModel::IdRole).toString());
    });
}

void ShelfView::setShelfModel(ShelfModel* model)
{
    m_model = model;
    setModel(model);
    connect(model, &QAbstractItemModel::modelAboutToBeReset, this, &ShelfView::rememberSelection);
    connect(model, &QAbstractItemModel::modelReset, this, &ShelfView::restoreSelection);
    restoreSelection();
}

void ShelfView::setLow(bool low)
{
    if (low == m_low)
        return;
    m_low = low;
    updateGeometry();
    fitCells();
}

void ShelfView::chooseForm(const QSize& room)
{
    const int rows = roomyRows(room.width());
    const int tall = 2 + rows * BottleDelegate::cellHeight(ShelfLayout::Roomy, kSmallestScale);
    const ShelfLayout form =
        rows > 1 && tall > room.height() ? ShelfLayout::Compact : ShelfLayout::Roomy;
    if (form == m_chosen)
        return;
    m_chosen = form;
    updateGeometry();
    fitCells();
}

bool ShelfView::isCompact() const
{
    if (m_low || m_chosen)
        return m_low || m_chosen == ShelfLayout::Compact;
    return m_model && m_model->rowCount() > kMostRoomy;
}

QString ShelfView::currentBatch() const
{
    return currentIndex().data(ShelfModel::IdRole).toString();
}

bool ShelfView::selectBatch(const QString& id)
{
    const int row = m_model ? m_model->rowOf(id) : -1;
    if (row < 0)
        return false;
    setCurrentIndex(m_model->index(row));
    scrollTo(currentIndex());
    return true;
}

QSize ShelfView::minimumSizeHint() const
{
    return {kNarrowest * 2,
            isCompact()
                ? usedOf({width(), 2 + 2 * BottleDelegate::cellHeight(ShelfLayout::Compact)})
                : BottleDelegate::cellHeight(ShelfLayout::Roomy, kSmallestScale)};
}

QSize ShelfView::sizeHint() const
{
    return {kNarrowest * 6, BottleDelegate::cellHeight(ShelfLayout::Roomy, 0.94)};
}

// As few rows as can be, and more of them where that gives the words room.
int ShelfView::compactRows(const QSize& room) const
{
    const int count = std::max(1, m_model ? m_model->rowCount() : 0);
    const int width = std::max(kNarrowest, room.width() - kScrollBar - 1);
    const int height = room.height() - 2;
    const int tall = BottleDelegate::cellHeight(ShelfLayout::Compact);
    int columns = std::min(count, std::max(1, width / kNarrowestCompact));
    int rows = (count + columns - 1) / columns;
    columns = (count + rows - 1) / rows;
    while (width / columns < kEasyCompact && (rows + 1) * tall <= height && rows < count) {
        ++rows;
        columns = (count + rows - 1) / rows;
    }
    return (count + columns - 1) / columns;
}

int ShelfView::roomyRows(int width) const
{
    const int count = std::max(1, m_model ? m_model->rowCount() : 0);
    const int columns = std::max(1, (width - kScrollBar - 1) / kNarrowest);
    return (count + columns - 1) / columns;
}

int ShelfView::leastOf(const QSize& room) const
{
    if (!isCompact()) {
        const int tall = BottleDelegate::cellHeight(ShelfLayout::Roomy, kSmallestScale);
        return std::min(room.height(), 2 + roomyRows(room.width()) * tall);
    }
    const int fewest = compactRows({room.width(), 0});
    const int seen = std::clamp((room.height() - 2) / kLowestCompact, 1, fewest);
    return std::min(room.height(), 2 + seen * kLowestCompact);
}

int ShelfView::usedOf(const QSize& room) const
{
    if (isCompact()) {
        const int seen = std::clamp((room.height() - 2) / kLowestCompact, 1, compactRows(room));
        return std::min(room.height(), 2 + seen * BottleDelegate::cellHeight(ShelfLayout::Compact));
    }
    return std::min(room.height(),
                    2 + roomyRows(room.width()) *
                            BottleDelegate::cellHeight(ShelfLayout::Roomy, kLargestScale));
}

void ShelfView::rememberSelection()
{
    m_remembered = currentBatch();
    m_resetting = true;
}

void ShelfView::restoreSelection()
{
    m_resetting = false;
    fitCells();
    if (m_model->rowCount() == 0) {
        if (!m_remembered.isEmpty())
            emit batchSelected(QString());
        m_remembered.clear();
        return;
    }
    if (!selectBatch(m_remembered))
        setCurrentIndex(m_model->index(0));
    m_remembered.clear();
}

void ShelfView::fitCells()
{
    const int count = std::max(1, m_model ? m_model->rowCount() : 0);
    const int room = std::max(kNarrowest, width() - kScrollBar - 1);
    const bool compact = isCompact();
    const ShelfLayout layout = compact ? ShelfLayout::Compact : ShelfLayout::Roomy;
    const int fitting = std::max(1, room / (compact ? kNarrowestCompact : kNarrowest));
    const int rows = compact ? compactRows({width(), viewport()->height()}) : roomyRows(width());
    const int columns = (count + rows - 1) / rows; // rows alike
    int cellWidth = room / columns;
    if (count <= fitting)
        cellWidth = std::min(cellWidth, compact ? kWidestCompact : kWidest);
    const QSize cell(cellWidth, rowHeight(layout, rows));
    if (layout != m_delegate->layout())
        updateGeometry();
    m_delegate->setLayout(layout, cell);
    setGridSize(cell);
    verticalScrollBar()->setSingleStep(cell.height() / kStepsARow);
}

// Rows are seen whole: those that have room are made as tall as fills the view, so that none is cut
// at its lower edge.
int ShelfView::rowHeight(ShelfLayout layout, int rows) const
{
    const int room = viewport()->height() - 2;
    const int usual = layout == ShelfLayout::Compact
                          ? kLowestCompact
                          : BottleDelegate::cellHeight(layout, kSmallestScale);
    if (layout == ShelfLayout::Compact && rows * BottleDelegate::cellHeight(layout, 1) <= room)
        return BottleDelegate::cellHeight(layout, 1);
    const int seen = std::clamp(room / usual, 1, rows);
    if (layout == ShelfLayout::Compact)
        return std::max(kLowestCompact, room / seen);
    const int largest = BottleDelegate::cellHeight(layout, kLargestScale);
    const int least = BottleDelegate::cellHeight(layout, kLeastScale);
    const int height = std::max(room / seen, least);
    return seen == rows ? std::min(height, largest) : height;
}

void ShelfView::paintEvent(QPaintEvent* event)
{
    if (m_model) {
        QPainter painter(viewport());
        std::set<int> boards;
        for (int row = 0; row < m_model->rowCount(); ++row)
            boards.insert(visualRect(m_model->index(row)).top());
        for (const int top : boards)
            painter.fillRect(QRect(0, top + m_delegate->boardOffset(), width() - kScrollBar, 3),
                             colours().shelf);
    }
    QListView::paintEvent(event);
}

void ShelfView::resizeEvent(QResizeEvent* event)
{
    fitCells();
    QListView::resizeEvent(event);
}

void ShelfView::contextMenuEvent(QContextMenuEvent* event)
{
    const QModelIndex index =
        event->reason() == QContextMenuEvent::Keyboard ? currentIndex() : indexAt(event->pos());
    if (!index.isValid())
        return;
    setCurrentIndex(index);
    const QPoint at = event->reason() == QContextMenuEvent::Keyboard
                          ? viewport()->mapToGlobal(visualRect(index).center())
                          : event->globalPos();
    emit menuRequested(index.data(ShelfModel::IdRole).toString(), at);
}

void ShelfView::currentChanged(const QModelIndex& current, const QModelIndex& previous)
{
    QListView::currentChanged(current, previous);
    if (current.isValid() && !m_resetting)
        emit batchSelected(current.data(ShelfModel::IdRole).toString());
}

void ShelfView::focusInEvent(QFocusEvent* event)
{
    QListView::focusInEvent(event);
    if (!currentIndex().isValid() && m_model && m_model->rowCount() > 0)
        setCurrentIndex(m_model->index(0));
}

} // namespace ullage::app
