// What a person typed is shown as it was typed: never taken for markup, never for a mnemonic.
//
// Qt's labels and tooltips guess whether a text is HTML, and a name such as <img src="file:…"> then
// reads a file. Every label of the window is a PlainLabel, every tooltip goes through here
// (tests/app/plain_check.cmake holds that). Where we set markup of our own, the typed parts of it
// are escaped with QString::toHtmlEscaped().
#pragma once

#include <QFontMetricsF>
#include <QString>
#include <QStringList>

class QAction;
class QPoint;
class QWidget;

namespace ullage::app
{

/// For texts about which Qt guesses and can't be told (tooltips, the second text of a message box):
/// `text`, or markup of ours that shows it as it stands.
QString plainText(const QString& text);

/// As plainText(), for Qt::ToolTipRole and tooltips: wrapped at a readable width, and cut with an
/// ellipsis after 1,000 characters.
QString plainToolTip(const QString& text);
void setPlainToolTip(QWidget* widget, const QString& text);
void setPlainToolTip(QAction* action, const QString& text);
void showPlainToolTip(const QPoint& globalPos, const QString& text, QWidget* widget);

/// For buttons, boxes, menus and tabs, and labels with a buddy, where "&" would mark a key:
/// `text` with each "&" doubled.
QString plainCaption(const QString& text);

/// For a window's title, where "[*]" would be the mark of unsaved work.
QString plainTitle(const QString& text);

/// A text painted on one line no wider than `width`: line ends and other control characters become
/// blanks, and an ellipsis stands for what does not fit. Costs no more for a long text.
QString oneLine(const QString& text, const QFontMetricsF& metrics, double width);

/// The lines of a text that is broken between words so that each is no wider than `width`; a word
/// that is wider by itself stays whole. At least one.
QStringList brokenLines(const QString& text, const QFontMetricsF& metrics, double width);

} // namespace ullage::app
