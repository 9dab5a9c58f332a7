// A verdict as a shape, a word and a colour; any one of the three is enough to tell them apart.
#pragma once

#include "core/ledger/verdict.h"

#include <QColor>
#include <QIcon>
#include <QRectF>
#include <QString>

class QPainter;

namespace ullage::app
{

/// Between shape and word.
inline constexpr double kVerdictGap = 7;

/// What it looks like is what it is: there is no other list of verdicts, and no other word for one
/// than verdictWord() of app/words.
using VerdictLook = ledger::Verdict;

QColor verdictColour(VerdictLook look);

/// The shape alone: circle with a tick, triangle with "!", rounded square with "?", octagon with a
/// cross, hourglass. It fills the largest square centred in `rect`.
void paintVerdictShape(QPainter& painter, const QRectF& rect, VerdictLook look);

/// Shape and word on one line, left-aligned and centred vertically in `rect`; uses the painter's
/// font. Returns the width used.
double paintVerdict(QPainter& painter, const QRectF& rect, VerdictLook look);

/// As paintVerdict(), with words of the caller's in place of the verdict's own.
double paintMarkedText(QPainter& painter, const QRectF& rect, VerdictLook look,
                       const QString& text);

/// For menus and lists; follows the theme in force when it is made.
QIcon verdictIcon(VerdictLook look);

} // namespace ullage::app
