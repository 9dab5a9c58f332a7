// What is going to be printed, seen before.
#pragma once

#include <QString>

#include <functional>
#include <memory>

class QPrinter;
class QPrintPreviewDialog;
class QWidget;

namespace ullage::app
{

/// Opens the pages that `paint` draws on the printer, from where they are printed. Both live as
/// long as the dialog, which deletes itself. While the red screen is on it is red.
QPrintPreviewDialog* openPaperPreview(const QString& title, std::shared_ptr<QPrinter> printer,
                                      std::function<void(QPrinter&)> paint, QWidget* parent);

} // namespace ullage::app
