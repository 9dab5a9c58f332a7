#include "app/cupboard/need_strip.h"

#include "app/widgets/colours.h"
#include "app/widgets/hatch.h"
#include "app/widgets/plain_text.h"
#include "app/widgets/tally.h"
#include "app/widgets/theme.h"

#include <QHelpEvent>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <array>

namespace ullage::app
{

namespace
{

constexpr double kNames = 132;   // width of the column at the left
constexpr double kDays = 24;     // height of the line of days
constexpr double kWork = 62;     // of the work under it, with two lines for names
constexpr double kWorkName = 15; // such a line
constexpr double kWidestWorkName = 120;
constexpr double kPace = 42; // of what comes besides
constexpr double kBar = 22;
constexpr double kLane = 26;
constexpr double kRowGap = 12;
constexpr double kName = 18; // a line of it
constexpr double kDetail = 18;
constexpr double kTally = 15;
constexpr double kLegend = 26;

QColor colourOf(formulary::Role role)
{
    switch (role) {
    case formulary::Role::Developer:
        return colours().brown;
    case formulary::Role::Fixer:
        return colours().grey;
    case formulary::Role::Stop:
        return colours().honey;
    default:
        return colours().green;
    }
}

// Of the two that words have, the one that can be read on it.
QColor wordsOn(const QColor& ground)
{
    const Colours& c = colours();
    return contrast(c.card, ground) >= contrast(c.ink, ground) ? c.card : c.ink;
}

} // namespace

NeedStrip::NeedStrip(QWidget* parent) : QWidget(parent)
{
    setAccessibleName(tr("What will be needed"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void NeedStrip::setStrip(StripView strip)
{
    m_strip = std::move(strip);
    QStringList spoken;
    for (const WorkTick& work : m_strip.work) {
        if (!work.atPace)
            spoken << work.spoken;
    }
    if (!m_strip.pace.isEmpty())
        spoken << paceWords();
    for (const NeedRow& row : m_strip.rows) {
        spoken << tr("%1, %2", "solution, films").arg(row.name, row.detail);
        for (const NeedBar& bar : row.bars)
            spoken << bar.spoken;
    }
    setAccessibleDescription(spoken.join(QStringLiteral(". ")));
    updateGeometry();
    update();
}

QString NeedStrip::paceWords() const
{
    return tr("Besides the known work %1 in all at your pace", "films").arg(m_strip.pace);
}

double NeedStrip::workHeight() const { return kWork + (m_strip.pace.isEmpty() ? 0 : kPace); }

// In a few lines where one does not hold it.
QStringList NeedStrip::nameLines(const NeedRow& row)
{
    const QFontMetricsF metrics(Theme::font(TextRole::Strong));
    constexpr double kRoom = kNames - 8;
    constexpr qsizetype kMostLines = 3;
    QString left = oneLine(row.name, metrics, 1e6); // it may hold anything
    QStringList lines;
    while (metrics.horizontalAdvance(left) > kRoom && lines.size() + 1 < kMostLines) {
        qsizetype cut = 0; // behind the last word, or part of one, that this line holds
        for (qsizetype at = 0; at < left.size(); ++at) {
            const bool ends = left[at] == u' ' || left[at] == u'-';
            if (!ends)
                continue;
            if (metrics.horizontalAdvance(left.left(at + 1).trimmed()) > kRoom)
                break;
            cut = at + 1;
        }
        if (cut == 0)
            break;
        lines << left.left(cut).trimmed();
        left = left.mid(cut);
    }
    return lines << oneLine(left, metrics, kRoom);
}

double NeedStrip::heightOf(const NeedRow& row) const
{
    return std::max(kName * static_cast<double>(nameLines(row).size()) + kDetail,
                    row.lanes * kLane) +
           kRowGap;
}

QSize NeedStrip::sizeHint() const
{
    double height = kDays + workHeight() + kLegend;
    for (const NeedRow& row : m_strip.rows)
        height += heightOf(row);
    return {460, static_cast<int>(height)};
}

QSize NeedStrip::minimumSizeHint() const { return {380, sizeHint().height()}; }

QRectF NeedStrip::room() const { return QRectF(rect()).adjusted(kNames, 0, -2, 0); }

double NeedStrip::xOf(double place) const { return room().left() + place * room().width(); }

QRectF NeedStrip::barRect(const NeedRow&, double top, const NeedBar& bar) const
{
    const double left = xOf(bar.from);
    return {left + 0.5, top + bar.lane * kLane + 0.5, std::max(6.0, xOf(bar.to) - left - 2), kBar};
}

bool NeedStrip::event(QEvent* event)
{
    if (event->type() == QEvent::ToolTip) {
        auto* help = static_cast<QHelpEvent*>(event);
        showPlainToolTip(help->globalPos(), spokenAt(help->pos()), this);
        return true;
    }
    return QWidget::event(event);
}

QString NeedStrip::spokenAt(const QPointF& at) const
{
    for (const WorkTick& work : m_strip.work) {
        const double x = xOf(work.at);
        if (!work.atPace && at.y() > kDays && at.y() < kDays + kWork && at.x() >= x - 4 &&
            at.x() <= x + tallyWidth(work.films, kTally) + 4)
            return work.spoken;
    }
    double top = kDays + workHeight();
    if (at.y() > kDays + kWork && at.y() < top)
        return paceWords();
    for (const NeedRow& row : m_strip.rows) {
        if (at.x() < kNames && at.y() >= top && at.y() < top + heightOf(row))
            return tr("%1, %2", "solution, films").arg(row.name, row.detail);
        for (const NeedBar& bar : row.bars) {
            if (barRect(row, top, bar).contains(at))
                return bar.spoken;
        }
        top += heightOf(row);
    }
    return {};
}

void NeedStrip::paintWork(QPainter& painter) const
{
    const QFont small = Theme::font(TextRole::Axis);
    const QFontMetricsF metrics(small);
    painter.setFont(Theme::font(TextRole::Strong));
    painter.setPen(colours().ink);
    painter.drawText(QRectF(0, kDays, kNames - 8, 24), Qt::AlignLeft | Qt::AlignVCenter,
                     tr("Work"));
    std::array<double, 2> named{}; // to here names stand already, in each line
    for (const WorkTick& work : m_strip.work) {
        if (work.atPace)
            continue;
        const double wide = tallyWidth(work.films, kTally);
        const double x = std::min(xOf(work.at), room().right() - wide);
        painter.setPen(colours().ink);
        paintTally(painter, QRectF(x, kDays + 5, wide, kTally), Qt::AlignLeft, work.films);
        if (work.name.isEmpty())
            continue;
        // Where the strip ends beside it the name begins before its marks.
        const QString name = oneLine(work.name, metrics, kWidestWorkName);
        const double left = std::min(x, room().right() - metrics.horizontalAdvance(name));
        const auto free =
            std::find_if(named.begin(), named.end(), [&](double taken) { return taken <= left; });
        if (free == named.end())
            continue;
        painter.setFont(small);
        painter.setPen(colours().quiet);
        painter.drawText(QPointF(left, kDays + kTally + 19 +
                                           kWorkName * static_cast<double>(free - named.begin())),
                         name);
        *free = left + metrics.horizontalAdvance(name) + 8;
    }
}

// Quieter, since nobody said that it comes. Where loads come closer than their marks are wide some
// are left out: how many films it is in all stands beside them.
void NeedStrip::paintPace(QPainter& painter) const
{
    if (m_strip.pace.isEmpty())
        return;
    const double top = kDays + kWork;
    const QFont small = Theme::font(TextRole::Axis);
    painter.setPen(colours().ink);
    painter.setFont(Theme::font(TextRole::Strong));
    painter.drawText(QRectF(0, top, kNames - 8, 16), Qt::AlignLeft | Qt::AlignVCenter,
                     tr("At your pace"));
    painter.setFont(small);
    painter.setPen(colours().quiet);
    painter.drawText(QRectF(0, top + 15, kNames - 8, 17), Qt::AlignLeft | Qt::AlignVCenter,
                     oneLine(m_strip.pace, QFontMetricsF(small), kNames - 8));
    double drawn = 0; // to here marks stand already
    for (const WorkTick& work : m_strip.work) {
        const double wide = tallyWidth(work.films, kTally);
        const double x = std::min(xOf(work.at), room().right() - wide);
        if (!work.atPace || x < drawn)
            continue;
        paintTally(painter, QRectF(x, top + 5, wide, kTally), Qt::AlignLeft, work.films);
        drawn = x + wide + 4;
    }
}

// The tool tip has them all.
QString NeedStrip::wordsIn(const NeedBar& bar, const QFontMetricsF& metrics, double width)
{
    for (const QString& words : QStringList(bar.text) + bar.shorter) {
        const QString line = oneLine(words, metrics, 1e6); // a name may hold anything
        if (metrics.horizontalAdvance(line) <= width)
            return line;
    }
    return {};
}

void NeedStrip::paintBar(QPainter& painter, const QRectF& rect, const NeedRow& row,
                         const NeedBar& bar) const
{
    const bool stands = bar.kind == cupboard::StretchKind::Stands;
    const bool missing = bar.kind == cupboard::StretchKind::Missing;
    const QColor colour = missing ? colours().red : colourOf(row.role);
    QPainterPath shape;
    shape.addRoundedRect(rect, 5, 5);
    // On the red screen no shade leaves room for words that can be read: the bars are tinted.
    const QColor filled = Theme::instance().isDarkRoom() ? colours().selected : colour;
    painter.fillPath(shape, stands ? filled : colours().card);
    if (missing) {
        painter.save();
        painter.setClipPath(shape);
        paintHatch(painter, rect, colours().hatch);
        painter.restore();
    }
    painter.setPen(QPen(colour, 1.5));
    painter.drawPath(shape);
    const QFont font = Theme::font(TextRole::Axis);
    const QRectF words = rect.adjusted(6, 0, -4, 0);
    const QString text = wordsIn(bar, QFontMetricsF(font), words.width());
    painter.setFont(font);
    if (missing && !text.isEmpty()) { // over the hatching the words need a ground of their own
        const double wide = QFontMetricsF(font).horizontalAdvance(text);
        painter.fillRect(QRectF(words.left() - 2, rect.top() + 4, wide + 4, rect.height() - 8),
                         colours().card);
    }
    painter.setPen(stands ? wordsOn(filled) : missing ? colours().red : colours().ink);
    painter.drawText(words, Qt::AlignLeft | Qt::AlignVCenter, text);
}

void NeedStrip::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Colours& c = colours();
    const QFont axis = Theme::font(TextRole::Axis);
    const QFontMetricsF metrics(axis);
    const double foot = height() - kLegend;
    double written = room().left() - 20;
    painter.setFont(axis);
    const auto day = [&](double x, const QString& text) {
        const double wide = metrics.horizontalAdvance(text);
        const double left = std::clamp(x - wide / 2, room().left() - 10, room().right() - wide);
        if (left < written + 8)
            return;
        painter.setPen(c.quiet);
        painter.drawText(QRectF(left, 0, wide + 1, kDays - 4), Qt::AlignLeft | Qt::AlignVCenter,
                         text);
        written = left + wide;
    };
    day(room().left(), tr("today"));
    for (const StripView::Week& week : m_strip.weeks) {
        const double x = xOf(week.at);
        painter.setPen(c.hairline);
        painter.drawLine(QPointF(x, kDays), QPointF(x, foot));
        day(x, week.day);
    }
    paintWork(painter);
    paintPace(painter);
    double top = kDays + workHeight();
    for (const NeedRow& row : m_strip.rows) {
        const QFont strong = Theme::font(TextRole::Strong);
        painter.setFont(strong);
        painter.setPen(c.ink);
        double below = top;
        for (const QString& line : nameLines(row)) {
            painter.drawText(QRectF(0, below, kNames - 8, kName), Qt::AlignLeft | Qt::AlignVCenter,
                             line);
            below += kName;
        }
        painter.setFont(axis);
        painter.setPen(c.quiet);
        painter.drawText(QRectF(0, below, kNames - 8, kDetail), Qt::AlignLeft | Qt::AlignVCenter,
                         oneLine(row.detail, metrics, kNames - 8));
        for (const NeedBar& bar : row.bars)
            paintBar(painter, barRect(row, top, bar), row, bar);
        top += heightOf(row);
    }
    painter.setFont(axis);
    painter.setPen(c.quiet);
    painter.drawText(QRectF(0, foot, width(), kLegend), Qt::AlignLeft | Qt::AlignVCenter,
                     oneLine(tr("solid: stands on the shelf · outlined: from a packet here · "
                                "hatched: missing"),
                             metrics, width()));
}

} // namespace ullage::app
