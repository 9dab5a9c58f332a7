#include "tests/app/screens/layout_inspector.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTabBar>

namespace ullage::app
{

namespace
{

bool isControl(const QWidget& widget)
{
    return qobject_cast<const QAbstractButton*>(&widget) ||
           qobject_cast<const QComboBox*>(&widget) || qobject_cast<const QLineEdit*>(&widget) ||
           qobject_cast<const QAbstractSpinBox*>(&widget) ||
           qobject_cast<const QAbstractItemView*>(&widget) ||
           qobject_cast<const QTabBar*>(&widget) || qobject_cast<const QPlainTextEdit*>(&widget);
}

bool isPartOfAnother(const QWidget& widget)
{
    for (const QWidget* in = widget.parentWidget(); in; in = in->parentWidget()) {
        if (isControl(*in) || qobject_cast<const QScrollBar*>(in))
            return true;
        if (in->isWindow())
            break;
    }
    return qobject_cast<const QHeaderView*>(&widget);
}

bool hasKey(const QWidget& widget)
{
    if (const auto* button = qobject_cast<const QAbstractButton*>(&widget);
        button && (!button->shortcut().isEmpty()))
        return true;
    for (const auto* label : widget.window()->findChildren<QLabel*>()) {
        if (label->buddy() == &widget &&
            QString(label->text()).remove(QStringLiteral("&&")).contains(u'&'))
            return true;
    }
    return false;
}

// What is scrolled in a room that the other one does not share stands where the room does.
QRect placeOf(const QWidget& widget, const QWidget& beside, const QWidget& root)
{
    const QWidget* seen = &widget;
    for (const QWidget* in = widget.parentWidget(); in && in != &root; in = in->parentWidget()) {
        if (qobject_cast<const QScrollArea*>(in) && in != &beside && !in->isAncestorOf(&beside))
            seen = in;
    }
    return {seen->mapTo(&root, QPoint()), seen->size()};
}

} // namespace

QStringList tabFaults(QWidget& root)
{
    QStringList faults;
    QList<QWidget*> stops;
    QWidget* stop = &root;
    do {
        const bool taken = stop->focusPolicy() & Qt::TabFocus && stop->isVisible() &&
                           stop->isEnabled() && !stop->focusProxy() && root.isAncestorOf(stop);
        if (taken && !isPartOfAnother(*stop))
            stops << stop;
        stop = stop->nextInFocusChain();
    } while (stop && stop != &root);
    QStringList back;
    for (qsizetype i = 0; i < stops.size(); ++i) {
        const QWidget& one = *stops[i];
        const QWidget& next = *stops[(i + 1) % stops.size()];
        const QRect from = placeOf(one, next, root);
        const QRect to = placeOf(next, one, root);
        const bool up = to.bottom() <= from.top() && to.left() < from.right();
        const bool sameLine = to.center().y() >= from.top() && to.center().y() <= from.bottom();
        if (up || (sameLine && to.right() <= from.left()))
            back << QStringLiteral("Tab goes back from %1 to %2").arg(nameOf(one), nameOf(next));
    }
    if (back.size() > 1) // once it does, from the last to the first; the ring has no beginning
        faults << back;
    for (QWidget* widget : root.findChildren<QWidget*>()) {
        if (!widget->isVisible() || !widget->isEnabled() || !isControl(*widget) ||
            isPartOfAnother(*widget) || widget->window() != root.window())
            continue;
        const auto* button = qobject_cast<const QPushButton*>(widget);
        if (button && button->isDefault() && button->property("look") == QStringLiteral("quiet"))
            faults << QStringLiteral("Enter presses %1, beside the matter").arg(nameOf(*widget));
        const QWidget* heard = widget->focusProxy() ? widget->focusProxy() : widget;
        if (!(heard->focusPolicy() & Qt::TabFocus) && !hasKey(*widget))
            faults << QStringLiteral("no key reaches %1").arg(nameOf(*widget));
    }
    return faults;
}

} // namespace ullage::app
