#include "app/cupboard/item_list.h"

#include "app/widgets/name_font.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"
#include "app/widgets/verdict_mark.h"

#include <QContextMenuEvent>
#include <QPainter>
#include <QStyledItemDelegate>

#include <cmath>

namespace ullage::app
{

namespace
{

constexpr int kHeadingHeight = 30;
constexpr int kPadding = 5; // above and below the words of a thing
constexpr double kBetween = 2;
constexpr double kMarkSide = 14;
constexpr int kMostLines = 2; // of a name, and of what is said of it

// The shapes of the verdicts: a triangle for what ends soon, an octagon for what is past its day.
VerdictLook lookOf(ledger::Keeps keeps)
{
    return keeps == ledger::Keeps::Past ? VerdictLook::Discard : VerdictLook::NearItsEnd;
}

bool isMarked(const QModelIndex& index)
{
    return static_cast<ledger::Keeps>(index.data(ItemListModel::KeepsRole).toInt()) !=
           ledger::Keeps::Fine;
}

QRectF wordsOf(const QRectF& cell, bool marked)
{
    return cell.adjusted(14, kPadding, marked ? -36 : -12, -kPadding);
}

// A date or a volume is not cut where a second line has room for it.
struct Wrapped {
    QString text;
    double height = 0;
};

Wrapped wrapped(const QString& text, const QFont& font, double width)
{
    const QFontMetricsF metrics(font);
    const QString all = oneLine(text, metrics, 1e6); // a name may hold anything
    const QRectF room(0, 0, width, 1e4);
    const double needed = metrics.boundingRect(room, Qt::TextWordWrap, all).height();
    const double most = kMostLines * metrics.lineSpacing() + 1;
    if (needed <= most)
        return {all, needed};
    // Words are broken unevenly, so a little less than the lines hold.
    return {oneLine(text, metrics, (kMostLines - 0.3) * width), most};
}

class ItemDelegate : public QStyledItemDelegate
{
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    // As high in the heavier letters of the one that is chosen: nothing moves when it is.
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        if (index.data(ItemListModel::HeadingRole).toBool())
            return {200, kHeadingHeight};
        const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
        const QRectF cell(0, 0, view ? view->viewport()->width() : 280, 100);
        const double width = wordsOf(cell, isMarked(index)).width();
        const double height = wrapped(index.data().toString(), nameFont(true), width).height +
                              wrapped(index.data(ItemListModel::DetailRole).toString(),
                                      Theme::font(TextRole::Small), width)
                                  .height;
        return {200, static_cast<int>(std::ceil(height + kBetween + 2 * kPadding)) + 2};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override
    {
        const Colours& c = colours();
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        const QRectF cell = QRectF(option.rect).adjusted(0, 1, 0, -1);
        if (index.data(ItemListModel::HeadingRole).toBool())
            paintHeading(*painter, cell, index.data().toString());
        else
            paintItem(*painter, cell, option, index, c);
        painter->restore();
    }

private:
    static void paintHeading(QPainter& painter, const QRectF& cell, const QString& text)
    {
        const QFont font = Theme::font(TextRole::CardTitle);
        painter.setFont(font);
        painter.setPen(colours().quiet);
        const QRectF line = cell.adjusted(10, 4, -10, 0);
        painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter,
                         oneLine(text, QFontMetricsF(font), line.width()));
    }

    static void paintItem(QPainter& painter, const QRectF& cell, const QStyleOptionViewItem& option,
                          const QModelIndex& index, const Colours& c)
    {
        const bool chosen = option.state & QStyle::State_Selected;
        if (chosen || option.state & QStyle::State_MouseOver) {
            painter.setPen(option.state & QStyle::State_HasFocus ? QPen(c.focus, 2) : Qt::NoPen);
            painter.setBrush(chosen ? c.selected : c.raised);
            painter.drawRoundedRect(cell.adjusted(1, 0, -1, 0), Space::kRadius, Space::kRadius);
        }
        const auto keeps = static_cast<ledger::Keeps>(index.data(ItemListModel::KeepsRole).toInt());
        const bool marked = isMarked(index);
        const QRectF words = wordsOf(cell, marked);
        const QFont font = nameFont(chosen);
        const Wrapped name = wrapped(index.data().toString(), font, words.width());
        painter.setFont(font);
        painter.setPen(c.ink);
        painter.drawText(words, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, name.text);
        const QFont small = Theme::font(TextRole::Small);
        painter.setFont(small);
        painter.setPen(marked ? verdictColour(lookOf(keeps)) : c.quiet);
        painter.drawText(
            words, Qt::AlignLeft | Qt::AlignBottom | Qt::TextWordWrap,
            wrapped(index.data(ItemListModel::DetailRole).toString(), small, words.width()).text);
        if (marked)
            paintVerdictShape(
                painter,
                QRectF(cell.right() - 30, cell.center().y() - kMarkSide / 2, kMarkSide, kMarkSide),
                lookOf(keeps));
    }
};

} // namespace

