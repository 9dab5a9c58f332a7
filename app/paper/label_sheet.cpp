#include "app/paper/label_sheet.h"

#include <algorithm>

namespace ullage::app
{

namespace
{

const QSizeF kA4{210, 297};         // ISO 216
const QSizeF kLetter{215.9, 279.4}; // 8.5 × 11 in

LabelSheet aloneOf(const char* id, double width, double height)
{
    return {QLatin1String(id), {width, height}, {width, height}, {}, {width, height}, 1, 1};
}

} // namespace

QRectF LabelSheet::place(int index) const
{
    const int column = index % columns;
    const int row = index / columns;
    return {first + QPointF(column * pitch.width(), row * pitch.height()), label};
}

const std::vector<LabelSheet>& labelSheets()
{
    static const std::vector<LabelSheet> sheets{
        aloneOf("70x36", 70, 36),
        aloneOf("100x50", 100, 50),
        aloneOf("100x70", 100, 70),
        {QStringLiteral("a4-63.5x38.1"), kA4, {63.5, 38.1}, {7.25, 15.15}, {66, 38.1}, 3, 7},
        {QStringLiteral("a4-70x36"), kA4, {70, 36}, {0, 4.5}, {70, 36}, 3, 8},
        {QStringLiteral("a4-70x37"), kA4, {70, 37}, {0, 0.5}, {70, 37}, 3, 8},
        {QStringLiteral("a4-99.1x38.1"), kA4, {99.1, 38.1}, {4.65, 15.15}, {101.6, 38.1}, 2, 7},
        {QStringLiteral("a4-105x48"), kA4, {105, 48}, {0, 4.5}, {105, 48}, 2, 6},
        {QStringLiteral("a4-99.1x67.7"), kA4, {99.1, 67.7}, {4.65, 13.1}, {101.6, 67.7}, 2, 4},
        {QStringLiteral("a4-105x74"), kA4, {105, 74}, {0, 0.5}, {105, 74}, 2, 4},
        {QStringLiteral("letter-101.6x33.9"),
         kLetter,
         {101.6, 33.8667},
         {3.9688, 21.1667},
         {106.3625, 33.8667},
         2,
         7},
        {QStringLiteral("letter-101.6x50.8"),
         kLetter,
         {101.6, 50.8},
         {3.9688, 12.7},
         {106.3625, 50.8},
         2,
         5},
        {QStringLiteral("letter-101.6x84.7"),
         kLetter,
         {101.6, 84.6667},
         {3.9688, 12.7},
         {106.3625, 84.6667},
         2,
         3},
    };
    return sheets;
}

const LabelSheet* labelSheet(const QString& id)
{
    const auto& sheets = labelSheets();
    const auto found = std::find_if(sheets.begin(), sheets.end(), [&](const LabelSheet& sheet) {
        return sheet.id.compare(id, Qt::CaseInsensitive) == 0;
    });
    return found == sheets.end() ? nullptr : &*found;
}

} // namespace ullage::app
