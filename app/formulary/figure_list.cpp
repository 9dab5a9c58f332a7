#include "app/formulary/figure_list.h"

#include "app/widgets/grade_badge.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QHelpEvent>
#include <QPainter>
#include <QResizeEvent>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

namespace
{

constexpr int kBareHeight = 44; // without a source line
constexpr int kMostSourceLines = 2;
constexpr double kSourceLine = 15;
constexpr int kInset = 8;
constexpr int kAbove = 5;
constexpr double kLabelLine = 16;
constexpr double kValueLine = 18;
constexpr int kUsual = 300;
constexpr int kBesideWords = 10; // at least, before the badge

// Of a row's width, by other than words.
double taken() { return 2 * kInset + widestBadge() + kBesideWords; }

class FigureDelegate : public QStyledItemDelegate
{
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    // What a figure is called, and the figure, are shown whole, on as many lines as they take.
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override
    {
        const bool bare = index.data(FigureModel::SourceRole).toString().isEmpty();
        const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
        const double width = (view ? view->viewport()->width() : kUsual) - taken();
        double more = heightOf(labelFont(), index, FigureModel::LabelRole, width) - kLabelLine +
                      heightOf(valueFont(), index, FigureModel::ValueRole, width) - kValueLine;
        if (!bare) {
            const double under = width + taken() - 2 * kInset;
            more += kSourceLine * static_cast<double>(sourceLines(index, under).size());
        }
        return {200, kBareHeight + static_cast<int>(std::ceil(more))};
    }

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override
    {
        const Colours& c = colours();
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        const QRectF cell = option.rect;
        if (option.state & QStyle::State_Selected) {
            painter->setPen(option.state & QStyle::State_HasFocus ? QPen(c.focus, 2) : Qt::NoPen);
            painter->setBrush(c.selected);
            painter->drawRoundedRect(cell.adjusted(1, 1, -1, -2), Space::kRadius, Space::kRadius);
        }
        painter->setPen(QPen(c.hairline, 1));
        painter->drawLine(QPointF(cell.left() + kInset, cell.bottom()),
                          QPointF(cell.right() - kInset, cell.bottom()));
        const bool known = index.data(FigureModel::KnownRole).toBool();
        QRectF line(cell.left() + kInset, cell.top() + kAbove, cell.width() - taken(), 0);
        line.setHeight(heightOf(labelFont(), index, FigureModel::LabelRole, line.width()));
        write(*painter, line, labelFont(), c.quiet, index.data(FigureModel::LabelRole).toString());
        line.moveTop(line.bottom());
        line.setHeight(heightOf(valueFont(), index, FigureModel::ValueRole, line.width()));
        write(*painter, line, valueFont(), known ? c.ink : c.quiet,
              index.data(FigureModel::ValueRole).toString());
        const double below = line.bottom();
        line = QRectF(cell.left() + kInset, below, cell.width() - 2 * kInset, kSourceLine);
        for (const QString& words : sourceLines(index, line.width())) {
            writeOneLine(*painter, line, Theme::font(TextRole::Small), c.quiet, words);
            line.translate(0, kSourceLine);
        }
        if (known)
            paintGrade(*painter, badge(cell, below), gradeAt(index));
        painter->restore();
    }

    bool helpEvent(QHelpEvent* event, QAbstractItemView* view, const QStyleOptionViewItem& option,
                   const QModelIndex& index) override
    {
        if (event->type() == QEvent::ToolTip && index.isValid()) {
            const double width = option.rect.width() - taken();
            const double below = option.rect.top() + kAbove +
                                 heightOf(labelFont(), index, FigureModel::LabelRole, width) +
                                 heightOf(valueFont(), index, FigureModel::ValueRole, width);
            const bool onBadge = badge(option.rect, below).contains(event->pos());
            showPlainToolTip(event->globalPos(),
                             onBadge && index.data(FigureModel::KnownRole).toBool()
                                 ? gradeMeaning(gradeAt(index))
                                 : index.data(FigureModel::SourceRole).toString(),
                             view);
            return true;
        }
        return QStyledItemDelegate::helpEvent(event, view, option, index);
    }

private:
    // Beside the figure; the source has the whole width under both.
    static QRectF badge(const QRectF& cell, double below)
    {
        const double width = widestBadge();
        const double top = cell.top() + kAbove;
        return {cell.right() - kInset - width, top, width, below - top};
    }

