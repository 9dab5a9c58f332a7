#include "app/shelf/bottle_delegate.h"

#include "app/shelf/shelf_model.h"
#include "app/widgets/bottle_painter.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/tally.h"
#include "app/widgets/theme.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

namespace
{

// Roomy cell, from the top: margin, bottle, board, solution, tally, verdict, two lines, margin.
constexpr int kAbove = 12;
constexpr int kWords = 114; // from the board to the lower edge
constexpr int kSide = 5;    // between a cell's edge and the card of a selected bottle

// Compact cell.
constexpr int kCompactHeight = 108;
constexpr int kCompactBoard = 94;
constexpr double kCompactScale = 0.43;
constexpr int kCompactBottle = 66; // room for the bottle at the left
constexpr int kTightPixels = 11;   // of words on three lines in place of two
constexpr int kTightLine = 13;

void drawLine(QPainter& painter, const QRectF& rect, const QFont& font, const QColor& colour,
              const QString& text, Qt::Alignment alignment = Qt::AlignLeft)
{
    painter.setFont(font);
    painter.setPen(colour);
    painter.drawText(rect, static_cast<int>(alignment | Qt::AlignVCenter) | Qt::TextSingleLine,
                     oneLine(text, QFontMetricsF(font), rect.width()));
}

QFont verdictFont(int pixels)
{
    QFont font = Theme::font(TextRole::Strong);
    font.setPixelSize(pixels);
    font.setWeight(QFont::Bold);
    return font;
}

QFont mediumFont()
{
    QFont font = Theme::font(TextRole::Small);
    font.setWeight(QFont::Medium);
    return font;
}

// Smaller where all of it then has room.
QFont fitted(QFont font, const QString& text, const QRectF& rect)
{
    constexpr int kSmallest = 10;
    while (font.pixelSize() > kSmallest &&
           QFontMetricsF(font).horizontalAdvance(text) > rect.width())
        font.setPixelSize(font.pixelSize() - 1);
    return font;
}

// As much as has room, with a sign that there is more; not cut within the first letters of a word,
// and nothing where no word is left to be known by.
QString knownBy(const QString& text, const QFontMetricsF& metrics, double width)
{
    constexpr int kFewLetters = 5;
    if (metrics.horizontalAdvance(text) <= width)
        return text;
    const QString more = QStringLiteral("…");
    QString start = oneLine(text, metrics, width).remove(more);
    const auto gap = std::max(start.lastIndexOf(u' '), start.lastIndexOf(u'-'));
    if (start.size() - gap - 1 < kFewLetters)
        start.truncate(std::max<qsizetype>(gap, 0));
    while (start.endsWith(u',') || start.endsWith(u' ') || start.endsWith(u'-'))
        start.chop(1);
    return start.size() < 3 ? QString() : start + more;
}

// A headline without a second line below it may take both.
void drawWrapped(QPainter& painter, const QRectF& rect, const QString& text)
{
    painter.setFont(mediumFont());
    painter.setPen(colours().ink);
    painter.drawText(rect, Qt::AlignTop | Qt::TextWordWrap, text);
}

void paintMark(QPainter& painter, const QRectF& rect, const BottleView& bottle)
{
    if (bottle.mark.isEmpty())
        paintVerdict(painter, rect, bottle.verdict);
    else
        paintMarkedText(painter, rect, bottle.verdict, bottle.mark);
}

void paintCard(QPainter& painter, const QRectF& cell, const QStyleOptionViewItem& option)
{
    const Colours& c = colours();
    const QRectF card = cell.adjusted(kSide, 1, -kSide, -1);
    const bool selected = option.state & QStyle::State_Selected;
    const bool focused = (option.state & QStyle::State_HasFocus) && selected;
    if (!selected && !(option.state & QStyle::State_MouseOver))
        return;
    painter.setPen(selected ? QPen(focused ? c.focus : c.ink, focused ? 2 : 1.6) : Qt::NoPen);
    painter.setBrush(selected ? c.card : blend(c.paper, c.card, 0.6));
    painter.drawRoundedRect(card, Space::kCardRadius, Space::kCardRadius);
}

void paintRoomy(QPainter& painter, const QRectF& cell, const BottleView& bottle, int board)
{
    const Colours& c = colours();
    const double scale = (board - kAbove) / kTallestBottle;
    const double foot = cell.top() + board;
    paintBottle(painter, QPointF(cell.center().x(), foot), scale, bottle);

    const double left = cell.left() + kSide + 18;
    const double width = cell.right() - kSide - 10 - left;
    const QRectF solution(cell.left() + 8, foot + 7, cell.width() - 16, 16);
    // A name that its label has no room for stands below it; its card tells the solution.
    const bool named = tapeHoldsName(bottle, scale);
    const QString& below = named ? bottle.solutionName : bottle.name;
    drawLine(painter, solution,
             fitted(named ? Theme::font(TextRole::Small) : verdictFont(12), below, solution), c.ink,
             below, Qt::AlignHCenter);
    const QRectF tally(cell.left() + 10, foot + 25, cell.width() - 20, 13);
    painter.setPen(c.ink);
    if (!bottle.unread && (bottle.filmsDone > 0 || bottle.uncounted))
        paintTally(painter, tally, Qt::AlignHCenter, bottle.filmsDone, bottle.uncounted);
    else if (!bottle.unread) // of one that is, nobody knows what it has done
        drawLine(painter, tally.adjusted(0, -3, 0, 3), Theme::font(TextRole::Small), c.quiet,
                 tallyText(0), Qt::AlignHCenter);
    painter.setFont(verdictFont(14));
    paintMark(painter, QRectF(left, foot + 41, width, 22), bottle);
    if (bottle.subline.isEmpty()) {
        drawWrapped(painter, QRectF(left, foot + 65, width, 38), bottle.headline);
        return;
    }
    drawLine(painter, QRectF(left, foot + 63, width, 20), mediumFont(), c.ink, bottle.headline);
    drawLine(painter, QRectF(left, foot + 81, width, 20), Theme::font(TextRole::Small), c.quiet,
             bottle.subline);
}

// In a cell that is higher than it needs it stands in the middle.
int compactTop(double height) { return std::max(0, static_cast<int>(height) - kCompactHeight) / 2; }

void paintCompact(QPainter& painter, QRectF cell, const BottleView& bottle)
{
    const Colours& c = colours();
    cell.adjust(0, compactTop(cell.height()), 0, 0);
    const double foot = cell.top() + kCompactBoard;
    paintBottle(painter, QPointF(cell.left() + kSide + kCompactBottle / 2.0 - 2, foot),
                kCompactScale, bottle, BottleLabel::None);
    const double left = cell.left() + kSide + kCompactBottle;
    const double width = cell.right() - kSide - 6 - left;
    const auto line = [&](double top, double height) {
        return QRectF(left, cell.top() + top, width, height);
    };
    // The name whole, and of the solution what still fits.
    const QFont nameFont = fitted(verdictFont(13), bottle.name, line(5, 18));
    const double nameWidth =
        std::min(width, QFontMetricsF(nameFont).horizontalAdvance(bottle.name) + 6);
    drawLine(painter, line(5, 18), nameFont, c.ink, bottle.name);
    const QFont small = Theme::font(TextRole::Small);
    drawLine(painter, line(5, 18).adjusted(nameWidth, 0, 0, 0), small, c.quiet,
             knownBy(bottle.solutionName, QFontMetricsF(small), width - nameWidth));
    painter.setFont(verdictFont(12));
    paintMark(painter, line(23, 18), bottle);
    double tallyTop = 77;
    if (bottle.subline.isEmpty()) {
        drawWrapped(painter, line(41, 32), bottle.headline);
    } else {
        QFont font = fitted(mediumFont(), bottle.headline, line(40, 16));
        const bool twoLines = QFontMetricsF(font).horizontalAdvance(bottle.headline) > width;
        QRectF place = line(40, 16);
        if (twoLines) {
            font.setPixelSize(kTightPixels);
            place = line(38, kTightLine);
            tallyTop += 3;
        }
        QStringList words = brokenLines(bottle.headline, QFontMetricsF(font), width);
        drawLine(painter, place, font, c.ink, words.takeFirst());
        if (!words.isEmpty()) {
            place.translate(0, place.height());
            drawLine(painter, place, font, c.ink, words.join(u' '));
        }
        place.translate(0, place.height());
        drawLine(painter, place, fitted(Theme::font(TextRole::Small), bottle.subline, place),
                 c.quiet, bottle.subline);
    }
    painter.setPen(c.ink);
    if (bottle.unread)
        return; // nobody knows what it has done
    if ((bottle.filmsDone > 0 || bottle.uncounted) &&
        tallyWidth(bottle.filmsDone, 10, bottle.uncounted) <= width)
        paintTally(painter, line(tallyTop, 10), Qt::AlignLeft, bottle.filmsDone, bottle.uncounted);
    else
        drawLine(painter, line(tallyTop - 3, 16), Theme::font(TextRole::Axis), c.quiet,
                 tallyText(bottle.filmsDone, bottle.uncounted));
}

} // namespace

void BottleDelegate::setLayout(ShelfLayout layout, const QSize& cell)
{
    m_layout = layout;
    m_cell = cell;
}

int BottleDelegate::cellHeight(ShelfLayout layout, double scale)
{
    return layout == ShelfLayout::Compact
               ? kCompactHeight
               : kAbove + static_cast<int>(std::ceil(kTallestBottle * scale)) + kWords;
}

int BottleDelegate::boardOffset() const
{
    return m_layout == ShelfLayout::Compact ? compactTop(m_cell.height()) + kCompactBoard
                                            : m_cell.height() - kWords;
}

void BottleDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                           const QModelIndex& index) const
{
    const auto bottle = index.data(ShelfModel::ViewRole).value<BottleView>();
    const QRectF cell(option.rect);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    paintCard(*painter, cell, option);
    if (m_layout == ShelfLayout::Compact)
        paintCompact(*painter, cell, bottle);
    else
        paintRoomy(*painter, cell, bottle, boardOffset());
    painter->restore();
}

QSize BottleDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const
{
    return m_cell;
}

} // namespace ullage::app
