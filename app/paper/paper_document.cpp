#include "app/paper/paper_document.h"

#include <QCoreApplication>
#include <QPolygonF>

#include <algorithm>
#include <numeric>

namespace ullage::app
{

namespace
{

struct PaperTr {
    Q_DECLARE_TR_FUNCTIONS(Paper)
};

constexpr double kTitleLetters = 6;
constexpr double kColumnGap = 4;
constexpr double kThin = 0.15;
constexpr double kThick = 0.4;
constexpr double kChartHeight = 46;
constexpr double kWritten = 16; // a time by hand
constexpr double kSmallestCell = 2.6;
constexpr double kSmallerBy = 0.2;
constexpr qsizetype kShort = 24; // characters of a figure with its unit, of a moment
constexpr qsizetype kDay = 16;   // of a day

class PageFiller
{
public:
    PageFiller(const PaperDocument& document, const QSizeF& sheet)
        : m_document(&document), m_sheet(sheet)
    {
        newPage();
    }

    [[nodiscard]] double letters() const { return m_document->letters; }
    [[nodiscard]] double width() const { return m_sheet.width() - 2 * kPaperMargin; }
    [[nodiscard]] double bottom() const { return m_sheet.height() - kPaperMargin - 6; }

    void newPage()
    {
        m_pages.emplace_back();
        m_y = kPaperMargin;
        const Letters title{kTitleLetters, true};
        for (const QString& line : wrappedLines(m_document->title, title, width()))
            put(line, title);
        for (const QString& line : wrappedLines(m_document->under, {letters()}, width()))
            put(line, {letters()});
        m_y += 2;
        m_top = m_y;
    }
    // Whether it is a new page now.
    bool needs(double height)
    {
        if (m_y + height <= bottom() || m_y <= m_top)
            return false;
        newPage();
        return true;
    }
    void add(const PaperHeading& heading)
    {
        const Letters bold{letters() * 1.25, true};
        const QStringList lines = wrappedLines(heading.text, bold, width());
        needs(double(lines.size()) * bold.mm * kLinePitch +
              6 * letters()); // not alone at the bottom
        if (m_y > m_top)
            m_y += letters();
        for (const QString& line : lines)
            put(line, bold);
        m_y += 0.8;
    }
    void add(const PaperWords& words)
    {
        const Letters size{letters(), words.bold};
        for (const QString& line : wrappedLines(words.text, size, width())) {
            needs(size.mm * kLinePitch);
            put(line, size);
        }
        m_y += letters() * 0.3;
    }
    void add(const PaperBlank& blank)
    {
        const double high = 3 * letters();
        needs(high);
        m_y += high;
        const double label = textWidth(blank.label, {letters()}) + 2;
        page().lines.push_back({{kPaperMargin, m_y - 1}, blank.label, {letters()}});
        stroke({kPaperMargin + label, m_y}, {kPaperMargin + width(), m_y}, kThin);
    }
    void add(const PaperTable& table);
    void add(const PaperChart& chart);

    std::vector<PaperPage> done()
    {
        for (std::size_t i = 0; i < m_pages.size(); ++i) {
            const QString number = PaperTr::tr("Page %1 of %2").arg(i + 1).arg(m_pages.size());
            const double at = m_sheet.width() - kPaperMargin - textWidth(number, {2.6});
            m_pages[i].lines.push_back({{at, m_sheet.height() - kPaperMargin}, number, {2.6}});
        }
        return std::move(m_pages);
    }

private:
    PaperPage& page() { return m_pages.back(); }
    void put(const QString& line, const Letters& size)
    {
        page().lines.push_back({{kPaperMargin, m_y + kBaseline * size.mm}, line, size});
        m_y += size.mm * kLinePitch;
    }
    void stroke(const QPointF& from, const QPointF& to, double width)
    {
        page().strokes.push_back({QPolygonF{from, to}, width, false});
    }
    void row(const PaperTable& table, const std::vector<double>& widths, const QStringList& cells,
             bool bold);
    [[nodiscard]] double roomIn(const PaperTable& table) const;
    [[nodiscard]] double lettersFor(const PaperTable& table) const;
    [[nodiscard]] std::vector<double> widthsOf(const PaperTable& table) const;

