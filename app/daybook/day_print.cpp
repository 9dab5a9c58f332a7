#include "app/daybook/day_print.h"

#include "app/widgets/paper_preview.h"
#include "app/widgets/plain_text.h"

#include <QCoreApplication>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QPrinter>

#include <memory>

namespace ullage::app
{

namespace
{

struct Words {
    Q_DECLARE_TR_FUNCTIONS(DayPrint)
};

// Heights in points; a line that has a detail below it takes two.
constexpr double kLine = 14;
constexpr double kTop = 40;    // of the page's heading
constexpr double kBottom = 24; // of the page's number
constexpr double kTime = 56;   // from the edge to the words

QFont font(double points, bool bold = false)
{
    QFont font;
    font.setPointSizeF(points);
    font.setBold(bold);
    return font;
}

double linesOf(const DayPrintLine& line)
{
    constexpr double kHeading = 1.7; // room above it
    return line.heading ? kHeading : line.detail.isEmpty() ? 1 : 2;
}

class Painter
{
public:
    Painter(const DayPrint& print, QPagedPaintDevice& device)
        : m_print(print), m_painter(&device),
          m_scale(device.logicalDpiY() / 72.0), // points to the device's dots
          m_width(device.width() / m_scale), m_height(device.height() / m_scale)
    {
        m_painter.scale(m_scale, m_scale);
    }

    [[nodiscard]] double linesPerPage() const { return (m_height - kTop - kBottom) / kLine; }

    void page(const std::vector<DayPrintLine>& lines, int number, int pages)
    {
        text({0, 0, m_width, 18}, m_print.heading, sized(12, true));
        text({0, 18, m_width, 14}, m_print.filter, sized(8.5));
        text({0, m_height - 14, m_width, 14}, Words::tr("Page %1 of %2").arg(number).arg(pages),
             sized(8.5), Qt::AlignRight);
        double y = kTop;
        for (const DayPrintLine& line : lines) {
            const double height = linesOf(line) * kLine;
            if (line.heading) {
                text({0, y + height - kLine, m_width, kLine}, line.title, sized(9.5, true));
            } else {
                QFont title = sized(9.5);
                title.setStrikeOut(line.taken);
                text({0, y, kTime, kLine}, line.time, sized(9.5));
                text({kTime, y, m_width - kTime, kLine}, line.title, title);
                text({kTime, y + kLine, m_width - kTime, kLine}, line.detail, sized(8.5));
            }
            y += height;
        }
    }

private:
    // The painter counts in points already, so a font's size must not be scaled by the device.
    [[nodiscard]] QFont sized(double points, bool bold = false) const
    {
        QFont result = font(points, bold);
        result.setPointSizeF(points / m_scale);
        return result;
    }
    void text(const QRectF& rect, const QString& words, const QFont& font,
              Qt::Alignment alignment = Qt::AlignLeft)
    {
        if (words.isEmpty())
            return;
        m_painter.setFont(font);
        m_painter.drawText(rect,
                           static_cast<int>(alignment | Qt::AlignVCenter) | Qt::TextSingleLine,
                           oneLine(words, QFontMetricsF(font, m_painter.device()), rect.width()));
    }

    const DayPrint& m_print;
    QPainter m_painter;
    double m_scale;
    double m_width;
    double m_height;
};

} // namespace

std::vector<std::vector<DayPrintLine>> dayPages(const DayPrint& print, double linesPerPage)
{
    std::vector<std::vector<DayPrintLine>> pages;
    double left = 0;
    DayPrintLine day;
    for (std::size_t i = 0; i < print.lines.size(); ++i) {
        const DayPrintLine& line = print.lines[i];
        if (line.heading)
            day = line;
        double needed = linesOf(line);
        if (line.heading && i + 1 < print.lines.size())
            needed += linesOf(print.lines[i + 1]);
        if (pages.empty() || needed > left) {
            pages.emplace_back();
            left = linesPerPage;
            if (!line.heading) {
                pages.back().push_back(day);
                left -= linesOf(day);
            }
        }
        pages.back().push_back(line);
        left -= linesOf(line);
    }
    if (pages.empty())
        pages.emplace_back();
    return pages;
}

void paintDays(const DayPrint& print, QPagedPaintDevice& device)
{
    int from = 0;
    int until = 0;
    if (const auto* printer = dynamic_cast<const QPrinter*>(&device)) {
        from = printer->fromPage();
        until = printer->toPage();
    }
    Painter painter(print, device);
    const auto pages = dayPages(print, painter.linesPerPage());
    bool first = true;
    for (int i = 0; i < static_cast<int>(pages.size()); ++i) {
        if ((from > 0 && i + 1 < from) || (until > 0 && i + 1 > until))
            continue;
        if (!first)
            device.newPage();
        first = false;
        painter.page(pages[static_cast<std::size_t>(i)], i + 1, static_cast<int>(pages.size()));
    }
}

void previewDays(const DayPrint& print, QWidget* parent)
{
    openPaperPreview(
        Words::tr("Print the day book"), std::make_shared<QPrinter>(),
        [print](QPrinter& printer) { paintDays(print, printer); }, parent);
}

} // namespace ullage::app
