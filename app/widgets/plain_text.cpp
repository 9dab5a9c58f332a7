#include "app/widgets/plain_text.h"

#include <QToolTip>

namespace ullage::app
{

namespace
{

// A plain tooltip is not wrapped by Qt: beyond this it grows wider than is read at a glance.
constexpr qsizetype kOneLine = 90;
constexpr qsizetype kLongest = 1000;

} // namespace

PlainLabel::PlainLabel(QWidget* parent, Qt::WindowFlags flags) : QLabel(parent, flags)
{
    setTextFormat(Qt::PlainText);
}

PlainLabel::PlainLabel(const QString& text, QWidget* parent, Qt::WindowFlags flags)
    : QLabel(parent, flags)
{
    setTextFormat(Qt::PlainText); // before the text: nothing is to be guessed about it
    setText(text);
}

QString plainText(const QString& text)
{
    return Qt::mightBeRichText(text) ? Qt::convertFromPlainText(text, Qt::WhiteSpaceNormal) : text;
}

QString plainToolTip(const QString& text)
{
    QString shown = text;
    if (shown.size() > kLongest) {
        const bool splitsPair = shown.at(kLongest - 1).isHighSurrogate();
        shown = shown.left(kLongest - (splitsPair ? 1 : 0)) + QStringLiteral("…");
    }
    // As markup Qt wraps it.
    return shown.size() > kOneLine ? Qt::convertFromPlainText(shown, Qt::WhiteSpaceNormal)
                                   : plainText(shown);
}

void setPlainToolTip(QWidget* widget, const QString& text)
{
    widget->setToolTip(plainToolTip(text));
}

void showPlainToolTip(const QPoint& globalPos, const QString& text, QWidget* widget)
{
    QToolTip::showText(globalPos, plainToolTip(text), widget);
}

QString plainCaption(const QString& text)
{
    return QString(text).replace(u'&', QStringLiteral("&&"));
}

QString plainTitle(const QString& text)
{
    return QString(text).replace(QStringLiteral("[*]"), QStringLiteral("[*][*]"));
}

} // namespace ullage::app
