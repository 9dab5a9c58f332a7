// Labels drawn, and sheets of them.
#pragma once

#include "app/paper/label_layout.h"
#include "app/paper/label_sheet.h"
#include "core/chemistry/result.h"

#include <QByteArray>
#include <QPageLayout>

#include <vector>

class QPagedPaintDevice;
class QPainter;

namespace ullage::app
{

/// Labels of one printing.
struct LabelJob {
    LabelSheet sheet;
    std::vector<LabelFace> faces;
    int firstFree = 0;     ///< of the first sheet, from 0
    bool outlines = false; ///< edges of the labels too: for plain paper, to be cut
};

/// Lays out the labels of these bottles for this sheet. Refuses the first that does not fit
/// (TooLong, `field` "label", `subject` the name; with `text` "code" it is the id that is too long
/// for the square code), a first label that is not on the sheet (OutOfRange) and no label at all
/// (Missing).
Result<LabelJob> labelJob(const LabelSheet& sheet, const std::vector<LabelWords>& labels,
                          int firstFree);

int sheetsOf(const LabelJob& job);
/// A page of the sheet's size without margins.
QPageLayout pageOf(const LabelSheet& sheet);

/// One label with its corner at the painter's origin; the painter counts as beginPaper() says.
void paintLabel(QPainter& painter, const LabelFace& face);
/// What stands on one sheet, from 0.
void paintSheet(QPainter& painter, const LabelJob& job, int sheet);
/// All of it, a page a sheet; the device is set up by pageOf().
void paintLabels(const LabelJob& job, QPagedPaintDevice& device);

/// The same as a PDF of exactly those millimetres.
QByteArray labelsPdf(const LabelJob& job, const QString& title);

} // namespace ullage::app
