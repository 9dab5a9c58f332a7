#include "app/widgets/paper_preview.h"

#include "app/widgets/plain_text.h"
#include "app/widgets/red_paper.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPrintPreviewDialog>
#include <QPrinter>
#include <QSize>

#include <utility>

namespace ullage::app
{

namespace
{

constexpr QSize kSize(900, 660); // within a screen of 1024 × 700

// Qt reckons the box without the padding of ours, and made its field before it stood in the box: it
// took what a field by itself has, which pushes the figure out of sight.
void fitZoom(QComboBox& zoom)
{
    if (QLineEdit* field = zoom.lineEdit()) {
        field->setStyleSheet(QStringLiteral("border: none; padding: 0; min-height: 0;"));
        field->setMinimumSize(0, 0);
    }
    zoom.setMinimumWidth(zoom.sizeHint().width() +
                         zoom.fontMetrics().horizontalAdvance(QStringLiteral("000")));
}

} // namespace

QPrintPreviewDialog* openPaperPreview(const QString& title, std::shared_ptr<QPrinter> printer,
                                      std::function<void(QPrinter&)> paint, QWidget* parent)
{
    auto* dialog = new QPrintPreviewDialog(printer.get(), parent);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setWindowTitle(plainTitle(title));
    showPreviewInRed(*dialog);
    for (auto* zoom : dialog->findChildren<QComboBox*>())
        fitZoom(*zoom);
    QObject::connect(dialog, &QPrintPreviewDialog::paintRequested, dialog,
                     [printer = std::move(printer), paint = std::move(paint)](QPrinter* paper) {
                         paint(*paper);
                     });
    dialog->resize(kSize);
    dialog->open();
    return dialog;
}

} // namespace ullage::app
