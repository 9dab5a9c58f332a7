#include "app/widgets/colours.h"

#include <algorithm>
#include <cmath>

namespace ullage::app
{

const Colours& lightColours()
{
    static const Colours colours{
        .paper = "#F4F1EA",
        .rail = "#EAE5DA",
        .card = "#FFFFFF",
        .raised = "#F4F1EA",
        .selected = "#F7EBDB",
        .caution = "#FFF6E5",
        .calm = "#E8F1EF",
        .tape = "#FFFDF6",
        .glass = "#FBF8F1",
        .border = "#D9D3C6",
        .hairline = "#E2DDD2",
        .cautionBorder = "#E6C98F",
        .tapeBorder = "#CFC6B2",
        .shelf = "#CDBFA6",
        .hatch = "#B9AF9C",
        .focus = "#3B5BA5",
        .ink = "#20262B",
        .quiet = "#59626B",
        .onInk = "#FFFFFF",
        .tapeInk = "#20262B",
        .tapeQuiet = "#59626B",
        .brown = "#8A4B16",
        .blue = "#3B5BA5",
        .green = "#2B6E63",
        .amber = "#955800",
        .red = "#A3261D",
        .grey = "#6F747B",
        .honey = "#C9944F",
        .sand = "#E9D9BF",
        .fan = "#F3E7D8",
    };
    return colours;
}

const Colours& darkColours()
{
    static const Colours colours{
        .paper = "#1A1B1C",
        .rail = "#131415",
        .card = "#232526",
        .raised = "#2E3031",
        .selected = "#3A3126",
        .caution = "#2E2719",
        .calm = "#1E302D",
        .tape = "#E9E4D6",
        .glass = "#2A2B2B",
        .border = "#3D4042",
        .hairline = "#36393B",
        .cautionBorder = "#6B5527",
        .tapeBorder = "#A79F8C",
        .shelf = "#6A5D47",
        .hatch = "#6C675D",
        .focus = "#9DB4F0",
        .ink = "#ECE8DF",
        .quiet = "#A8A79F",
        .onInk = "#1A1B1C",
        .tapeInk = "#20262B",
        .tapeQuiet = "#545B62",
        .brown = "#D9995A",
        .blue = "#93ACEE",
        .green = "#6DC0AF",
        .amber = "#E3AC52",
        .red = "#F28F83",
        .grey = "#9A9FA5",
        .honey = "#F0C896",
        .sand = "#5A4E3E",
        .fan = "#3A3229",
    };
    return colours;
}

const Colours& darkRoomColours()
{
    static const Colours colours{
        .paper = "#000000",
        .rail = "#000000",
        .card = "#0C0000",
        .raised = "#1C0000",
        .selected = "#340000",
        .caution = "#140000",
        .calm = "#1C0000",
        .tape = "#1C0000",
        .glass = "#0C0000",
        .border = "#500000",
        .hairline = "#340000",
        .cautionBorder = "#780000",
        .tapeBorder = "#780000",
        .shelf = "#500000",
        .hatch = "#780000",
        .focus = "#FF0000",
        .ink = "#FF0000",
        .quiet = "#D20000",
        .onInk = "#000000",
        .tapeInk = "#FF0000",
        .tapeQuiet = "#D20000",
        .brown = "#E60000",
        .blue = "#FF0000",
        .green = "#FF0000",
        .amber = "#FF0000",
        .red = "#FF0000",
        .grey = "#B40000",
        .honey = "#960000",
        .sand = "#640000",
        .fan = "#280000",
    };
    return colours;
}

double contrast(const QColor& a, const QColor& b)
{
    const auto luminance = [](const QColor& colour) {
        const auto linear = [](double v) {
            return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
        };
        return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
               0.0722 * linear(colour.blueF());
    };
    const auto [dark, light] = std::minmax({luminance(a), luminance(b)});
    return (light + 0.05) / (dark + 0.05);
}

QColor blend(const QColor& a, const QColor& b, double share)
{
    const auto mix = [share](float x, float y) {
        return static_cast<float>(x + (y - x) * std::clamp(share, 0.0, 1.0));
    };
    return QColor::fromRgbF(mix(a.redF(), b.redF()), mix(a.greenF(), b.greenF()),
                            mix(a.blueF(), b.blueF()), mix(a.alphaF(), b.alphaF()));
}

} // namespace ullage::app
