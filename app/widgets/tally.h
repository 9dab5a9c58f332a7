// Tally marks, as people write them on bottles: four strokes and a fifth across them.
#pragma once

#include <QRectF>
#include <QString>

class QPainter;

namespace ullage::app
{

/// Above this many films the strokes give way to one group of five and the number.
inline constexpr double kMostTallied = 25;

/// What is drawn for a count of films: whole strokes, and one short stroke for a part of a film.
struct TallyStrokes {
    int whole = 0;
    bool part = false;   ///< a short stroke for the part of a film
    bool number = false; ///< too many for strokes: one group and the number
};

/// Counts within a thousandth of a whole film are whole (three thirds make one).
TallyStrokes tallyStrokes(double films);

/// Width of the marks for strokes `height` tall. `uncounted`: other films went through before them,
/// for which a hatched box stands.
double tallyWidth(double films, double height, bool uncounted = false);

/// Paints the marks in the painter's pen colour, aligned in `rect`; strokes are as tall as `rect`
/// is. Nothing is painted for no films.
void paintTally(QPainter& painter, const QRectF& rect, Qt::Alignment alignment, double films,
                bool uncounted = false);

/// "7 films", "2⅓ films", "not used yet"; "at least 7 films", "films not known".
QString tallyText(double films, bool uncounted = false);

} // namespace ullage::app
