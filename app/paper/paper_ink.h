// Words on paper: letters by their size in millimetres, measured before they are drawn.
#pragma once

#include <QPointF>
#include <QRectF>
#include <QString>
#include <QStringList>

class QFont;
class QPagedPaintDevice;
class QPainter;

namespace ullage::app
{

/// A painter whose unit is this part of a millimetre: fonts have whole sizes in it.
inline constexpr double kUnitsPerMillimetre = 100;

/// Size of letters and their weight. `mm` is the size of the font; capitals are about 0.73 of it.
struct Letters {
    double mm = 2.2;
    bool bold = false;
};
/// From one line to the next, of letters of size 1.
inline constexpr double kLinePitch = 1.2;
/// From the top of a line to what its letters stand on.
inline constexpr double kBaseline = 0.97;
/// Height of a capital, of letters of size 1.
inline constexpr double kCapitals = 0.72;

/// Family of all letters, on paper and on screen: the one the house likes best where this machine
/// has it, else the machine's own.
const QString& houseFamily();
/// In units of kUnitsPerMillimetre.
QFont paperFont(const Letters& letters);
/// Typed text with control characters and marks of reading direction written out.
QString seenText(const QString& typed);
/// In mm.
double textWidth(const QString& text, const Letters& letters);
/// Lines no wider than `width` mm; words are broken only where one alone is wider. Nothing is lost
/// but the blanks between lines; what cannot be seen is written as seenText() does.
QStringList wrappedLines(const QString& text, const Letters& letters, double width);
/// The first of those lines, of words that seenText() made, parted by one blank each.
QString firstLine(const QString& words, const Letters& letters, double width);
/// What comes behind it.
QString afterLine(const QString& words, const QString& line);

/// Draws one line with its letters on `baseline` (mm).
void drawLine(QPainter& painter, const QPointF& baseline, const QString& text,
              const Letters& letters);
/// A rectangle in mm as the painter counts.
QRectF units(const QRectF& mm);
QPointF units(const QPointF& mm);

/// Sets up a painter on the device: origin at the corner of its sheet, black, kUnitsPerMillimetre.
void beginPaper(QPainter& painter, const QPagedPaintDevice& device);

} // namespace ullage::app
