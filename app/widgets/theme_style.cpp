#include "app/widgets/theme.h"

#include <QHash>

namespace ullage::app
{

namespace
{

// @name stands for a colour; %icons for the folder of marks in the colour of the theme.
const char* const kSheet = R"(
QAbstractScrollArea { background: transparent; border: none; }
QLineEdit, QPlainTextEdit, QTextEdit, QAbstractSpinBox, QLabel { selection-background-color: @selection; selection-color: @ink; }
QMainWindow, QDialog { background: @paper; }
QLabel { background: transparent; }
QLabel[tone="quiet"] { color: @quiet; }
QLabel[tone="good"] { color: @green; }
QLabel[tone="test"] { color: @blue; }
QLabel[tone="near"] { color: @amber; }
QLabel[tone="discard"] { color: @red; }

QPushButton { background: @card; color: @ink; border: 1px solid @border; border-radius: 8px;
  padding: 8px 16px; font-weight: 600; min-height: 18px; outline: none; }
QPushButton[tall="true"] { min-height: 28px; font-size: 15px; }
QPushButton:hover { background: @hover; border-color: @edge; }
QPushButton:pressed { background: @pressed; }
QPushButton:focus { border: 2px solid @focus; padding: 7px 15px; }
QPushButton:disabled { color: @faded; background: @paper; border-color: @hairline; }
QPushButton[look="primary"], QDialog QPushButton:default { background: @ink; color: @onInk;
  border-color: @ink; }
QPushButton[look="primary"]:hover, QDialog QPushButton:default:hover { background: @inkHover; }
QPushButton[look="primary"]:pressed, QDialog QPushButton:default:pressed { background: @inkPressed; }
QPushButton[look="primary"]:focus, QDialog QPushButton:default:focus { border: 2px solid @focus; }
QPushButton[look="primary"]:disabled, QDialog QPushButton:default:disabled { background: @border;
  color: @faded; border-color: @border; }
QPushButton[look="quiet"] { background: @raised; padding: 6px 7px; font-size: 13px; min-height: 17px; }
QPushButton[look="quiet"]:hover { background: @pressed; }
QPushButton[look="quiet"]:focus { padding: 5px 6px; }
QPushButton[look="quiet"][menu="true"] { padding-right: 19px; }
QPushButton[look="quiet"][menu="true"]::menu-indicator { right: 5px; }
QPushButton[look="danger"] { color: @red; }
QDialog QPushButton[look="danger"]:default { background: @red; color: @onInk; }
QPushButton[look="danger"]:disabled, QDialog QPushButton[look="danger"]:default:disabled {
  background: @border; color: @faded; border-color: @border; }
QPushButton[look="chip"] { border-radius: 16px; padding: 6px 15px; }
QPushButton[look="chip"]:focus { padding: 5px 14px; }
QPushButton[look="chip"]:checked { background: @ink; color: @onInk; border-color: @ink; }
QPushButton::menu-indicator { image: url(%icons-down.svg); width: 12px; height: 12px;
  subcontrol-origin: padding; subcontrol-position: center right; right: 8px; }
QToolButton { background: transparent; border: 1px solid transparent; border-radius: 6px; padding: 4px; }
QToolButton:hover { background: @hover; }
QToolButton:focus { border: 2px solid @focus; padding: 3px; }
QToolButton#qt_calendar_prevmonth, QToolButton[arrow="left"] { qproperty-icon: url(%icons-left.svg); }
QToolButton#qt_calendar_nextmonth, QToolButton[arrow="right"] { qproperty-icon: url(%icons-right.svg); }

QAbstractScrollArea { background: transparent; border: none; }
QLineEdit, QPlainTextEdit, QTextEdit, QAbstractSpinBox, QComboBox { background: @card; color: @ink;
  border: 1px solid @border; border-radius: 8px; padding: 6px 10px; min-height: 20px; }
QLineEdit:hover, QAbstractSpinBox:hover, QComboBox:hover { border-color: @edge; }
QLineEdit:focus, QPlainTextEdit:focus, QTextEdit:focus, QAbstractSpinBox:focus, QComboBox:focus {
  border: 2px solid @focus; padding: 5px 9px; }
QLineEdit[invalid="true"] { border: 2px solid @red; padding: 5px 9px; }
QLineEdit:disabled, QPlainTextEdit:disabled, QAbstractSpinBox:disabled, QComboBox:disabled {
  color: @faded; background: @paper; border-color: @hairline; }
QComboBox { padding-right: 4px; }
QComboBox:focus { padding-right: 3px; }
QComboBox::drop-down { border: none; width: 26px; }
QComboBox::down-arrow { image: url(%icons-down.svg); width: 12px; height: 12px; }
QComboBox QAbstractItemView { background: @card; border: 1px solid @border; padding: 0;
  outline: none; }
QComboBox QAbstractItemView::item { min-height: 26px; padding: 0 8px; border-radius: 4px; }
QComboBox QAbstractItemView::item:selected { background: @selected; color: @ink; }
QAbstractSpinBox { padding-right: 22px; }
QAbstractSpinBox:focus { padding-right: 21px; }
QAbstractSpinBox::up-button { border: none; background: transparent; width: 22px;
  subcontrol-origin: border; subcontrol-position: top right; }
QAbstractSpinBox::down-button { border: none; background: transparent;
  width: 22px; subcontrol-origin: border; subcontrol-position: bottom right; }
QAbstractSpinBox::up-arrow { image: url(%icons-up.svg); width: 10px; height: 10px; }
QAbstractSpinBox::down-arrow { image: url(%icons-down.svg); width: 10px; height: 10px; }

QCheckBox, QRadioButton { spacing: 8px; padding: 3px; border: 2px solid transparent; border-radius: 6px; }
QCheckBox:focus, QRadioButton:focus { border-color: @focus; }
QCheckBox::indicator, QRadioButton::indicator, QListView::indicator { width: 16px; height: 16px; border: 1px solid @edge;
  background: @card; }
QCheckBox::indicator, QListView::indicator { border-radius: 4px; }
QRadioButton::indicator { border-radius: 9px; }
QCheckBox::indicator:checked, QListView::indicator:checked { background: @ink; border-color: @ink; image: url(%icons-check.svg); }
QRadioButton::indicator:checked { background: @ink; border-color: @ink; image: url(%icons-dot.svg); }
QCheckBox::indicator:disabled, QRadioButton::indicator:disabled { border-color: @hairline;
  background: @paper; }

QTableView, QTreeView, QListView { background: @card; border: 1px solid @border; border-radius: 8px;
  gridline-color: @hairline; alternate-background-color: @raised; outline: none;
  show-decoration-selected: 1; }
QListView#shelf { background: transparent; border: none; }
QTableView, QTreeView { padding: 1px; }
QTableView::item, QTreeView::item { padding: 4px 8px; border: none; }
QTableView::item:selected, QTreeView::item:selected, QListView::item:selected { background: @selected;
  color: @ink; }
QTableView:focus, QTreeView:focus { border: 2px solid @focus; padding: 0; }
QHeaderView { background: transparent; }
QHeaderView::section { background: @card; color: @quiet; border: none;
  border-bottom: 1px solid @border; padding: 6px 8px; font-weight: 600; }
QTableCornerButton::section { background: @card; border: none; }

QScrollBar:vertical { background: transparent; width: 12px; margin: 0; }
QScrollBar:horizontal { background: transparent; height: 12px; margin: 0; }
QScrollBar::handle { background: @edge; border: 3px solid transparent; border-radius: 6px; }
QScrollBar::handle:vertical { min-height: 36px; margin: 2px 3px; border: none; border-radius: 3px; }
QScrollBar::handle:horizontal { min-width: 36px; margin: 3px 2px; border: none; border-radius: 3px; }
QScrollBar::handle:hover { background: @quiet; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }

QMenuBar { background: @paper; color: @ink; padding: 2px 6px; border: none; }
QMenuBar::item { background: transparent; padding: 5px 9px; border-radius: 6px; }
QMenuBar::item:selected, QMenuBar::item:pressed { background: @pressed; }
QMenu { background: @card; color: @ink; border: 1px solid @border; padding: 6px; }
QMenu::item { padding: 4px 26px 4px 12px; border-radius: 6px; border: 1px solid transparent; }
QMenu::item:selected { background: @selected; }
QMenu::item:disabled { color: @faded; }
QMenu::separator { height: 1px; background: @hairline; margin: 4px 8px; }
QMenu::indicator { width: 14px; height: 14px; margin-left: 6px; }
QMenu::indicator:checked { image: url(%icons-tick.svg); }
QMenu::right-arrow { image: url(%icons-right.svg); width: 10px; height: 10px; right: 6px; }
QMenu::icon { padding-left: 8px; }
QToolTip { background: @card; color: @ink; border: 1px solid @border; padding: 5px 8px; }
QSplitter::handle { background: transparent; }
QSplitter::handle:hover { background: @border; }
QDialogButtonBox { dialogbuttonbox-buttons-have-icons: 0; }
QStatusBar { background: @paper; color: @quiet; }
QProgressBar { background: @raised; border: 1px solid @border; border-radius: 6px; text-align: center;
  min-height: 14px; }
QProgressBar::chunk { background: @brown; border-radius: 5px; }
QTabWidget::pane { border: 1px solid @border; border-radius: 8px; background: @card; top: -1px; }
QTabBar::tab { padding: 7px 14px; color: @quiet; border: 2px solid transparent; border-radius: 6px; }
QTabBar::tab:selected { color: @ink; font-weight: 600; }
QTabBar::tab:focus { border-color: @focus; }
QGroupBox { font-weight: 600; border: 1px solid @border; border-radius: 8px; margin-top: 10px;
  padding: 12px 8px 8px 8px; background: @card; }
QGroupBox::title { subcontrol-origin: margin; left: 12px; padding: 0 4px; color: @quiet; }
)";

} // namespace

