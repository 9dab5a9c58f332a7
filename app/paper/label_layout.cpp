#include "app/paper/label_layout.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <initializer_list>

namespace ullage::app
{

namespace
{

// Sizes that are tried, largest first: of the name's letters and of all others', mm.
struct LabelSizes {
    double name;
    double body;
};
constexpr std::array<LabelSizes, 9> kLabelSizes{{{16, 4.4},
                                                 {14, 3.8},
                                                 {12, 3.3},
                                                 {10, 3},
                                                 {8.5, 2.7},
                                                 {7.5, 2.5},
                                                 {6.5, 2.35},
                                                 {5.6, kSmallestLetters},
                                                 {kNameCapitals / kCapitals, kSmallestLetters}}};
constexpr double kBoxGap = 0.6;
constexpr double kMostBoxRows = 3;
// Of the label's width that the code may take: less where it leaves more room for words. What it
// says besides the id stands on the label as well.
constexpr std::initializer_list<double> kCodeShares{0.36, 0.3};
// Before a label is refused: still enough for an id that the program made, on a label of 70 mm.
constexpr std::initializer_list<double> kLastShare{0.27};

// Puts one thing below the other: beside the code as long as that lasts, then over all the width.
class LabelColumn
{
public:
    LabelColumn(LabelFace& face, const LabelSizes& sizes) : m_face(&face), m_sizes(sizes) {}

    [[nodiscard]] double width() const
    {
        const double right = m_y < m_face->codeAt.bottom() ? m_face->codeAt.left()
                                                           : m_face->size.width() - kLabelMargin;
        return right - kLabelMargin;
    }
    [[nodiscard]] bool fits() const { return m_y <= m_face->size.height() - kLabelMargin + 1e-9; }
    [[nodiscard]] double body() const { return m_sizes.body; }

    void text(const QString& words, const Letters& letters, int mostLines = 0)
    {
        QString rest = seenText(words).split(u' ', Qt::SkipEmptyParts).join(u' ');
        for (int count = 1; !rest.isEmpty() && fits(); ++count) {
            if (mostLines > 0 && count > mostLines) {
                m_y = m_face->size.height() + 1; // does not fit
                return;
            }
            // Each by itself: below the code there is more room.
            const QString line = firstLine(rest, letters, width());
            m_face->lines.push_back({{kLabelMargin, m_y + kBaseline * letters.mm}, line, letters});
            m_y += kLinePitch * letters.mm;
            rest = afterLine(rest, line);
        }
    }
    void gap(double mm) { m_y += mm; }

