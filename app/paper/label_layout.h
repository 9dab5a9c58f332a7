// Where everything stands on a label, in millimetres. Nothing is drawn here.
#pragma once

#include "app/paper/label_words.h"
#include "app/paper/paper_ink.h"
#include "app/paper/square_code.h"

#include <tl/expected.hpp>

#include <QRectF>
#include <QSizeF>

#include <vector>

namespace ullage::app
{

/// White at the edges, mm: printers feed a sheet no better than that (common practice, no source).
inline constexpr double kLabelMargin = 2;
/// Smallest size of letters, mm: those of a Latin alphabet are 1.2 mm high without their stems
/// then, as on labels of chemicals (Regulation (EC) 1272/2008, annex I, 1.2.1, from memory).
inline constexpr double kSmallestLetters = 2.2;
/// Smallest capitals of the bottle's name, mm: read at 0.7 m, an arm's length, by the rule of one
/// part in two hundred (common practice, no source).
inline constexpr double kNameCapitals = 3.5;
/// Smallest and largest module of the square code, mm.
inline constexpr double kSmallestModule = 0.5;
inline constexpr double kLargestModule = 0.8;
/// Smallest box to tick with a pencil, mm wide.
inline constexpr double kSmallestBox = 3.4;

struct LabelLine {
    QPointF baseline; ///< mm
    QString text;
    Letters letters;
};

struct LabelBox {
    QRectF at; ///< mm
    int number = 1;
    bool done = false; ///< struck through
};

/// What may be left out where there is no room, in this order; but boxes that have no room even so
/// are left out first, and the others stay. All else stands on every label.
enum class LabelPart {
    Statements, ///< what the hazard statements say; their codes stay
    Vessel,
    Care, ///< gloves and the like
    Wear,
    Boxes, ///< in numbers then
};
inline constexpr int kLabelParts = 5;

struct LabelFace {
    QSizeF size; ///< mm
    std::vector<LabelLine> lines;
    std::vector<LabelBox> boxes;
    SquareCode code;
    QRectF codeAt;     ///< with the white round it, mm
    double module = 0; ///< mm
    std::vector<LabelPart> leftOut;
};

/// Why a label cannot be made.
enum class LabelProblem {
    CodeTooLarge, ///< the batch's id is too long for a code of this size
    WordsTooLong, ///< what must stand on it does not fit
};

/// Lays a label out with letters as large as they can be. Nothing is ever cut: what does not fit is
/// left out whole, in the order of LabelPart, or the label is refused.
tl::expected<LabelFace, LabelProblem> labelFace(const LabelWords& words, const QSizeF& size);

} // namespace ullage::app
