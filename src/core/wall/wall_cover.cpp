#include <boardmark/core/wall/wall_cover.hpp>

#include "../basis/tolerance.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

double diameter_mm(const std::optional<BarGrid>& bars) {
    return bars ? bars->bar_mm : 0;
}

} // namespace

double cover_at_relief_mm(double nominal_mm, double relief_mm) {
    return nominal_mm - relief_mm;
}

TypicalFigure least_cover_mm(const CoveredFace& face, double bar_mm, const JointTables& joints) {
    const CoverRules& rules = joints.cover;
    switch (face.exposure) {
    case FaceExposure::against_earth:
        return rules.against_earth_mm;
    case FaceExposure::weather:
        return above(bar_mm, joints.steel.small_bar_mm.value) ? rules.weather_large_mm
                                                              : rules.weather_small_mm;
    case FaceExposure::inside:
        return rules.inside_mm;
    }
    return rules.against_earth_mm;
}

std::optional<double> room_for_vibrator_mm(const Reinforcement& bars, double thickness_mm) {
    const double layer_mm = diameter_mm(bars.vertical) + diameter_mm(bars.horizontal);
    if (!bars.vertical || !bars.horizontal) {
        return std::nullopt;
    }
    const bool two = bars.layers >= 2 || !bars.layers_stated; // less room where nobody told
    if (two) {
        return bars.cover_mm ? std::optional{thickness_mm - 2 * (*bars.cover_mm + layer_mm)}
                             : std::nullopt;
    }
    // One layer: in the middle, or at its cover from a face; the head goes down the wider side.
    const double beside_mm = bars.cover_mm.value_or((thickness_mm - layer_mm) / 2);
    return std::max(beside_mm, thickness_mm - layer_mm - beside_mm);
}

} // namespace boardmark::core