    // False where they take more rows than there may be.
    bool boxes(int count, int done)
    {
        const double narrow = kSmallestBox + kBoxGap;
        const int inRow = static_cast<int>((width() + kBoxGap) / narrow);
        if (inRow < 1 || std::ceil(double(count) / inRow) > kMostBoxRows)
            return false;
        const int rows = (count + inRow - 1) / inRow;
        const int columns = (count + rows - 1) / rows;
        const double wide =
            std::min((width() + kBoxGap) / columns, std::max(narrow, 2 * m_sizes.body)) - kBoxGap;
        const double high = std::max(wide * 1.1, 2 * kSmallestLetters);
        for (int i = 0; i < count; ++i) {
            const QRectF at(kLabelMargin + (i % columns) * (wide + kBoxGap),
                            m_y + (i / columns) * (high + kBoxGap), wide, high);
            m_face->boxes.push_back({at, i + 1, i < done});
        }
        m_y += rows * (high + kBoxGap) + kBoxGap;
        return true;
    }

private:
    LabelFace* m_face;
    LabelSizes m_sizes;
    double m_y = kLabelMargin * 0.75; // letters begin below the top of their line
};

bool keeps(const LabelFace& face, LabelPart part)
{
    return std::find(face.leftOut.begin(), face.leftOut.end(), part) == face.leftOut.end();
}

// A name is written smaller before one of its words is broken.
double nameLetters(const QString& name, double largest, double width)
{
    double letters = largest;
    for (const QString& word : seenText(name).split(u' ', Qt::SkipEmptyParts)) {
        for (const LabelSizes& sizes : kLabelSizes) {
            if (sizes.name < letters && textWidth(word, {letters, true}) > width)
                letters = sizes.name;
        }
    }
    return letters;
}

// Whether it all fits with letters of these sizes.
bool fill(LabelFace& face, const LabelWords& words, const LabelSizes& sizes)
{
    face.lines.clear();
    face.boxes.clear();
    LabelColumn column(face, sizes);
    const double body = sizes.body;
    column.text(words.name, {nameLetters(words.name, sizes.name, column.width()), true}, 2);
    if (!column.fits())
        return false;
    column.gap(0.3);
    const bool vessel = keeps(face, LabelPart::Vessel) && !words.vessel.isEmpty();
    const bool oneLine = textWidth(seenText(words.contents), {body * 1.1}) <= column.width();
    column.text(words.contents, {oneLine ? body * 1.1 : body});
    if (vessel)
        column.text(words.vessel, {body});
    const QString dates = words.mixed + QStringLiteral("\u00a0\u00a0\u00a0 ") + words.discardBy;
    const Letters date{body * 1.05, true};
    if (textWidth(dates, date) <= column.width()) {
        column.text(dates, date);
    } else {
        column.text(words.mixed, date);
        column.text(words.discardBy, date);
    }
    column.gap(0.6);
    const bool boxes = keeps(face, LabelPart::Boxes) && words.films > 0;
    if (boxes && !column.boxes(words.films, words.filmsDone))
        return false;
    if (!boxes && !words.filmsInWords.isEmpty())
        column.text(words.filmsInWords, {body});
    if (keeps(face, LabelPart::Wear))
        column.text(words.wear, {body});
    column.gap(0.4);
    column.text(words.notForDrinking, {body, true});
    column.text(words.contains, {body});
    if (keeps(face, LabelPart::Statements) && !words.statements.isEmpty())
        column.text(words.statements.join(QStringLiteral(" · ")), {body});
    if (keeps(face, LabelPart::Care))
        column.text(words.care, {body});
    return column.fits();
}

struct PlacedCode {
    SquareCode code;
    double module = 0; // mm
    QRectF at;
};

// One for each of these shares of the label's width that has room for it.
std::vector<PlacedCode> codesOf(const QStringList& lines, const QSizeF& size,
                                std::initializer_list<double> shares)
{
    std::vector<PlacedCode> codes;
    for (const double share : shares) {
        const double most = std::min(size.height(), size.width() * share);
        const auto code = squareCode(lines, static_cast<int>(most / kSmallestModule + 1e-9));
        if (!code)
            continue;
        const int modules = code->side + 2 * kQuietModules;
        const double module = std::min(most / modules, kLargestModule);
        const double side = modules * module;
        // Its white round it takes the place of the margin.
        codes.push_back({*code, module, {size.width() - side, 0, side, side}});
    }
    return codes;
}

// With letters as large as they can be.
bool lay(LabelFace& face, const LabelWords& words, const std::vector<PlacedCode>& codes)
{
    for (const PlacedCode& placed : codes) {
        face.code = placed.code;
        face.module = placed.module;
        face.codeAt = placed.at;
        for (const LabelSizes& sizes : kLabelSizes) {
            if (fill(face, words, sizes))
                return true;
        }
    }
    return false;
}

// First with its boxes, whatever else is left out for them. Where there are more of them than there
// is ever room for, they are no reason to leave out anything else.
bool leaveOut(LabelFace& face, const LabelWords& words, const std::vector<PlacedCode>& codes)
{
    for (const bool boxes : {true, false}) {
        for (int leftOut = 0; leftOut < kLabelParts; ++leftOut) {
            face.leftOut.clear();
            for (int part = 0; part < leftOut; ++part)
                face.leftOut.push_back(LabelPart(part));
            if (!boxes)
                face.leftOut.push_back(LabelPart::Boxes);
            if (lay(face, words, codes))
                return true;
        }
    }
    return false;
}

} // namespace

tl::expected<LabelFace, LabelProblem> labelFace(const LabelWords& words, const QSizeF& size)
{
    LabelFace face;
    face.size = size;
    const auto codes = codesOf(words.code, size, kCodeShares);
    if (leaveOut(face, words, codes))
        return face;
    const auto last = codesOf(words.code, size, kLastShare);
    if (lay(face, words, last))
        return face;
    return tl::unexpected(codes.empty() && last.empty() ? LabelProblem::CodeTooLarge
                                                        : LabelProblem::WordsTooLong);
}

} // namespace ullage::app
