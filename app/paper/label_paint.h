// Labels drawn, and sheets of them.
#pragma once

#include "app/paper/label_layout.h"
#include "app/paper/label_sheet.h"

#include <QByteArray>

#include <vector>

class QPageLayout;
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

/// Why labels cannot be printed.
struct LabelRefusal {
    enum class Why {
        None,         ///< there is no label
        NotOnSheet,   ///< the sheet has no such first label
        CodeTooLarge, ///< as LabelProblem
        WordsTooLong,
    };
    Why why = Why::None;
    QString name;   ///< of the bottle it is about
    int labels = 0; ///< on the sheet
};
/// In a sentence, with what can be done about it.
QString refusalText(const LabelRefusal& refusal);

/// Lays out the labels of these bottles for this sheet, or refuses all with the first that does not
/// fit.
tl::expected<LabelJob, LabelRefusal> labelJob(const LabelSheet& sheet,
                                              const std::vector<LabelWords>& labels, int firstFree);

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
