#include "app/widgets/bottle_shape.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace ullage::app
{

namespace
{

struct HalfOutline {
    QPainterPath path;   // from the base's centre up to the top of the neck: x radius, y height
    double shoulder = 0; // where the body ends and the shoulder begins
    double label = 0;
};

// Round-shouldered laboratory glass.
HalfOutline glass()
{
    HalfOutline half{.shoulder = 112, .label = 62};
    half.path.lineTo(37, 0);
    half.path.quadTo(46, 0, 46, 9);
    half.path.lineTo(46, 112);
    half.path.cubicTo(46, 132, 34, 138, 24, 143);
    half.path.cubicTo(18, 146, 16, 149, 16, 155);
    half.path.lineTo(16, 166);
    return half;
}

// Drinks-type PET: footed base, slim waist, long sloping shoulder.
HalfOutline pet()
{
    HalfOutline half{.shoulder = 104, .label = 58};
    half.path.lineTo(26, 0);
    half.path.cubicTo(36, 0, 42, 6, 42, 16);
    half.path.cubicTo(42, 24, 41, 30, 40, 38);
    half.path.lineTo(40, 82);
    half.path.cubicTo(41, 90, 42, 96, 42, 104);
    half.path.cubicTo(42, 128, 14, 146, 13, 162);
    half.path.lineTo(13, 172);
    return half;
}

// Square-shouldered jug of stiff polyethylene.
HalfOutline hdpe()
{
    HalfOutline half{.shoulder = 118, .label = 60};
    half.path.lineTo(42, 0);
    half.path.quadTo(52, 0, 52, 10);
    half.path.lineTo(52, 118);
    half.path.cubicTo(52, 132, 40, 134, 26, 136);
    half.path.cubicTo(20, 137, 18, 139, 18, 143);
    half.path.lineTo(18, 150);
    return half;
}

// Soft polyethylene: a round dome.
HalfOutline ldpe()
{
    HalfOutline half{.shoulder = 96, .label = 56};
    half.path.lineTo(34, 0);
    half.path.quadTo(44, 1, 44, 12);
    half.path.lineTo(44, 96);
    half.path.cubicTo(44, 128, 26, 142, 17, 146);
    half.path.lineTo(17, 158);
    return half;
}

// Straight-sided polypropylene with a wide mouth.
HalfOutline pp()
{
    HalfOutline half{.shoulder = 124, .label = 62};
    half.path.lineTo(38, 0);
    half.path.quadTo(43, 0, 43, 5);
    half.path.lineTo(43, 124);
    half.path.cubicTo(43, 136, 30, 138, 28, 146);
    half.path.lineTo(28, 158);
    return half;
}

HalfOutline halfOutline(BottleMaterial material)
{
    switch (material) {
    case BottleMaterial::Glass:
        return glass();
    case BottleMaterial::Pet:
        return pet();
    case BottleMaterial::Hdpe:
        return hdpe();
    case BottleMaterial::Ldpe:
        return ldpe();
    case BottleMaterial::Pp:
        return pp();
    }
    return glass();
}

double sizeOf(double capacityMl)
{
    return std::clamp(std::pow(std::max(capacityMl, 1.0) / 1000, 0.22), 0.62, 1.15);
}

// The volume of the frustum between two points of a profile.
double slice(const QPointF& a, const QPointF& b)
{
    return std::numbers::pi / 3 * (b.y() - a.y()) * (a.x() * a.x() + a.x() * b.x() + b.x() * b.x());
}

double volumeOf(const std::vector<QPointF>& profile)
{
    double sum = 0;
    for (std::size_t i = 1; i < profile.size(); ++i)
        sum += slice(profile[i - 1], profile[i]);
    return sum;
}

std::vector<QPointF> narrowed(const std::vector<QPointF>& profile, double shoulder, double waist)
{
    std::vector<QPointF> result = profile;
    for (QPointF& point : result) {
        if (point.y() >= shoulder || point.y() <= 0)
            continue;
        const double dip = std::pow(std::sin(std::numbers::pi * point.y() / shoulder), 1.4);
        point.rx() *= 1 - (1 - waist) * dip;
    }
    return result;
}

} // namespace

BottleShape::BottleShape(BottleMaterial material, double capacityMl,
                         std::optional<double> squeezedToMl)
{
    const HalfOutline half = halfOutline(material);
    const double size = sizeOf(capacityMl);
    m_labelHeight = half.label * size;
    // Steps in height rather than along the path, so that a narrowed body has points to move.
    constexpr int kSteps = 400;
    const QPolygonF fine = half.path.toSubpathPolygons(QTransform::fromScale(16, 16)).constFirst();
    std::vector<QPointF> raw;
    for (const QPointF& point : fine)
        raw.push_back(point / 16 * size);
    const double top = raw.back().y();
    std::size_t i = 0;
    for (int step = 0; step <= kSteps; ++step) {
        const double y = top * step / kSteps;
        while (i + 2 < raw.size() && raw[i + 1].y() <= y)
            ++i;
        const QPointF a = raw[i];
        const QPointF b = raw[i + 1];
        const double span = b.y() - a.y();
        const double x = span > 0 ? a.x() + (b.x() - a.x()) * (y - a.y()) / span : b.x();
        m_profile.emplace_back(x, y);
        m_width = std::max(m_width, 2 * x);
    }
    m_innerMl = capacityMl;
    if (squeezedToMl && *squeezedToMl < capacityMl) {
        constexpr double kNarrowest = 0.3;
        const double full = volumeOf(m_profile);
        const double wanted = *squeezedToMl / capacityMl;
        const double shoulder = half.shoulder * size;
        double low = kNarrowest;
        double high = 1;
        for (int round = 0; round < 40; ++round) {
            const double middle = (low + high) / 2;
            (volumeOf(narrowed(m_profile, shoulder, middle)) / full < wanted ? low : high) = middle;
        }
        m_profile = narrowed(m_profile, shoulder, low);
        m_innerMl = capacityMl * volumeOf(m_profile) / full;
    }
    integrate();
}

void BottleShape::integrate()
{
    m_below.assign(1, 0);
    for (std::size_t i = 1; i < m_profile.size(); ++i)
        m_below.push_back(m_below.back() + slice(m_profile[i - 1], m_profile[i]));
}

double BottleShape::radiusAt(double height) const
{
    const double share = std::clamp(height / this->height(), 0.0, 1.0);
    const double at = share * static_cast<double>(m_profile.size() - 1);
    const auto i = std::min(static_cast<std::size_t>(at), m_profile.size() - 2);
    const double rest = at - static_cast<double>(i);
    return m_profile[i].x() * (1 - rest) + m_profile[i + 1].x() * rest;
}

double BottleShape::levelOf(double volumeMl) const
{
    if (!(volumeMl > 0) || !(m_innerMl > 0))
        return 0;
    const double wanted = std::min(volumeMl / m_innerMl, 1.0) * m_below.back();
    const auto above = std::lower_bound(m_below.begin() + 1, m_below.end() - 1, wanted);
    const auto i = static_cast<std::size_t>(above - m_below.begin());
    // Within a slice the radius hardly changes, so a straight line in volume is exact enough.
    const double share = (wanted - m_below[i - 1]) / (m_below[i] - m_below[i - 1]);
    return m_profile[i - 1].y() + share * (m_profile[i].y() - m_profile[i - 1].y());
}

QPainterPath BottleShape::outline() const
{
    QPainterPath path;
    path.moveTo(0, 0);
    for (const QPointF& point : m_profile)
        path.lineTo(point.x(), -point.y());
    for (auto point = m_profile.rbegin(); point != m_profile.rend(); ++point)
        path.lineTo(-point->x(), -point->y());
    path.closeSubpath();
    return path;
}

} // namespace ullage::app
