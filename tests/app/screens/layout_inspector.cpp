#include "tests/app/screens/layout_inspector.h"

#include "app/widgets/elided_box.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLayout>
#include <QLineEdit>
#include <QListView>
#include <QMainWindow>
#include <QPlainTextEdit>
#include <QRegularExpression>
#include <QScrollArea>
#include <QScrollBar>
#include <QSplitterHandle>
#include <QStackedWidget>
#include <QStyle>
#include <QStyleOptionButton>
#include <QStyleOptionComboBox>
#include <QStyledItemDelegate>
#include <QTabBar>
#include <QTreeView>

#include <algorithm>
#include <cmath>

namespace ullage::app
{

namespace
{

constexpr int kGrace = 1;        // a pixel lost in rounding is nobody's
constexpr double kFewRows = 5.5; // a list that shows no more is read as a whole

double widthOf(const QFontMetricsF& metrics, const QString& text)
{
    return metrics.size(Qt::TextShowMnemonic, text).width();
}

double longestWord(const QFontMetricsF& metrics, const QString& text)
{
    double longest = 0;
    for (const QString& word :
         text.split(QRegularExpression(QStringLiteral("[\\s\\-–/]+")), Qt::SkipEmptyParts))
        longest = std::max(longest, metrics.horizontalAdvance(word));
    return longest;
}

class Inspection
{
public:
    explicit Inspection(const QWidget& root) : m_root(root) {}

    QStringList faults()
    {
        lookAt(m_root);
        for (const QWidget* widget : m_root.findChildren<QWidget*>()) {
            if (widget->isVisible() && widget->window() == m_root.window())
                lookAt(*widget);
        }
        m_faults.removeDuplicates();
        return m_faults;
    }

private:
    void add(const QWidget& widget, const QString& what)
    {
        m_faults << nameOf(widget) + QStringLiteral(": ") + what;
    }

    void lookAt(const QWidget& widget)
    {
        lookAtRoom(widget);
        lookAtSiblings(widget);
        if (const auto* label = qobject_cast<const QLabel*>(&widget))
            lookAtLabel(*label);
        else if (const auto* button = qobject_cast<const QAbstractButton*>(&widget))
            lookAtButton(*button);
        else if (const auto* box = qobject_cast<const QComboBox*>(&widget))
            lookAtBox(*box);
        else if (const auto* line = qobject_cast<const QLineEdit*>(&widget))
            lookAtLine(*line);
        else if (const auto* tabs = qobject_cast<const QTabBar*>(&widget))
            lookAtTabs(*tabs);
        else if (const auto* header = qobject_cast<const QHeaderView*>(&widget))
            lookAtHeader(*header);
        else if (const auto* view = qobject_cast<const QAbstractItemView*>(&widget))
            lookAtView(*view);
        if (holdsWords(widget))
            lookAtClipping(widget);
    }

    static bool holdsWords(const QWidget& widget)
    {
        if (const auto* label = qobject_cast<const QLabel*>(&widget))
            return !label->text().isEmpty();
        return qobject_cast<const QAbstractButton*>(&widget) ||
               qobject_cast<const QComboBox*>(&widget) || qobject_cast<const QLineEdit*>(&widget) ||
               qobject_cast<const QAbstractSpinBox*>(&widget) ||
               qobject_cast<const QTabBar*>(&widget);
    }

    // Less room than what it holds can be squeezed into.
    void lookAtRoom(const QWidget& widget)
    {
        // A stack's pages are looked at by themselves: only the one that is seen needs its room.
        if (!widget.layout() || qobject_cast<const QMainWindow*>(&widget) ||
            qobject_cast<const QStackedWidget*>(&widget))
            return;
        QSize least = widget.layout()->totalMinimumSize().boundedTo(widget.maximumSize());
        // That is for the least width: words that wrap need less height the wider they are.
        if (widget.layout()->hasHeightForWidth())
            least.setHeight(std::min(least.height(),
                                     widget.layout()->totalMinimumHeightForWidth(widget.width())));
        if (widget.width() + kGrace < least.width() || widget.height() + kGrace < least.height())
            add(widget,
                QStringLiteral("needs %1×%2 at least").arg(least.width()).arg(least.height()));
    }

    static bool isOverlay(const QWidget& widget)
    {
        return qobject_cast<const QSplitterHandle*>(&widget) || widget.isWindow() ||
               widget.inherits("QSizeGrip") ||
               widget.testAttribute(Qt::WA_TransparentForMouseEvents);
    }

    void lookAtSiblings(const QWidget& parent)
    {
        if (qobject_cast<const QAbstractScrollArea*>(&parent) ||
            qobject_cast<const QTabBar*>(&parent) || qobject_cast<const QLineEdit*>(&parent))
            return;
        QList<const QWidget*> seen;
        for (const QObject* child : parent.children()) {
            const auto* widget = qobject_cast<const QWidget*>(child);
            if (widget && widget->isVisible() && !isOverlay(*widget))
                seen << widget;
        }
        for (qsizetype i = 0; i < seen.size(); ++i) {
            for (qsizetype j = i + 1; j < seen.size(); ++j) {
                const QRect both = seen[i]->geometry() & seen[j]->geometry();
                if (both.width() > kGrace && both.height() > kGrace)
                    add(*seen[i], QStringLiteral("lies over ") + nameOf(*seen[j]));
            }
        }
    }