    const PaperDocument* m_document;
    QSizeF m_sheet;
    std::vector<PaperPage> m_pages;
    double m_y = 0;
    double m_top = 0;
    double m_cell = 0; // letters of the table in hand
};

double longestWord(const QString& text, const Letters& letters)
{
    double most = 0;
    for (const QString& word : text.split(u' ', Qt::SkipEmptyParts))
        most = std::max(most, textWidth(word, letters));
    return most;
}

QStringList titlesOf(const PaperTable& table)
{
    QStringList titles;
    for (const PaperColumn& column : table.columns)
        titles << column.title;
    return titles;
}

// A figure stays with its unit, a day with its year, and what stands in a column of figures.
bool staysWhole(const QString& cell, const PaperColumn& column)
{
    const auto isFigure = [](QChar c) {
        return c.isDigit() || c.category() == QChar::Number_Other;
    };
    return cell.size() <= kShort &&
           (column.right || std::any_of(cell.begin(), cell.end(), isFigure));
}

// Of the columns of a table with letters of this size, mm.
struct ColumnWidths {
    std::vector<double> wish;  // of the widest cell
    std::vector<double> whole; // of what is to stay whole
    std::vector<double> least; // of the longest word
    std::vector<double> firm;  // of that, and of what is whole and as short as a day

