// Draws keeping.svg and ageing.svg into the folder named: the model's curves over published points.
#include "core/chemistry/oxygen.h"
#include "core/formulary/implied.h"

#include <cmath>
#include <cstdio>
#include <fstream>
#include <iostream>
#include <string>
#include <vector>

namespace
{

using namespace ullage;
using namespace ullage::chemistry;

struct Point {
    double x;
    double y;
};

// A chart with straight axes; coordinates rounded to a tenth of a pixel.
class Plot
{
public:
    Plot(double right, double top, std::string title, std::string across, std::string up)
        : m_right(right), m_top(top)
    {
        m_body += text(kWidth / 2, 22, "middle", title, 15);
        m_body += text(kWidth / 2, kHeight - 10, "middle", across, 12);
        m_body += text(kLeft - 42, kUpper - 14, "start", up, 12);
    }

    void ticks(const std::vector<double>& across, const std::vector<double>& up, int decimals)
    {
        for (const double x : across) {
            line({{x, 0}, {x, m_top}}, "#ddd", "");
            m_body += text(px(x), kHeight - kLower + 18, "middle", number(x, 0), 11);
        }
        for (const double y : up) {
            line({{0, y}, {m_right, y}}, "#ddd", "");
            m_body += text(kLeft - 8, py(y) + 4, "end", number(y, decimals), 11);
        }
    }
    void line(const std::vector<Point>& points, const std::string& colour, const std::string& dash)
    {
        m_body += "<polyline fill=\"none\" stroke=\"" + colour + "\" stroke-width=\"1.5\"";
        m_body += dash.empty() ? "" : " stroke-dasharray=\"" + dash + "\"";
        m_body += " points=\"";
        for (const Point& point : points) {
            m_body += number(px(point.x), 1) + "," + number(py(point.y), 1) + " ";
        }
        m_body += "\"/>\n";
    }
    void dots(const std::vector<Point>& points, const std::string& colour)
    {
        for (const Point& point : points) {
            m_body += "<circle r=\"3.5\" fill=\"" + colour + "\" cx=\"" + number(px(point.x), 1) +
                      "\" cy=\"" + number(py(point.y), 1) + "\"/>\n";
        }
    }
    void label(Point at, const std::string& words)
    {
        m_body += text(px(at.x), py(at.y), "start", words, 11);
    }

    [[nodiscard]] bool save(const std::string& path) const
    {
        std::ofstream file(path, std::ios::binary);
        file << "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " << kWidth << ' '
             << kHeight << "\" font-family=\"sans-serif\">\n<rect width=\"" << kWidth
             << "\" height=\"" << kHeight << "\" fill=\"#fff\"/>\n"
             << m_body << "</svg>\n";
        return file.flush().good();
    }

private:
    static constexpr int kWidth = 640;
    static constexpr int kHeight = 400;
    static constexpr int kLeft = 60;
    static constexpr int kUpper = 52;
    static constexpr int kLower = 50;

    [[nodiscard]] double px(double x) const { return kLeft + x / m_right * (kWidth - kLeft - 20); }
    [[nodiscard]] double py(double y) const
    {
        return kHeight - kLower - y / m_top * (kHeight - kLower - kUpper);
    }
    static std::string number(double value, int decimals)
    {
        char buffer[32];
        std::snprintf(buffer, sizeof buffer, "%.*f", decimals, value);
        return buffer;
    }
    static std::string text(double x, double y, const std::string& anchor, const std::string& words,
                            int size)
    {
        return "<text x=\"" + number(x, 1) + "\" y=\"" + number(y, 1) + "\" text-anchor=\"" +
               anchor + "\" font-size=\"" + std::to_string(size) + "\">" + words + "</text>\n";
    }

