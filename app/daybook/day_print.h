// The day book on paper.
#pragma once

#include "app/daybook/day_export.h"

#include <QPageLayout>

class QPagedPaintDevice;
class QPrinter;
class QWidget;

namespace ullage::app
{

struct DayPrint {
    QString heading; ///< of every page: "Day book · home.ullage"
    QString filter;  ///< below it: what is shown
    std::vector<DayPrintLine> lines;
};

/// The lines of each page, one page at the least; a day's heading never stands last on one, and a
/// day that goes on has its heading again. An entry takes one of `linesPerPage`, with a detail two,
/// a heading 1.7.
std::vector<std::vector<DayPrintLine>> dayPages(const DayPrint& print, double linesPerPage);

/// Paints all pages (of a printer, those of its range). Lines too long for the paper are cut.
void paintDays(const DayPrint& print, QPagedPaintDevice& device);

/// Opens the preview, from where it is printed; it deletes itself when it is closed.
void previewDays(const DayPrint& print, QWidget* parent);

} // namespace ullage::app
