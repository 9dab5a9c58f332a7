// Looks at everything a widget shows and says where typed text was taken for something else.
#pragma once

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAction>
#include <QGroupBox>
#include <QLabel>
#include <QMenu>
#include <QTabBar>
#include <QTextBlock>
#include <QTextDocument>
#include <QTextEdit>

#include <algorithm>

namespace ullage::app
{

/// Begins every hostile name of a test; has an ampersand in front of a letter, and markup.
inline const QString kTyped = QStringLiteral("A&B <b>x</b>");

/// Counts what a document asks for from outside.
class AskingDocument : public QTextDocument
{
public:
    int asked = 0;

protected:
    QVariant loadResource(int /*type*/, const QUrl& /*name*/) override
    {
        ++asked;
        return {};
    }
};

/// Why this markup is not merely typed text made safe; empty if it is.
inline QString markupFault(const QString& html)
{
    AskingDocument document;
    document.setHtml(html);
    (void)document.size(); // lays it out, and so fetches what it shows
    if (document.asked > 0)
        return QStringLiteral("asks for a file");
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
        for (auto part = block.begin(); !part.atEnd(); ++part) {
            const QTextCharFormat format = part.fragment().charFormat();
            if (format.isImageFormat() || format.isAnchor())
                return QStringLiteral("holds an image or a link");
        }
    }
    if (html.contains(QLatin1String("A&amp;B")) && !document.toPlainText().contains(kTyped))
        return QStringLiteral("does not show the name as it was typed");
    return {};
}

/// As Qt reads a text about which it may guess.
inline QString guessFault(const QString& text)
{
    if (!Qt::mightBeRichText(text))
        return {};
    if (text.contains(QLatin1String("<b>x</b>")))
        return QStringLiteral("is taken for markup");
    return markupFault(text);
}

/// Where "&" marks a key, that of a name must be doubled.
inline QString mnemonicFault(const QString& text)
{
    return text.contains(QLatin1String("A&B")) ? QStringLiteral("makes a key of a name's &")
                                               : QString();
}

class PlainInspector
{
public:
    /// Everything wrong in `root` and below it, each with the widget it is about.
    static QStringList faultsOf(const QWidget& root)
    {
        PlainInspector inspector;
        inspector.look(root);
        for (const QWidget* widget : root.findChildren<QWidget*>())
            inspector.look(*widget);
        for (const QAction* action : root.findChildren<QAction*>())
            inspector.add(root, "an action", mnemonicFault(action->text()), action->text());
        return inspector.m_faults;
    }

private:
    void look(const QWidget& widget)
    {
        add(widget, "tooltip", guessFault(widget.toolTip()), widget.toolTip());
        add(widget, "what's this", guessFault(widget.whatsThis()), widget.whatsThis());
        add(widget, "status tip", guessFault(widget.statusTip()), widget.statusTip());
        if (QString(widget.windowTitle())
                .remove(QStringLiteral("[*][*]"))
                .contains(QLatin1String("[*]")))
            add(widget, "title", QStringLiteral("has the mark of unsaved work"),
                widget.windowTitle());
        // The tip of an action is its text, and shown by those menus alone that ask for it.
        if (const auto* menu = qobject_cast<const QMenu*>(&widget); menu && menu->toolTipsVisible())
            add(widget, "menu", QStringLiteral("shows its actions' tips"), menu->title());
        if (const auto* label = qobject_cast<const QLabel*>(&widget))
            lookAt(*label);
        if (const auto* button = qobject_cast<const QAbstractButton*>(&widget))
            add(widget, "button", mnemonicFault(button->text()), button->text());
        if (const auto* box = qobject_cast<const QGroupBox*>(&widget))
            add(widget, "box", mnemonicFault(box->title()), box->title());
        if (const auto* tabs = qobject_cast<const QTabBar*>(&widget)) {
            for (int i = 0; i < tabs->count(); ++i) {
                add(widget, "tab", mnemonicFault(tabs->tabText(i)), tabs->tabText(i));
                add(widget, "tab's tip", guessFault(tabs->tabToolTip(i)), tabs->tabToolTip(i));
            }
        }
        if (const auto* edit = qobject_cast<const QTextEdit*>(&widget))
            add(widget, "document", markupFault(edit->toHtml()), edit->toPlainText());
        if (const auto* view = qobject_cast<const QAbstractItemView*>(&widget))
            lookAt(*view);
    }

    void lookAt(const QLabel& label)
    {
        const QString text = label.text();
        if (label.textFormat() != Qt::PlainText)
            add(label, "label",
                label.textFormat() == Qt::AutoText ? guessFault(text) : markupFault(text), text);
        if (label.buddy())
            add(label, "label", mnemonicFault(text), text);
    }

    void lookAt(const QAbstractItemView& view)
    {
        constexpr int kEnough = 200;
        const QAbstractItemModel* model = view.model();
        for (int column = 0; model && column < model->columnCount(); ++column) {
            const QString tip =
                model->headerData(column, Qt::Horizontal, Qt::ToolTipRole).toString();
            add(view, "heading's tip", guessFault(tip), tip);
            for (int row = 0; row < std::min(kEnough, model->rowCount()); ++row) {
                const QString own = model->index(row, column).data(Qt::ToolTipRole).toString();
                add(view, "entry's tip", guessFault(own), own);
            }
        }
    }

    void add(const QWidget& widget, const char* what, const QString& fault, const QString& text)
    {
        if (!fault.isEmpty())
            m_faults << QStringLiteral("%1 in %2 %3: %4")
                            .arg(QLatin1String(what),
                                 QLatin1String(widget.metaObject()->className()), fault,
                                 text.left(200));
    }

    QStringList m_faults;
};

} // namespace ullage::app
