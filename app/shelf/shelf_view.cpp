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
constexpr int kWidest = 216;
constexpr int kScrollBar = 12;
constexpr double kSmallestScale = 0.8;
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
    return {kNarrowest * 2, BottleDelegate::cellHeight(ShelfLayout::Roomy, kSmallestScale)};
}

QSize ShelfView::sizeHint() const
{
    return {kNarrowest * 6, BottleDelegate::cellHeight(ShelfLayout::Roomy, 0.94)};
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
    const int count = m_model ? m_model->rowCount() : 0;
    const int room = std::max(kNarrowest, width() - kScrollBar - 1);
    const ShelfLayout layout = count > kMostRoomy ? ShelfLayout::Compact : ShelfLayout::Roomy;
    const int narrowest = layout == ShelfLayout::Compact ? kNarrowestCompact : kNarrowest;
    const int fitting = std::max(1, room / narrowest);
    const int columns = std::clamp(count, 1, fitting);
    int cellWidth = room / columns;
    if (count <= fitting)
        cellWidth = std::min(cellWidth, kWidest);
    // One row grows with the view; several rows stay at a size that lets a second row show.
    const double words = BottleDelegate::cellHeight(ShelfLayout::Roomy, 0);
    const double perScale = BottleDelegate::cellHeight(ShelfLayout::Roomy, 1) - words;
    const double scale = count > fitting ? kSmallestScale
                                         : std::clamp((viewport()->height() - 2 - words) / perScale,
                                                      kSmallestScale, kLargestScale);
    const QSize cell(cellWidth, BottleDelegate::cellHeight(layout, scale));
    m_delegate->setLayout(layout, cell);
    setGridSize(cell);
    verticalScrollBar()->setSingleStep(cell.height() / 4);
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
