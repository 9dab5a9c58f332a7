#include "app/paper/label_paint.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>

namespace ullage::app
{

namespace
{

struct LabelSheets {
    Q_DECLARE_TR_FUNCTIONS(LabelSheets)
};

constexpr double kHairline = 0.2; // mm

void paintCode(QPainter& painter, const LabelFace& face)
{
    const QPointF corner =
        face.codeAt.topLeft() + QPointF(kQuietModules, kQuietModules) * face.module;
    painter.save();
    // Modules that touch leave no hairline of white between them.
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(Qt::NoPen);
    painter.setBrush(Qt::black);
    for (int row = 0; row < face.code.side; ++row) {
        for (int column = 0; column < face.code.side; ++column) {
            const int begin = column;
            while (column < face.code.side && face.code.at(column, row))
                ++column;
            if (column > begin)
                painter.drawRect(
                    units(QRectF(corner + QPointF(begin, row) * face.module,
                                 QSizeF((column - begin) * face.module, face.module))));
        }
    }
    painter.restore();
}

void paintBox(QPainter& painter, const LabelBox& box)
{
    painter.drawRoundedRect(units(box.at), 0.5 * kUnitsPerMillimetre, 0.5 * kUnitsPerMillimetre);
    const Letters small{1.7};
    const QString number = QString::number(box.number);
    drawLine(
        painter,
        {box.at.center().x() - textWidth(number, small) / 2, box.at.bottom() - small.mm * 0.25},
        number, small);
    if (box.done)
        painter.drawLine(units(box.at.bottomLeft()), units(box.at.topRight()));
}

} // namespace

QString refusalText(const LabelRefusal& refusal)
{
    using Why = LabelRefusal::Why;
    switch (refusal.why) {
    case Why::None:
        break;
    case Why::NotOnSheet:
        return LabelSheets::tr("There is no such label on the sheet: it has %n.", nullptr,
                               refusal.labels);
    case Why::CodeTooLarge:
        return LabelSheets::tr("The id of %1 is too long for the square code of a label of this "
                               "size: choose a larger one.")
            .arg(refusal.name);
    case Why::WordsTooLong:
        return LabelSheets::tr("What must stand on the label of %1 does not fit one of this size: "
                               "choose a larger one.")
            .arg(refusal.name);
    }
    return LabelSheets::tr("There is no bottle to make a label for.");
}

tl::expected<LabelJob, LabelRefusal> labelJob(const LabelSheet& sheet,
                                              const std::vector<LabelWords>& labels, int firstFree)
{
    using Why = LabelRefusal::Why;
    if (firstFree < 0 || firstFree >= sheet.labels())
        return tl::unexpected(LabelRefusal{Why::NotOnSheet, {}, sheet.labels()});
    if (labels.empty())
        return tl::unexpected(LabelRefusal{Why::None, {}, sheet.labels()});
    LabelJob job{sheet, {}, firstFree, false};
    for (const LabelWords& words : labels) {
        const auto face = labelFace(words, sheet.label);
        if (!face) {
            const bool code = face.error() == LabelProblem::CodeTooLarge;
            return tl::unexpected(LabelRefusal{code ? Why::CodeTooLarge : Why::WordsTooLong,
                                               words.name, sheet.labels()});
        }
        job.faces.push_back(*face);
    }
    return job;
}

int sheetsOf(const LabelJob& job)
{
    const int places = job.firstFree + static_cast<int>(job.faces.size());
    return (places + job.sheet.labels() - 1) / job.sheet.labels();
}

QPageLayout pageOf(const LabelSheet& sheet)
{
    const QPageSize size(sheet.sheet, QPageSize::Millimeter, {}, QPageSize::ExactMatch);
    QPageLayout layout(size, QPageLayout::Portrait, {});
    layout.setMode(QPageLayout::FullPageMode);
    return layout;
}

void paintLabel(QPainter& painter, const LabelFace& face)
{
    painter.setPen(QPen(Qt::black, kHairline * kUnitsPerMillimetre));
    paintCode(painter, face);
    for (const LabelBox& box : face.boxes)
        paintBox(painter, box);
    for (const LabelLine& line : face.lines)
        drawLine(painter, line.baseline, line.text, line.letters);
}

void paintSheet(QPainter& painter, const LabelJob& job, int sheet)
{
    const int perSheet = job.sheet.labels();
    for (int place = 0; place < perSheet; ++place) {
        const int label = sheet * perSheet + place - job.firstFree;
        if (label < 0 || label >= static_cast<int>(job.faces.size()))
            continue;
        const QRectF at = job.sheet.place(place);
        painter.save();
        painter.translate(units(at.topLeft()));
        if (job.outlines) {
            painter.setPen(QPen(Qt::black, kHairline * kUnitsPerMillimetre));
            painter.drawRect(units(QRectF({}, at.size())));
        }
        paintLabel(painter, job.faces[static_cast<std::size_t>(label)]);
        painter.restore();
    }
}

void paintLabels(const LabelJob& job, QPagedPaintDevice& device)
{
    QPainter painter(&device);
    for (int sheet = 0; sheet < sheetsOf(job); ++sheet) {
        if (sheet > 0)
            device.newPage();
        beginPaper(painter, device);
        paintSheet(painter, job, sheet);
    }
}

QByteArray labelsPdf(const LabelJob& job, const QString& title)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setResolution(1200);
        writer.setPageLayout(pageOf(job.sheet));
        writer.setTitle(title);
        writer.setCreator(QStringLiteral("Ullage"));
        paintLabels(job, writer);
    }
    return bytes;
}

} // namespace ullage::app