    // Part of it is outside what it lies in, and cannot be scrolled to.
    void lookAtClipping(const QWidget& widget)
    {
        QRect rect = widget.rect();
        const QWidget* inside = &widget;
        while (inside != &m_root && inside->parentWidget() && !inside->isWindow()) {
            rect.translate(inside->pos());
            inside = inside->parentWidget();
            const auto* area = qobject_cast<const QAbstractScrollArea*>(inside->parentWidget());
            QRect room = inside->rect().adjusted(-kGrace, -kGrace, kGrace, kGrace);
            if (area && area->viewport() == inside) {
                if (area->verticalScrollBarPolicy() != Qt::ScrollBarAlwaysOff ||
                    area->verticalScrollBar()->maximum() > 0) {
                    room.setTop(std::min(room.top(), rect.top()));
                    room.setBottom(std::max(room.bottom(), rect.bottom()));
                }
                if (area->horizontalScrollBarPolicy() != Qt::ScrollBarAlwaysOff) {
                    room.setLeft(std::min(room.left(), rect.left()));
                    room.setRight(std::max(room.right(), rect.right()));
                }
                if (room.contains(rect)) {
                    rect &= inside->rect();
                    if (rect.isEmpty())
                        return; // scrolled away
                }
            }
            if (!room.contains(rect)) {
                add(widget, QStringLiteral("is cut by ") + nameOf(*inside));
                return;
            }
        }
    }

    void lookAtLabel(const QLabel& label)
    {
        if (label.text().isEmpty() || label.inherits("ullage::app::ElidedLabel"))
            return;
        const QFontMetricsF metrics(label.font());
        const QMargins margins = label.contentsMargins();
        const double room = label.width() - margins.left() - margins.right() - 2 * label.margin();
        if (label.wordWrap()) {
            if (label.heightForWidth(label.width()) > label.height() + kGrace)
                add(label, QStringLiteral("needs a height of %1")
                               .arg(label.heightForWidth(label.width())));
            if (label.textFormat() == Qt::PlainText &&
                longestWord(metrics, label.text()) > room + kGrace)
                add(label, QStringLiteral("a word is wider than the label"));
        } else if (label.sizeHint().width() > label.width() + kGrace ||
                   label.sizeHint().height() > label.height() + kGrace) {
            if (label.property("elides").toBool() && !label.toolTip().isEmpty())
                return;
            add(label, QStringLiteral("needs %1×%2")
                           .arg(label.sizeHint().width())
                           .arg(label.sizeHint().height()));
        }
    }

    void lookAtButton(const QAbstractButton& button)
    {
        if (button.text().isEmpty() || button.property("elides").toBool())
            return;
        const double words = widthOf(QFontMetricsF(button.font()), button.text());
        const double tall = QFontMetricsF(button.font()).height();
        QStyleOptionButton option;
        option.initFrom(&button);
        option.text = button.text();
        QRect room = button.rect();
        if (button.inherits("QCheckBox"))
            room = button.style()->subElementRect(QStyle::SE_CheckBoxContents, &option, &button);
        else if (button.inherits("QRadioButton"))
            room = button.style()->subElementRect(QStyle::SE_RadioButtonContents, &option, &button);
        else if (button.inherits("QPushButton"))
            room.adjust(3, 0, -3, 0);
        if (words > room.width() + kGrace)
            add(button, QStringLiteral("its words need %1, have %2").arg(words).arg(room.width()));
        if (tall > button.height() + kGrace)
            add(button, QStringLiteral("is lower than its words"));
    }

    void lookAtBox(const QComboBox& box)
    {
        if (qobject_cast<const ElidedBox*>(&box))
            return; // says that it is cut, and shows the whole
        QStyleOptionComboBox option;
        option.initFrom(&box);
        option.editable = box.isEditable();
        option.currentText = box.currentText();
        const QRect room = box.style()->subControlRect(QStyle::CC_ComboBox, &option,
                                                       QStyle::SC_ComboBoxEditField, &box);
        const double words = QFontMetricsF(box.font()).horizontalAdvance(box.currentText());
        if (!box.isEditable() && words > room.width() + kGrace)
            add(box, QStringLiteral("“%1” needs %2, has %3")
                         .arg(box.currentText())
                         .arg(words)
                         .arg(room.width()));
    }

    void lookAtLine(const QLineEdit& line)
    {
        const QString shown = line.text().isEmpty() ? line.placeholderText() : line.displayText();
        if (shown.isEmpty())
            return;
        QStyleOptionFrame option;
        option.initFrom(&line);
        const QRect room =
            line.style()->subElementRect(QStyle::SE_LineEditContents, &option, &line);
        const double words = QFontMetricsF(line.font()).horizontalAdvance(shown);
        if (words > room.width() + kGrace)
            add(line,
                QStringLiteral("“%1” needs %2, has %3").arg(shown).arg(words).arg(room.width()));
    }

