// Pages of words, tables and curves, in black and white: what they say, and where it stands.
#pragma once

#include "app/paper/label_layout.h"

#include <QLineF>
#include <QList>
#include <QPointF>
#include <QSizeF>

#include <variant>
#include <vector>

namespace ullage::app
{

struct PaperColumn {
    QString title;
    bool right = false; ///< numbers, to the right
    bool tick = false;  ///< a box to tick stands in it
    bool write = false; ///< left empty for a pencil: wide enough for a figure by hand
};

struct PaperTable {
    std::vector<PaperColumn> columns;
    std::vector<QStringList> rows; ///< as many cells as there are columns
    bool total = false;            ///< the last row is the sum of those above
    QString none;                  ///< stands there where there is no row
};

struct PaperHeading {
    QString text;
};
struct PaperWords {
    QString text;
    bool bold = false;
};
/// A line to write on by hand.
struct PaperBlank {
    QString label;
};

/// A curve over days; told apart by its strokes, never by colour.
struct PaperCurve {
    QString name;
    std::vector<QPointF> points; ///< x rising
    bool dashed = false;
};
struct PaperChart {
    QString title;
    std::vector<PaperCurve> curves;
    double xMax = 1; ///< x from 0
    double yMax = 1; ///< y from 0
    std::vector<std::pair<double, QString>> xTicks;
    std::vector<std::pair<double, QString>> yTicks;
};

using PaperBlock = std::variant<PaperHeading, PaperWords, PaperTable, PaperBlank, PaperChart>;

struct PaperDocument {
    QString title; ///< of every page
    QString under; ///< below it: the book, the day
    std::vector<PaperBlock> blocks;
    double letters = 3.3; ///< size of the words, mm
};

/// A stroke in mm.
struct PaperStroke {
    QList<QPointF> points;
    double width = 0.2;
    bool dashed = false;
};

struct PaperPage {
    std::vector<LabelLine> lines;
    std::vector<PaperStroke> strokes;
};

/// White at the edges of a page, mm (common practice, no source: what any printer reaches).
inline constexpr double kPaperMargin = 15;

/// Lays the document out on sheets of this size in mm, one page at the least. Nothing is cut: words
/// are broken into lines, tables go on on the next page under their heading again.
std::vector<PaperPage> paperPages(const PaperDocument& document, const QSizeF& sheet);

} // namespace ullage::app