void ItemListModel::setRows(std::vector<CupboardRow> rows)
{
    beginResetModel();
    m_rows = std::move(rows);
    m_lines.clear();
    QString group;
    for (std::size_t i = 0; i < m_rows.size(); ++i) {
        if (m_rows[i].group != group) {
            group = m_rows[i].group;
            m_lines.push_back({group, 0});
        }
        m_lines.push_back({{}, i});
    }
    endResetModel();
}

const CupboardRow* ItemListModel::row(const QModelIndex& index) const
{
    if (!index.isValid() || !checkIndex(index))
        return nullptr;
    const Line& line = m_lines[static_cast<std::size_t>(index.row())];
    return line.heading.isEmpty() ? &m_rows[line.row] : nullptr;
}

int ItemListModel::rowOf(const QString& item) const
{
    for (std::size_t i = 0; i < m_lines.size(); ++i) {
        if (!m_lines[i].heading.isEmpty())
            continue;
        for (const std::string& one : m_rows[m_lines[i].row].items) {
            if (one == item.toStdString())
                return static_cast<int>(i);
        }
    }
    return -1;
}

int ItemListModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

QVariant ItemListModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const Line& line = m_lines[static_cast<std::size_t>(index.row())];
    const CupboardRow* row = this->row(index);
    if (role == HeadingRole)
        return row == nullptr;
    if (!row)
        return role == Qt::DisplayRole ? QVariant(line.heading) : QVariant();
    switch (role) {
    case Qt::DisplayRole:
        return row->name;
    case Qt::ToolTipRole:
        return plainToolTip(
            tr("%1: %2", "thing, how much and until when").arg(row->name, row->detail));
    case Qt::AccessibleTextRole:
        return tr("%1: %2", "thing, how much and until when").arg(row->name, row->detail);
    case IdRole:
        return row->id;
    case DetailRole:
        return row->detail;
    case KeepsRole:
        return static_cast<int>(row->keeps);
    default:
        return {};
    }
}

Qt::ItemFlags ItemListModel::flags(const QModelIndex& index) const
{
    return row(index) ? QAbstractListModel::flags(index) : Qt::NoItemFlags;
}

ItemList::ItemList(QWidget* parent) : WrappingList(parent), m_model(new ItemListModel(this))
{
    setModel(m_model);
    setItemDelegate(new ItemDelegate(this));
    setFrameShape(QFrame::NoFrame);
    setStyleSheet(QStringLiteral("QListView { background: transparent; border: none; }"));
    setMouseTracking(true);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setAccessibleName(tr("What is here"));
    connect(selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& current) {
                const QString id = current.data(ItemListModel::IdRole).toString();
                if (m_filling || id.isEmpty())
                    return;
                m_chosen = id;
                emit rowChosen();
            });
}

void ItemList::setRows(std::vector<CupboardRow> rows)
{
    m_filling = true;
    m_model->setRows(std::move(rows));
    int row = m_model->rowOf(m_chosen);
    if (row < 0)
        row = m_model->firstItem();
    setCurrentIndex(m_model->index(row, 0));
    m_chosen = currentIndex().data(ItemListModel::IdRole).toString();
    m_filling = false;
    emit rowChosen();
}

const CupboardRow* ItemList::chosen() const { return m_model->row(currentIndex()); }

bool ItemList::choose(const QString& item)
{
    const int row = m_model->rowOf(item);
    if (row >= 0)
        setCurrentIndex(m_model->index(row, 0));
    return row >= 0;
}

// Asked for by the keyboard it stands at the row.
void ItemList::contextMenuEvent(QContextMenuEvent* event)
{
    QPoint at = event->globalPos();
    if (event->reason() == QContextMenuEvent::Mouse) {
        const QModelIndex under = indexAt(event->pos());
        if (!m_model->row(under))
            return;
        setCurrentIndex(under);
    } else {
        at = viewport()->mapToGlobal(visualRect(currentIndex()).center());
    }
    if (chosen())
        emit menuWanted(at);
}

} // namespace ullage::app
