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

/// First line of each page, in the layout of the device; a day's heading never stands last on one,
/// and a day that goes on has its heading again.
std::vector<std::vector<DayPrintLine>> dayPages(const DayPrint& print, double linesPerPage);

/// Paints all pages (of a printer, those of its range).
void paintDays(const DayPrint& print, QPagedPaintDevice& device);

/// Opens the preview, from where it is printed.
void previewDays(const DayPrint& print, QWidget* parent);

} // namespace ullage::app