    void lookAtTabs(const QTabBar& tabs)
    {
        for (int i = 0; i < tabs.count(); ++i) {
            if (!tabs.isTabVisible(i))
                continue;
            const QRect tab = tabs.tabRect(i);
            const double words = widthOf(QFontMetricsF(tabs.font()), tabs.tabText(i));
            if (words > tab.width() + kGrace || !tabs.rect().adjusted(-2, -2, 2, 2).contains(tab))
                add(tabs, QStringLiteral("tab “%1” is cut").arg(tabs.tabText(i)));
        }
    }

    void lookAtHeader(const QHeaderView& header)
    {
        for (int i = 0; header.model() && i < header.count(); ++i) {
            if (header.orientation() != Qt::Horizontal || header.isSectionHidden(i))
                continue;
            const QString text = header.model()->headerData(i, Qt::Horizontal).toString();
            double words = 0;
            for (const QString& line : text.split(u'\n'))
                words = std::max(words, QFontMetricsF(header.font()).horizontalAdvance(line));
            if (words > header.sectionSize(i) - 4)
                add(header, QStringLiteral("column “%1” needs %2, has %3")
                                .arg(text)
                                .arg(words)
                                .arg(header.sectionSize(i)));
        }
    }

    void lookAtView(const QAbstractItemView& view)
    {
        if (!view.model() || view.model()->rowCount() == 0)
            return;
        lookAtCells(view);
        const auto* list = qobject_cast<const QListView*>(&view);
        const bool grid = list && list->viewMode() == QListView::IconMode;
        const QRect room = view.viewport()->rect();
        const QRect first = view.visualRect(view.model()->index(0, 0));
        if (first.isEmpty() || view.verticalScrollBar()->value() != 0)
            return;
        const double pitch = grid ? list->gridSize().height() : first.height();
        if (pitch <= 0 || (!grid && room.height() / pitch > kFewRows))
            return;
        if (first.bottom() > room.bottom() + kGrace)
            return add(view, QStringLiteral("its first row is cut"));
        for (int row = 0; row < view.model()->rowCount(); ++row) {
            const QRect rect = view.visualRect(view.model()->index(row, 0));
            if (rect.isEmpty() || rect.top() > room.bottom())
                break;
            if (rect.bottom() > room.bottom() + 4 && rect.top() < room.bottom() - 4) {
                add(view, QStringLiteral("row %1 is cut: %2 of %3 seen")
                              .arg(row)
                              .arg(room.bottom() - rect.top())
                              .arg(rect.height()));
                break;
            }
        }
    }

    void lookAtCells(const QAbstractItemView& view)
    {
        // What paints its rows itself sees to it that they fit, or has a test of its own.
        if (qstrcmp(view.itemDelegate()->metaObject()->className(), "QStyledItemDelegate") != 0 &&
            qstrcmp(view.itemDelegate()->metaObject()->className(), "QItemDelegate") != 0)
            return;
        const auto* list = qobject_cast<const QListView*>(&view);
        if (list && list->wordWrap())
            return;
        const auto* tree = qobject_cast<const QTreeView*>(&view);
        if (tree && tree->wordWrap())
            return;
        constexpr int kRows = 60;
        for (int row = 0; row < std::min(kRows, view.model()->rowCount()); ++row) {
            for (int column = 0; column < view.model()->columnCount(); ++column) {
                const QModelIndex index = view.model()->index(row, column);
                const QRect rect = view.visualRect(index);
                if (rect.isEmpty() || !rect.intersects(view.viewport()->rect()))
                    continue;
                const QVariant own = index.data(Qt::FontRole);
                const QFont font = own.isValid() ? own.value<QFont>() : view.font();
                const QString text = index.data(Qt::DisplayRole).toString();
                const double words = QFontMetricsF(font).horizontalAdvance(text);
                if (words + 4 > rect.width() &&
                    (index.data(Qt::ToolTipRole).toString().isEmpty() ||
                     text.contains(QRegularExpression(QStringLiteral("^[\\d.,: %×–-]+$")))))
                    add(view, QStringLiteral("cell “%1” needs %2, has %3")
                                  .arg(text.left(60))
                                  .arg(words)
                                  .arg(rect.width()));
            }
        }
    }

    const QWidget& m_root;
    QStringList m_faults;
};

} // namespace

// Which widget, as somebody looking for it would name it.
QString nameOf(const QWidget& widget)
{
    QString words = widget.accessibleName();
    if (const auto* label = qobject_cast<const QLabel*>(&widget))
        words = label->text();
    else if (const auto* button = qobject_cast<const QAbstractButton*>(&widget))
        words = button->text();
    return QStringLiteral("%1 “%2” (%3×%4)")
        .arg(QLatin1String(widget.metaObject()->className()), words.left(70))
        .arg(widget.width())
        .arg(widget.height());
}

QStringList layoutFaults(const QWidget& root) { return Inspection(root).faults(); }

} // namespace ullage::app
