#include "tests/app/screens/letter_inspector.h"

#include <QAbstractButton>
#include <QAction>
#include <QLabel>
#include <QMap>
#include <QMenu>
#include <QMenuBar>
#include <QTabBar>

namespace ullage::app
{

namespace
{

// Of "Save && &close" the c; none if nothing is underlined.
QChar letterOf(QString text)
{
    text.remove(QStringLiteral("&&"));
    const auto at = text.indexOf(u'&');
    return at >= 0 && at + 1 < text.size() ? text[at + 1].toLower() : QChar();
}

// What answers to which letter, and what comes too late.
class Taken
{
public:
    void take(const QString& text)
    {
        const QChar letter = letterOf(text);
        if (letter.isNull())
            return;
        if (const auto before = m_by.constFind(letter); before != m_by.cend())
            m_faults << QStringLiteral("“%1” and “%2”").arg(*before, text);
        else
            m_by.insert(letter, text);
    }
    void take(const QList<QAction*>& actions)
    {
        for (const QAction* action : actions) {
            if (action->isVisible())
                take(action->text());
        }
    }
    [[nodiscard]] QStringList faults() const { return m_faults; }

private:
    QMap<QChar, QString> m_by;
    QStringList m_faults;
};

} // namespace

QStringList letterFaults(const QWidget& root)
{
    Taken shown;
    QStringList faults;
    for (const QWidget* widget : root.findChildren<QWidget*>()) {
        if (const auto* menu = qobject_cast<const QMenu*>(widget)) {
            Taken entries;
            entries.take(menu->actions());
            faults << entries.faults();
        }
        if (!widget->isVisible() || widget->window() != root.window())
            continue;
        if (const auto* bar = qobject_cast<const QMenuBar*>(widget))
            shown.take(bar->actions());
        else if (const auto* button = qobject_cast<const QAbstractButton*>(widget))
            shown.take(button->text());
        else if (const auto* label = qobject_cast<const QLabel*>(widget); label && label->buddy())
            shown.take(label->text());
        else if (const auto* tabs = qobject_cast<const QTabBar*>(widget)) {
            for (int i = 0; i < tabs->count(); ++i)
                shown.take(tabs->tabText(i));
        }
    }
    faults << shown.faults();
    faults.removeDuplicates();
    return faults;
}

} // namespace ullage::app
