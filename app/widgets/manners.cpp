#include "app/widgets/manners.h"

#include <QDialog>
#include <QEvent>
#include <QLayout>
#include <QPushButton>
#include <QScreen>

#include <algorithm>

namespace ullage::app
{

namespace
{

// Wrapped words need more height than the size hint knows of. If they get it only after the
// dialog has been placed, its buttons slide off the screen.
void growToWords(QDialog& dialog)
{
    QLayout* layout = dialog.layout();
    if (!layout || !layout->hasHeightForWidth() || dialog.testAttribute(Qt::WA_Resized))
        return;
    layout->activate();
    const QSize hint = dialog.sizeHint().expandedTo(dialog.minimumSizeHint());
    const int wanted = std::max(hint.height(), layout->totalHeightForWidth(hint.width()));
    dialog.resize(hint.width(), wanted);
    // As a size that nobody asked for, so that it may still follow the words.
    dialog.setAttribute(Qt::WA_Resized, false);
}

// Words that come while it is open push nothing out of sight either. It never shrinks by itself.
void growWithWords(QDialog& dialog)
{
    QLayout* layout = dialog.layout();
    if (!layout)
        return;
    layout->activate();
    const int wanted = layout->hasHeightForWidth() ? layout->totalHeightForWidth(dialog.width())
                                                   : layout->totalMinimumSize().height();
    if (wanted <= dialog.height())
        return;
    const bool sizedByUser = dialog.testAttribute(Qt::WA_Resized);
    dialog.resize(dialog.width(), wanted);
    dialog.setAttribute(Qt::WA_Resized, sizedByUser);
}

void keepOnScreen(QDialog& dialog)
{
    const QRect room = dialog.screen()->availableGeometry();
    QRect frame = dialog.frameGeometry();
    frame.moveRight(std::min(frame.right(), room.right()));
    frame.moveBottom(std::min(frame.bottom(), room.bottom()));
    frame.moveLeft(std::max(frame.left(), room.left()));
    frame.moveTop(std::max(frame.top(), room.top()));
    if (frame.topLeft() != dialog.frameGeometry().topLeft())
        dialog.move(frame.topLeft());
}

class DialogManners : public QObject
{
public:
    static DialogManners& instance()
    {
        static DialogManners manners;
        return manners;
    }

    bool eventFilter(QObject* watched, QEvent* event) override
    {
        auto* dialog = qobject_cast<QDialog*>(watched);
        if (!dialog || !dialog->isWindow())
            return false;
        if (event->type() == QEvent::Show && !event->spontaneous())
            growToWords(*dialog);
        else if (event->type() == QEvent::LayoutRequest && dialog->isVisible())
            growWithWords(*dialog);
        else if (event->type() == QEvent::Resize && dialog->isVisible())
            keepOnScreen(*dialog);
        return false;
    }
};

} // namespace

void teachManners(QWidget* widget)
{
    if (auto* button = qobject_cast<QPushButton*>(widget)) {
        if (!qobject_cast<QDialog*>(button->window()))
            button->setAutoDefault(true);
    } else if (qobject_cast<QDialog*>(widget)) {
        widget->installEventFilter(&DialogManners::instance());
    }
}

} // namespace ullage::app