QString styleSheet(const Colours& c, bool dark)
{
    const QHash<QString, QColor> names{
        {QStringLiteral("paper"), c.paper},
        {QStringLiteral("card"), c.card},
        {QStringLiteral("raised"), c.raised},
        {QStringLiteral("selected"), c.selected},
        {QStringLiteral("selection"), blend(c.card, c.blue, 0.28)},
        {QStringLiteral("border"), c.border},
        {QStringLiteral("edge"), blend(c.border, c.ink, 0.28)},
        {QStringLiteral("hairline"), c.hairline},
        {QStringLiteral("hover"), blend(c.card, c.ink, 0.04)},
        {QStringLiteral("pressed"), blend(c.paper, c.ink, 0.09)},
        {QStringLiteral("focus"), c.focus},
        {QStringLiteral("ink"), c.ink},
        {QStringLiteral("inkHover"), blend(c.ink, c.paper, 0.14)},
        {QStringLiteral("inkPressed"), blend(c.ink, c.paper, 0.26)},
        {QStringLiteral("onInk"), c.onInk},
        {QStringLiteral("quiet"), c.quiet},
        {QStringLiteral("faded"), blend(c.quiet, c.card, 0.4)},
        {QStringLiteral("brown"), c.brown},
        {QStringLiteral("green"), c.green},
        {QStringLiteral("blue"), c.blue},
        {QStringLiteral("amber"), c.amber},
        {QStringLiteral("red"), c.red},
    };
    const QString icons =
        QStringLiteral(":/ullage/widgets/icons/%1").arg(dark ? u"dark" : u"light");
    const QString sheet = QString::fromLatin1(kSheet).replace(QStringLiteral("%icons"), icons);

    QString result;
    result.reserve(sheet.size());
    for (qsizetype i = 0; i < sheet.size(); ++i) {
        if (sheet[i] != u'@') {
            result += sheet[i];
            continue;
        }
        qsizetype end = i + 1;
        while (end < sheet.size() && sheet[end].isLetter())
            ++end;
        const QString name = sheet.mid(i + 1, end - i - 1);
        Q_ASSERT(names.contains(name));
        result += names.value(name).name();
        i = end - 1;
    }
    return result;
}

} // namespace ullage::app