    ColumnWidths(const PaperTable& table, double mm)
        : wish(table.columns.size()), whole(wish.size()), least(wish.size()), firm(wish.size())
    {
        look(table, titlesOf(table), {mm, true}, true);
        for (std::size_t i = 0; i < table.rows.size(); ++i)
            look(table, table.rows[i], {mm, table.total && i + 1 == table.rows.size()}, false);
        for (std::size_t i = 0; i < wish.size(); ++i) {
            if (table.columns[i].tick)
                wish[i] = least[i] = mm * 1.2;
            if (table.columns[i].write) {
                least[i] = std::max(least[i], kWritten);
                wish[i] = std::max(wish[i], kWritten);
            }
            firm[i] = std::max(firm[i], least[i]);
        }
    }

private:
    void look(const PaperTable& table, const QStringList& cells, const Letters& size, bool heading)
    {
        for (qsizetype i = 0; i < cells.size(); ++i) {
            const auto column = static_cast<std::size_t>(i);
            const double width = textWidth(cells[i], size);
            wish[column] = std::max(wish[column], width);
            least[column] = std::max(least[column], longestWord(cells[i], size));
            if (!heading && staysWhole(cells[i], table.columns[column]))
                whole[column] = std::max(whole[column], width);
            if (!heading && staysWhole(cells[i], table.columns[column]) && cells[i].size() <= kDay)
                firm[column] = std::max(firm[column], width);
        }
    }
};

double sumOf(const std::vector<double>& widths)
{
    return std::accumulate(widths.begin(), widths.end(), 0.0);
}

double PageFiller::roomIn(const PaperTable& table) const
{
    return width() - kColumnGap * double(table.columns.size() - 1);
}

// Smaller where not every word, figure and day would stay whole.
double PageFiller::lettersFor(const PaperTable& table) const
{
    double mm = letters();
    while (mm - kSmallerBy >= kSmallestCell && sumOf(ColumnWidths(table, mm).firm) > roomIn(table))
        mm -= kSmallerBy;
    return mm;
}

// As wide as their widest cell where there is room, else no narrower than their longest word, nor
// than what is to stay whole: where that takes too much, the narrowest columns come first, which
// are figures and days, and names are broken.
std::vector<double> PageFiller::widthsOf(const PaperTable& table) const
{
    const double room = roomIn(table);
    ColumnWidths columns(table, m_cell);
    std::vector<double>& wish = columns.wish;
    std::vector<double>& least = columns.least;
    const std::vector<double>& whole = columns.whole;
    const double wished = sumOf(wish);
    if (wished <= room)
        return wish;
    std::vector<std::size_t> narrowest(wish.size());
    std::iota(narrowest.begin(), narrowest.end(), std::size_t(0));
    std::stable_sort(narrowest.begin(), narrowest.end(),
                     [&](std::size_t a, std::size_t b) { return whole[a] < whole[b]; });
    double needed = sumOf(least);
    for (const std::size_t i : narrowest) {
        const double more = whole[i] - least[i];
        if (more <= 0 || needed + more > room)
            continue;
        least[i] = whole[i];
        needed += more;
    }
    for (std::size_t i = 0; i < wish.size(); ++i) {
        wish[i] = needed <= room ? least[i] + (wish[i] - least[i]) * (room - needed) /
                                                  std::max(wished - needed, 1e-6)
                                 : wish[i] * room / wished;
    }
    return wish;
}

void PageFiller::row(const PaperTable& table, const std::vector<double>& widths,
                     const QStringList& cells, bool bold)
{
    const Letters size{m_cell, bold};
    double x = kPaperMargin;
    double high = size.mm * kLinePitch;
    for (std::size_t i = 0; i < widths.size(); ++i) {
        const PaperColumn& column = table.columns[i];
        if (column.tick && !bold) {
            const double side = m_cell;
            const QPointF corner(x, m_y + 0.1 * m_cell);
            page().strokes.push_back({QPolygonF(QRectF(corner, QSizeF(side, side))), 0.2, false});
        }
        // Half a hundredth: what was measured as one text must fit as one.
        const QStringList lines =
            wrappedLines(cells[static_cast<qsizetype>(i)], size, widths[i] + 0.05);
        double y = m_y;
        for (const QString& line : lines) {
            const double at = column.right ? x + widths[i] - textWidth(line, size) : x;
            page().lines.push_back({{at, y + kBaseline * size.mm}, line, size});
            y += size.mm * kLinePitch;
        }
        high = std::max(high, y - m_y);
        x += widths[i] + kColumnGap;
    }
    m_y += high + 0.35 * m_cell;
}

void PageFiller::add(const PaperTable& table)
{
    if (table.rows.empty())
        return add(PaperWords{table.none});
    m_cell = lettersFor(table);
    const std::vector<double> widths = widthsOf(table);
    const auto heightOf = [&](const QStringList& cells, bool bold) {
        qsizetype most = 1;
        for (std::size_t i = 0; i < widths.size(); ++i)
            most = std::max(most, wrappedLines(cells[static_cast<qsizetype>(i)], {m_cell, bold},
                                               widths[i] + 0.05)
                                      .size());
        return (double(most) * kLinePitch + 0.35) * m_cell;
    };
    const QStringList titles = titlesOf(table);
    const auto head = [&] {
        row(table, widths, titles, true);
        stroke({kPaperMargin, m_y - 0.25 * m_cell}, {kPaperMargin + width(), m_y - 0.25 * m_cell},
               kThick);
        m_y += 0.2 * m_cell;
    };
    needs(heightOf(titles, true) + heightOf(table.rows.front(), false) + 1);
    head();
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        const bool total = table.total && i + 1 == table.rows.size();
        if (needs(heightOf(table.rows[i], total)))
            head();
        if (total) {
            stroke({kPaperMargin, m_y - 0.15 * m_cell},
                   {kPaperMargin + width(), m_y - 0.15 * m_cell}, kThick);
            m_y += 0.2 * m_cell;
        }
        row(table, widths, table.rows[i], total);
        if (!total)
            stroke({kPaperMargin, m_y - 0.2 * m_cell}, {kPaperMargin + width(), m_y - 0.2 * m_cell},
                   0.08);
    }
    m_y += 0.6 * m_cell;
}

void PageFiller::add(const PaperChart& chart)
{
    const Letters small{2.6};
    needs(kChartHeight + 12);
    add(PaperHeading{chart.title});
    double figures = 0;
    for (const auto& tick : chart.yTicks)
        figures = std::max(figures, textWidth(tick.second, small));
    const QRectF plot(kPaperMargin + figures + 2, m_y + 1, width() - figures - 6,
                      kChartHeight - 12);
    const auto at = [&](const QPointF& value) {
        return QPointF(plot.left() + value.x() / chart.xMax * plot.width(),
                       plot.bottom() - value.y() / chart.yMax * plot.height());
    };
    stroke(plot.bottomLeft(), plot.bottomRight(), 0.25);
    stroke(plot.bottomLeft(), plot.topLeft(), 0.25);
    for (const auto& [value, text] : chart.yTicks) {
        const double y = at({0, value}).y();
        stroke({plot.left(), y}, {plot.right(), y}, 0.06);
        page().lines.push_back(
            {{plot.left() - 1.5 - textWidth(text, small), y + 0.9}, text, small});
    }
    for (const auto& [value, text] : chart.xTicks) {
        const double x = at({value, 0}).x();
        const double wide = textWidth(text, small);
        stroke({x, plot.bottom()}, {x, plot.bottom() + 1}, 0.2);
        // Those at the ends stay within the page.
        const double left = std::clamp(x - wide / 2, kPaperMargin,
                                       std::max(kPaperMargin, kPaperMargin + width() - wide));
        page().lines.push_back({{left, plot.bottom() + 4}, text, small});
    }
    double legend = plot.left();
    for (const PaperCurve& curve : chart.curves) {
        PaperStroke line{{}, 0.45, curve.dashed};
        for (const QPointF& point : curve.points)
            line.points << at(point);
        page().strokes.push_back(line);
        const double y = plot.bottom() + 8.5;
        page().strokes.push_back(
            {QPolygonF{QPointF(legend, y), QPointF(legend + 9, y)}, 0.45, curve.dashed});
        page().lines.push_back({{legend + 10.5, y + 0.9}, curve.name, small});
        legend += 16 + textWidth(curve.name, small);
    }
    m_y = plot.bottom() + 11;
}

} // namespace

std::vector<PaperPage> paperPages(const PaperDocument& document, const QSizeF& sheet)
{
    PageFiller filler(document, sheet);
    for (const PaperBlock& block : document.blocks)
        std::visit([&](const auto& one) { filler.add(one); }, block);
    return filler.done();
}

} // namespace ullage::app
