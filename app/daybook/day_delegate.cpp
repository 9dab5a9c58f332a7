#include "app/daybook/day_delegate.h"

#include "app/daybook/day_model.h"
#include "app/widgets/figures.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/theme.h"

#include <QPainter>

namespace ullage::app
{

namespace
{

constexpr int kHeading = 42;
constexpr int kEntry = 54;
constexpr int kTime = 34;  // left edge of the time
constexpr int kTitle = 96; // left edge of the words

QColor stripe(DayGroup group)
{
    const Colours& c = colours();
    switch (group) {
    case DayGroup::Runs:
        return c.brown;
    case DayGroup::Mixing:
        return c.green;
    case DayGroup::Tests:
        return c.blue;
    case DayGroup::Discards:
        return c.red;
    case DayGroup::Notes:
    case DayGroup::Everything:
        break;
    }
    return c.grey;
}

void drawLine(QPainter& painter, const QRectF& rect, const QFont& font, const QColor& colour,
              const QString& text)
{
    painter.setFont(font);
    painter.setPen(colour);
    painter.drawText(rect, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine,
                     oneLine(text, QFontMetricsF(font), rect.width()));
}

} // namespace

void DayDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                        const QModelIndex& index) const
{
    const Colours& c = colours();
    const QRectF cell = option.rect;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const QString title = index.data(Qt::DisplayRole).toString();
    if (index.data(DayModel::IsDayRole).toBool()) {
        QFont font = Theme::font(TextRole::CardTitle);
        font.setWeight(QFont::DemiBold);
        drawLine(*painter, cell.adjusted(12, 14, -8, 0), font, c.quiet, title);
        painter->restore();
        return;
    }
    const QRectF card = cell.adjusted(1, 1, -1, -1);
    if (option.state & QStyle::State_Selected) {
        painter->setPen(Qt::NoPen);
        painter->setBrush(c.selected);
        painter->drawRoundedRect(card, Space::kRadius, Space::kRadius);
    }
    if (option.state & QStyle::State_HasFocus) {
        painter->setPen(QPen(c.focus, 2));
        painter->setBrush(Qt::NoBrush);
        painter->drawRoundedRect(card.adjusted(1, 1, -1, -1), Space::kRadius, Space::kRadius);
    }
    const QString taken = index.data(DayModel::TakenRole).toString();
    const auto group = static_cast<DayGroup>(index.data(DayModel::GroupRole).toInt());
    painter->setPen(Qt::NoPen);
    painter->setBrush(taken.isEmpty() ? stripe(group) : c.grey);
    painter->drawRoundedRect(QRectF(cell.left() + 14, cell.top() + 11, 5, cell.height() - 22), 2.5,
                             2.5);
    const QRectF upper(cell.left() + kTitle, cell.top() + 8, cell.width() - kTitle - 14, 20);
    painter->setFont(Theme::font(TextRole::Body));
    painter->setPen(c.quiet);
    drawFigures(*painter, QRectF(cell.left() + kTime, upper.top(), kTitle - kTime - 8, 20),
                Qt::AlignLeft | Qt::AlignVCenter, index.data(DayModel::TimeRole).toString());
    QFont strong = Theme::font(TextRole::Strong);
    strong.setStrikeOut(!taken.isEmpty());
    const QString person = index.data(DayModel::PersonRole).toString();
    const QFont small = Theme::font(TextRole::Small);
    double room = upper.width();
    if (!person.isEmpty()) {
        const double width =
            std::min(QFontMetricsF(small).horizontalAdvance(person) + 4, room * 0.3);
        QRectF right = upper;
        right.setLeft(upper.right() - width);
        drawLine(*painter, right, small, c.quiet, person);
        room -= width + 10;
    }
    drawLine(*painter, QRectF(upper.topLeft(), QSizeF(room, upper.height())), strong,
             taken.isEmpty() ? c.ink : c.quiet, title);
    const QString detail = index.data(DayModel::DetailRole).toString();
    drawLine(*painter, upper.translated(0, 20), small, c.quiet, taken.isEmpty() ? detail : taken);
    painter->restore();
}

QSize DayDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const
{
    return {200, index.data(DayModel::IsDayRole).toBool() ? kHeading : kEntry};
}

} // namespace ullage::app