    double m_right;
    double m_top;
    std::string m_body;
};

formulary::Solution stock()
{
    formulary::Solution solution;
    solution.id = solution.name = "stock";
    solution.role = formulary::Role::Developer;
    solution.keeping = {Days(182.625), Days(60.875), {}};
    return solution;
}

std::vector<Point> keepingLine(formulary::Material material, int openings,
                               const AirConstants& constants = {})
{
    formulary::Vessel bottle;
    bottle.id = bottle.name = "bottle";
    bottle.capacity = formulary::kReferenceCapacity;
    bottle.material = material;
    std::vector<Point> points;
    for (double fill = 60; fill <= 1030; fill += 10) {
        const auto days =
            formulary::keepsFor(stock(), bottle, Millilitres(fill), openings, constants);
        points.push_back({fill, days ? days->value() : 0});
    }
    return points;
}

// As if the half-full bottle of the published time had been opened so often.
AirConstants openedSoOften(int openings)
{
    AirConstants constants;
    constants.halfOpenings = openings;
    return constants;
}

bool drawKeeping(const std::string& folder)
{
    Plot plot(1030, 200, "How long an MQ-borax stock keeps, by how full the bottle is",
              "mL of solution in a bottle of 1030 mL", "days");
    plot.ticks({0, 250, 515, 750, 1000}, {0, 50, 100, 150, 200}, 0);
    using formulary::Material;
    plot.line(keepingLine(Material::Glass, 2), "#1f5fa8", "");
    plot.line(keepingLine(Material::Glass, 1), "#1f5fa8", "6 4");
    plot.line(keepingLine(Material::Glass, 1, openedSoOften(1)), "#1f5fa8", "2 4");
    plot.line(keepingLine(Material::Glass, 1, openedSoOften(4)), "#1f5fa8", "2 4");
    plot.line(keepingLine(Material::Hdpe, 1), "#b0501e", "");
    plot.dots({{1000, 182.625}, {515, 60.875}}, "#222");
    plot.label({40, 190}, "blue: glass, opened once more half way; dashed: left alone");
    plot.label({40, 178},
               "dotted: left alone, had the published half-full one been opened 1 or 4 times");
    plot.label({40, 166}, "brown: HDPE, left alone · dots: the two published times");
    plot.label({40, 154}, "below 515 mL all is extrapolated");
    return plot.save(folder + "/keeping.svg");
}

// The data of R.E. Chapman 1997, see tests/published/ageing_test.cpp.
bool drawAgeing(const std::string& folder)
{
    const std::vector<std::pair<double, std::vector<Point>>> ovens{
        {72,
         {{72, 3.55},
          {144, 3.27},
          {216, 2.89},
          {288, 2.55},
          {360, 2.34},
          {432, 2.14},
          {504, 1.77}}},
        {82,
         {{48, 3.52}, {96, 3.35}, {144, 2.50}, {192, 2.10}, {240, 1.90}, {288, 1.47}, {336, 1.19}}},
        {92,
         {{24, 3.46}, {48, 2.91}, {72, 2.27}, {96, 1.49}, {120, 1.20}, {144, 1.04}, {168, 0.65}}}};
    const char* colours[]{"#1f5fa8", "#3d7a3a", "#b0501e"};
    Plot plot(520, 4, "Ageing without air: maximum density against hours in the oven", "hours",
              "density");
    plot.ticks({0, 100, 200, 300, 400, 500}, {0, 1, 2, 3, 4}, 1);
    for (std::size_t i = 0; i < ovens.size(); ++i) {
        const auto& [celsius, readings] = ovens[i];
        const double rate = std::exp(-4.762) * ageingFactor(Celsius(celsius)) /
                            ageingFactor(Celsius(82)); // per hour
        const double last = readings.back().x;
        plot.line({{0, 3.776}, {last, 3.776 - rate * last}}, colours[i], "");
        plot.dots(readings, colours[i]);
        plot.label({last + 6, readings.back().y}, std::to_string(int(celsius)) + " °C");
    }
    return plot.save(folder + "/ageing.svg");
}

} // namespace

int main(int argc, char** argv)
{
    if (argc != 2) {
        std::cerr << "usage: ullage_chemistry_plots FOLDER\n";
        return 2;
    }
    const std::string folder = argv[1];
    return drawKeeping(folder) && drawAgeing(folder) ? 0 : 1;
}
