#include "app/widgets/plain_text.h"

#include <QAction>
#include <QToolTip>
#include <QWidget>

namespace ullage::app
{

namespace
{

// A plain tooltip is not wrapped by Qt: beyond this it grows wider than is read at a glance.
constexpr qsizetype kOneLine = 90;
constexpr qsizetype kLongest = 1000;

// As much as anybody reads at a glance; no character is cut in two.
QString beginning(const QString& text)
{
    if (text.size() <= kLongest)
        return text;
    const bool splitsPair = text.at(kLongest - 1).isHighSurrogate();
    return text.left(kLongest - (splitsPair ? 1 : 0)) + QChar(0x2026);
}

} // namespace

QString plainText(const QString& text)
{
    return Qt::mightBeRichText(text) ? Qt::convertFromPlainText(text, Qt::WhiteSpaceNormal) : text;
}

QString plainToolTip(const QString& text)
{
    const QString shown = beginning(text);
    // As markup Qt wraps it.
    return shown.size() > kOneLine ? Qt::convertFromPlainText(shown, Qt::WhiteSpaceNormal)
                                   : plainText(shown);
}

void setPlainToolTip(QWidget* widget, const QString& text)
{
    widget->setToolTip(plainToolTip(text));
}

void setPlainToolTip(QAction* action, const QString& text)
{
    action->setToolTip(plainToolTip(text));
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

QString oneLine(const QString& text, const QFontMetricsF& metrics, double width)
{
    QString line = beginning(text);
    for (QChar& c : line) {
        if (c.category() == QChar::Other_Control || c.category() == QChar::Separator_Line ||
            c.category() == QChar::Separator_Paragraph)
            c = u' ';
    }
    return metrics.elidedText(line, Qt::ElideRight, width);
}

QStringList brokenLines(const QString& text, const QFontMetricsF& metrics, double width)
{
    QStringList lines{QString()};
    for (const QString& word : text.split(u' ')) {
        QString& line = lines.back();
        const QString longer = line.isEmpty() ? word : line + u' ' + word;
        if (!line.isEmpty() && metrics.horizontalAdvance(longer) > width)
            lines << word;
        else
            line = longer;
    }
    return lines;
}

} // namespace ullage::app
