// Pages drawn, and made into PDF.
#pragma once

#include "app/paper/paper_document.h"

#include <QByteArray>

class QPageLayout;
class QPagedPaintDevice;

namespace ullage::app
{

enum class PaperSize { A4, Letter };

/// In mm.
QSizeF sheetOf(PaperSize size);
/// A full page without margins: the document has its own.
QPageLayout pageOf(PaperSize size);

/// All pages, on whatever sheet the device has; of a printer those of its range.
void paintDocument(const PaperDocument& document, QPagedPaintDevice& device);

QByteArray documentPdf(const PaperDocument& document, PaperSize size);

} // namespace ullage::app