    static QStringList sourceLines(const QModelIndex& index, double width)
    {
        const QString source = index.data(FigureModel::SourceRole).toString();
        if (source.isEmpty())
            return {};
        QStringList lines = brokenLines(source, QFontMetricsF(Theme::font(TextRole::Small)), width);
        if (lines.size() > kMostSourceLines)
            lines = lines.mid(0, kMostSourceLines - 1)
                    << lines.mid(kMostSourceLines - 1).join(u' ');
        return lines;
    }

    static MaybeGrade gradeAt(const QModelIndex& index)
    {
        const QVariant grade = index.data(FigureModel::GradeRole);
        return grade.isValid() ? MaybeGrade(static_cast<chemistry::Grade>(grade.toInt()))
                               : std::nullopt;
    }

    static QFont labelFont()
    {
        QFont font = Theme::font(TextRole::Small);
        font.setWeight(QFont::DemiBold);
        return font;
    }

    static QFont valueFont() { return Theme::font(TextRole::Strong); }

    static double heightOf(const QFont& font, const QModelIndex& index, int role, double width)
    {
        const double least = role == FigureModel::LabelRole ? kLabelLine : kValueLine;
        return std::max(least, QFontMetricsF(font)
                                   .boundingRect(QRectF(0, 0, width, 1000),
                                                 Qt::AlignLeft | Qt::TextWordWrap,
                                                 index.data(role).toString())
                                   .height());
    }

    static void write(QPainter& painter, const QRectF& lines, const QFont& font,
                      const QColor& colour, const QString& text)
    {
        painter.setFont(font);
        painter.setPen(colour);
        painter.drawText(lines, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, text);
    }

    static void writeOneLine(QPainter& painter, const QRectF& line, const QFont& font,
                             const QColor& colour, const QString& text)
    {
        painter.setFont(font);
        painter.setPen(colour);
        painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter,
                         oneLine(text, QFontMetricsF(font), line.width()));
    }
};

} // namespace

void FigureModel::setRows(std::vector<FigureRow> rows)
{
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
}

int FigureModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant FigureModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const FigureRow& figure = row(index.row());
    switch (role) {
    case Qt::DisplayRole:
    case LabelRole:
        return figure.label;
    case ValueRole:
        return figure.value;
    case SourceRole:
        return figure.source;
    case KnownRole:
        return figure.known;
    case GradeRole:
        return figure.grade ? QVariant(static_cast<int>(*figure.grade)) : QVariant();
    case Qt::AccessibleTextRole:
        return figure.spoken();
    default:
        return {};
    }
}

FigureList::FigureList(QWidget* parent) : WrappingList(parent), m_model(new FigureModel(this))
{
    setModel(m_model);
    setItemDelegate(new FigureDelegate(this));
    setFrameShape(QFrame::NoFrame);
    setStyleSheet(QStringLiteral("QListView { background: transparent; border: none; }"));
    setVerticalScrollMode(ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setAccessibleName(tr("Figures"));
}

void FigureList::setRows(std::vector<FigureRow> rows)
{
    const int before = std::max(0, currentIndex().row());
    m_model->setRows(std::move(rows));
    choose(std::min(before, m_model->rowCount() - 1));
    fitRows();
}

void FigureList::showWhole(bool whole)
{
    m_whole = whole;
    fitRows();
}

void FigureList::fitRows()
{
    int height = 0;
    for (int row = 0; m_whole && row < m_model->rowCount(); ++row)
        height += sizeHintForRow(row);
    setMinimumHeight(height > 0 ? height + 2 : 0);
}

void FigureList::resizeEvent(QResizeEvent* event)
{
    WrappingList::resizeEvent(event);
    if (event->size().width() != event->oldSize().width())
        fitRows();
}

const FigureRow* FigureList::chosen() const
{
    return currentIndex().isValid() ? &m_model->row(currentIndex().row()) : nullptr;
}

void FigureList::choose(int row)
{
    const QModelIndex index = m_model->index(row, 0);
    if (index.isValid())
        setCurrentIndex(index);
}

void FigureList::currentChanged(const QModelIndex& current, const QModelIndex& previous)
{
    WrappingList::currentChanged(current, previous);
    if (current.isValid())
        emit figureChosen(m_model->row(current.row()).why);
}

} // namespace ullage::app
