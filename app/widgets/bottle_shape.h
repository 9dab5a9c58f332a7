// The silhouette of a bottle and what it holds.
//
// Each material has its own outline, drawn as half a profile (radius against height) and taken as a
// body of revolution. The level of the liquid is found from the volume under it, so half a bottle
// is drawn at the height where half of the volume lies below, narrow neck and round shoulder
// included. Capacity is brim-full: to the top of the neck.
#pragma once

#include "core/formulary/vessel.h"

#include <QPainterPath>
#include <QPointF>

#include <optional>
#include <vector>

namespace ullage::app
{

using BottleMaterial = formulary::Material;

class BottleShape
{
public:
    /// `capacityMl` sets the size (a damped scale: a five-litre jug is not five times as big on
    /// the shelf). A squeezed bottle is drawn narrowed until it holds `squeezedToMl`, though no
    /// narrower than a bottle can be pressed; innerMl() tells what it holds then.
    BottleShape(BottleMaterial material, double capacityMl,
                std::optional<double> squeezedToMl = std::nullopt);

    [[nodiscard]] double height() const { return m_profile.back().y(); } ///< base to top of neck
    [[nodiscard]] double width() const { return m_width; } ///< widest, before squeezing
    [[nodiscard]] double neckWidth() const { return 2 * m_profile.back().x(); }
    [[nodiscard]] double innerMl() const { return m_innerMl; }
    /// Centre of the straight part of the body, where a label sits.
    [[nodiscard]] double labelHeight() const { return m_labelHeight; }

    [[nodiscard]] double radiusAt(double height) const;
    /// Height of the level of `volumeMl`; 0 for none, the top of the neck for all it holds.
    [[nodiscard]] double levelOf(double volumeMl) const;

    /// The closed outline standing on (0, 0), upwards being negative y.
    [[nodiscard]] QPainterPath outline() const;

private:
    void integrate();

    std::vector<QPointF> m_profile; // x radius, y height above the base, rising
    std::vector<double> m_below;    // volume below each point of the profile, any unit
    double m_width = 0;
    double m_labelHeight = 0;
    double m_innerMl = 0;
};

} // namespace ullage::app
