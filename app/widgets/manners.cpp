#include "app/widgets/manners.h"

#include "app/widgets/red_paper.h"
#include "app/widgets/screen_room.h"
#include "app/widgets/scroll_room.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QDialog>
#include <QEvent>
#include <QKeyEvent>
#include <QLayout>
#include <QLineEdit>
#include <QMainWindow>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTabBar>

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
    if (!layout || dialog.testAttribute(Qt::WA_Resized))
        return;
    layout->activate();
    const QSize hint =
        dialog.sizeHint().expandedTo(dialog.minimumSizeHint()).boundedTo(roomOnScreen(dialog));
    const int wanted = layout->hasHeightForWidth()
                           ? std::max(hint.height(), layout->totalHeightForWidth(hint.width()))
                           : hint.height();
    dialog.resize(hint.width(), wanted);
    // As a size that nobody asked for, so that it may still follow the words.
    dialog.setAttribute(Qt::WA_Resized, false);
}

const char* const kFieldsShown = "fieldsShown";

int fieldsIn(const QDialog& dialog)
{
    const auto all = dialog.findChildren<QWidget*>();
    return static_cast<int>(std::count_if(all.begin(), all.end(), [&](const QWidget* one) {
        return one->focusPolicy() & Qt::TabFocus && one->isVisibleTo(&dialog);
    }));
}

// Words that come while it is open push nothing out of sight either. It never shrinks by itself.
// What scrolls within need not grow with it: it asks for its height as a hint, and gets that for
// fields that were not there before, unless the user has chosen a size. For what is said of a field
// it scrolls: nothing is to move under the hand that fills it in.
void growWithWords(QDialog& dialog)
{
    QLayout* layout = dialog.layout();
    if (!layout)
        return;
    layout->activate();
    const bool sizedByUser = dialog.testAttribute(Qt::WA_Resized);
    int wanted = layout->hasHeightForWidth() ? layout->totalHeightForWidth(dialog.width())
                                             : layout->totalMinimumSize().height();
    if (!sizedByUser && dialog.findChild<ScrollRoom*>()) {
        const int fields = fieldsIn(dialog);
        if (fields > dialog.property(kFieldsShown).toInt())
            wanted = std::max(wanted, layout->totalSizeHint().height());
        dialog.setProperty(kFieldsShown, fields);
    }
    wanted = std::min(wanted, roomOnScreen(dialog).height());
    if (wanted <= dialog.height())
        return;
    dialog.resize(dialog.width(), wanted);
    dialog.setAttribute(Qt::WA_Resized, sizedByUser);
}

// What stands beside a form knows its height only once it has its width, and so on inward.
void open(QDialog& dialog)
{
    constexpr int kDeepest = 5;
    for (int turn = 0; turn < kDeepest; ++turn) {
        growToWords(dialog);
        QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
    }
    dialog.setProperty(kFieldsShown, fieldsIn(dialog));
}

// A window opens within its screen and grows only there. A user may still drag one past an edge.
class WindowManners : public QObject
{
public:
    static WindowManners& instance()
    {
        static WindowManners manners;
        return manners;
    }

    bool eventFilter(QObject* watched, QEvent* event) override
    {
        auto* window = static_cast<QWidget*>(watched);
        if (!window->isWindow())
            return false;
        auto* dialog = qobject_cast<QDialog*>(window);
        if (event->type() == QEvent::Show && !event->spontaneous()) {
            // Growing moves a dialog that no one has placed from the corner it is made in. It still
            // counts as not placed: Qt puts it over its parent next, and keeps it on the screen.
            const bool placed = !dialog || dialog->testAttribute(Qt::WA_Moved);
            if (dialog)
                open(*dialog);
            keepOnScreen(*window);
            if (!placed)
                dialog->setAttribute(Qt::WA_Moved, false);
        } else if (dialog && event->type() == QEvent::LayoutRequest && dialog->isVisible()) {
            growWithWords(*dialog);
        } else if (dialog && event->type() == QEvent::Resize && dialog->isVisible()) {
            keepOnScreen(*dialog);
        }
        return false;
    }
};

// What stands selected in a box that can be typed into passes for a proposal that Enter only takes.
// It is in the box already, so Enter is to enter the form at once, as in every other field.
class EnterInBoxes : public QObject
{
public:
    static EnterInBoxes& instance()
    {
        static EnterInBoxes manners;
        return manners;
    }

    bool eventFilter(QObject* watched, QEvent* event) override
    {
        if (event->type() != QEvent::KeyPress)
            return false;
        const int key = static_cast<QKeyEvent*>(event)->key();
        auto* line = static_cast<QComboBox*>(watched)->lineEdit();
        if (line && (key == Qt::Key_Return || key == Qt::Key_Enter))
            line->deselect();
        return false;
    }
};

} // namespace

void teachManners(QWidget* widget)
{
    if (auto* button = qobject_cast<QPushButton*>(widget)) {
        if (!qobject_cast<QDialog*>(button->window()))
            button->setAutoDefault(true);
    } else if (auto* words = qobject_cast<QPlainTextEdit*>(widget)) {
        showTypingInRed(*words->viewport());
    } else if (auto* box = qobject_cast<QComboBox*>(widget)) {
        if (box->sizeAdjustPolicy() == QComboBox::AdjustToContentsOnFirstShow)
            box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
        if (box->isEditable())
            box->installEventFilter(&EnterInBoxes::instance());
    } else if (auto* tabs = qobject_cast<QTabBar*>(widget)) {
        tabs->setUsesScrollButtons(false);
        tabs->setElideMode(Qt::ElideNone);
    } else if (qobject_cast<QDialog*>(widget) || qobject_cast<QMainWindow*>(widget)) {
        widget->installEventFilter(&WindowManners::instance());
    }
}

} // namespace ullage::app
