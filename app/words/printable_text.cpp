#include "app/words/printable_text.h"

#include <QStringList>

namespace ullage::app
{

namespace
{

constexpr char16_t kFirstMark = 0x200E; // left-to-right mark, right-to-left mark

bool turnsReading(char16_t c)
{
    return c == kFirstMark || c == kFirstMark + 1 || c == 0x061C || (c >= 0x202A && c <= 0x202E) ||
           (c >= 0x2066 && c <= 0x2069);
}

bool isControl(char16_t c)
{
    return c < 0x20 || (c >= 0x7F && c <= 0x9F) || c == 0x2028 || c == 0x2029 || turnsReading(c);
}

QString escaped(char16_t c)
{
    switch (c) {
    case u'\n':
        return QStringLiteral("\\n");
    case u'\r':
        return QStringLiteral("\\r");
    case u'\t':
        return QStringLiteral("\\t");
    default:
        return (c <= 0xFF ? QStringLiteral("\\x%1") : QStringLiteral("\\u%1"))
            .arg(ushort(c), c <= 0xFF ? 2 : 4, 16, QLatin1Char('0'));
    }
}

} // namespace

QString printable(const QString& text, qsizetype most)
{
    QString shown;
    qsizetype count = 0;
    for (qsizetype i = 0; i < text.size(); ++i, ++count) {
        if (count == most) {
            return shown + QChar(0x2026);
        }
        const QChar c = text[i];
        if (c.isHighSurrogate() && i + 1 < text.size() && text[i + 1].isLowSurrogate()) {
            shown += c;
            shown += text[++i];
        } else if (c.isSurrogate()) {
            shown += QChar::ReplacementCharacter;
        } else if (isControl(c.unicode())) {
            shown += escaped(c.unicode());
        } else {
            shown += c;
        }
    }
    return shown;
}

QString printableLines(const QString& text)
{
    QStringList lines = text.split(u'\n');
    for (QString& line : lines) {
        line = printable(line, line.size());
    }
    return lines.join(u'\n');
}

QString shortened(const QString& text, int most)
{
    constexpr int kEnd = 60; // of a path and its message the end tells most
    const QString kept =
        text.size() <= most ? text : text.left(most - kEnd) + QChar(0x2026) + text.right(kEnd);
    return printable(kept, kept.size());
}

} // namespace ullage::app
