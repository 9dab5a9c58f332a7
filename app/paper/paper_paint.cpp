#include "app/paper/paper_paint.h"

#include <QBuffer>
#include <QPageLayout>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QPdfWriter>

namespace ullage::app
{

namespace
{

void paintPage(QPainter& painter, const PaperPage& page)
{
    for (const PaperStroke& stroke : page.strokes) {
        QPen pen(Qt::black, stroke.width * kUnitsPerMillimetre,
                 stroke.dashed ? Qt::DashLine : Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
        painter.setPen(pen);
        QPolygonF points;
        for (const QPointF& point : stroke.points)
            points << units(point);
        painter.drawPolyline(points);
    }
    painter.setPen(Qt::black);
    for (const LabelLine& line : page.lines)
        drawLine(painter, line.baseline, line.text, line.letters);
}

} // namespace

QSizeF sheetOf(PaperSize size)
{
    return QPageSize(size == PaperSize::A4 ? QPageSize::A4 : QPageSize::Letter)
        .size(QPageSize::Millimeter);
}

QPageLayout pageOf(PaperSize size)
{
    QPageLayout layout(QPageSize(size == PaperSize::A4 ? QPageSize::A4 : QPageSize::Letter),
                       QPageLayout::Portrait, {});
    layout.setMode(QPageLayout::FullPageMode);
    return layout;
}

void paintDocument(const PaperDocument& document, QPagedPaintDevice& device)
{
    const QSizeF sheet = device.pageLayout().fullRect(QPageLayout::Millimeter).size();
    const std::vector<PaperPage> pages = paperPages(document, sheet);
    const QPageRanges asked = device.pageRanges();
    QPainter painter(&device);
    bool first = true;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (!asked.isEmpty() && !asked.contains(static_cast<int>(i) + 1))
            continue;
        if (!first)
            device.newPage();
        first = false;
        beginPaper(painter, device);
        paintPage(painter, pages[i]);
    }
}

QByteArray documentPdf(const PaperDocument& document, PaperSize size)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setResolution(1200);
        writer.setPageLayout(pageOf(size));
        writer.setTitle(document.title);
        writer.setCreator(QStringLiteral("Ullage"));
        paintDocument(document, writer);
    }
    return bytes;
}

} // namespace ullage::app
