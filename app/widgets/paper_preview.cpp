#include "app/widgets/paper_preview.h"

#include "app/widgets/plain_text.h"
#include "app/widgets/red_paper.h"

#include <QComboBox>
#include <QPrintPreviewDialog>
#include <QPrinter>
#include <QSize>

#include <utility>

namespace ullage::app
{

namespace
{

constexpr QSize kSize(900, 660); // within a screen of 1024 × 700

} // namespace

QPrintPreviewDialog* openPaperPreview(const QString& title, std::shared_ptr<QPrinter> printer,
                                      std::function<void(QPrinter&)> paint, QWidget* parent)
{
    auto* dialog = new QPrintPreviewDialog(printer.get(), parent);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setWindowTitle(plainTitle(title));
    showPreviewInRed(*dialog);
    // Qt gives the box of zooms room for its letters and none for the padding that ours have.
    for (auto* zoom : dialog->findChildren<QComboBox*>())
        zoom->setMinimumWidth(zoom->sizeHint().width() +
                              zoom->fontMetrics().horizontalAdvance(QStringLiteral("000")));
    QObject::connect(dialog, &QPrintPreviewDialog::paintRequested, dialog,
                     [printer = std::move(printer), paint = std::move(paint)](QPrinter* paper) {
                         paint(*paper);
                     });
    dialog->resize(kSize);
    dialog->open();
    return dialog;
}

} // namespace ullage::app
