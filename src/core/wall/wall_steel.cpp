#include <boardmark/core/wall/wall_steel.hpp>

#include "../basis/tolerance.hpp"

namespace boardmark::core {
namespace {

constexpr double metre_mm = 1000;

const SteelRatios& ratios_for(const std::optional<BarGrid>& bars, const ReinforcedWall& wall,
                              const WallSteelRules& rules) {
    if (wall.high_shear) {
        return rules.high_shear;
    }
    const bool small = bars && !above(bars->bar_mm, rules.small_bar_mm.value) &&
                       !below(wall.bars.yield_strength_mpa, rules.small_bar_yield_mpa.value);
    return small ? rules.small_bars : rules.other_bars;
}

} // namespace

double steel_mm2_m(const BarGrid& bars, int layers) {
    return layers * bars.area_mm2 * metre_mm / bars.spacing_mm;
}

LeastSteel least_steel(const ReinforcedWall& wall, const WallSteelRules& rules) {
    const double gross_mm2_m = metre_mm * wall.thickness_mm;
    const SteelRatios& vertical = ratios_for(wall.bars.vertical, wall, rules);
    const SteelRatios& horizontal = ratios_for(wall.bars.horizontal, wall, rules);
    return {.vertical_mm2_m = vertical.vertical * gross_mm2_m,
            .horizontal_mm2_m = horizontal.horizontal * gross_mm2_m,
            .source = horizontal.source};
}

double exposed_steel_mm2_m(double thickness_mm, const WallSteelRules& rules) {
    return rules.exposed_face.horizontal * metre_mm * thickness_mm;
}

double room_for_layers_mm(const Reinforcement& bars) {
    double needed_mm = 2 * bars.cover_mm.value_or(0);
    for (const auto* grid : {&bars.vertical, &bars.horizontal}) {
        needed_mm += *grid ? bars.layers * (*grid)->bar_mm : 0;
    }
    return needed_mm;
}

double spacing_for_mm(double area_mm2_m, double bar_area_mm2, int layers) {
    return layers * bar_area_mm2 * metre_mm / area_mm2_m;
}

} // namespace boardmark::core
