#include <boardmark/core/wall_steel.hpp>

#include "../phrases.hpp"
#include "../tolerance.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// One direction of bars against the least amounts.
struct Direction {
    const char* id;
    const char* name;
    const std::optional<BarGrid>& bars;
    double least_mm2_m;
    std::optional<double> advised_mm2_m; ///< for a face that shows
};

Check amount_check(const Direction& direction, int layers, const Source& source) {
    Check check{.id = direction.id,
                .verdict = Verdict::not_checked,
                .measure = Measure::steel_area,
                .requirement = "least steel of the wall",
                .source = source,
                .message = {"the {name} bars are not stated; at least {limit} is needed",
                            {word("name", direction.name),
                             quantity("limit", {direction.least_mm2_m, Measure::steel_area})}}};
    if (!direction.bars) {
        return check;
    }
    const double value = steel_mm2_m(*direction.bars, layers);
    const bool short_of_advice = direction.advised_mm2_m && below(value, *direction.advised_mm2_m);
    check.value = value;
    check.limit = Limit{.low = direction.least_mm2_m, .high = std::nullopt};
    check.verdict = below(value, direction.least_mm2_m) ? Verdict::fails
                    : short_of_advice                   ? Verdict::watch
                                                        : Verdict::holds;
    check.message = {"{name} bars {value}, at least {limit}",
                     {word("name", direction.name), quantity("value", {value, Measure::steel_area}),
                      quantity("limit", {direction.least_mm2_m, Measure::steel_area})}};
    if (short_of_advice) {
        check.message.text += "; for a face that shows {advised} is advised, or closer joints: the "
                              "least steel does not keep cracks fine";
        check.message.arguments.push_back(
            quantity("advised", {*direction.advised_mm2_m, Measure::steel_area}));
    }
    return check;
}

std::vector<Check> spacing_check(const ReinforcedWall& wall, const WallSteelRules& rules) {
    double widest_mm = 0;
    for (const auto* bars : {&wall.bars.vertical, &wall.bars.horizontal}) {
        widest_mm = std::max(widest_mm, *bars ? (*bars)->spacing_mm : 0);
    }
    if (widest_mm == 0) {
        return {};
    }
    const double limit_mm = std::min(rules.spacing_in_thicknesses.value * wall.thickness_mm,
                                     rules.spacing_most_mm.value);
    return {{.id = "steel.spacing",
             .verdict = above(widest_mm, limit_mm) ? Verdict::fails : Verdict::holds,
             .value = widest_mm,
             .limit = Limit{.low = std::nullopt, .high = limit_mm},
             .measure = Measure::length,
             .requirement = "spacing of the bars",
             .source = rules.spacing_most_mm.source,
             .message = {"bars up to {value} apart, at most {limit}: the lesser of {times} "
                         "thicknesses and {most}",
                         {quantity("value", {widest_mm, Measure::length}),
                          quantity("limit", {limit_mm, Measure::length}),
                          quantity("times", {rules.spacing_in_thicknesses.value, Measure::ratio}),
                          quantity("most", {rules.spacing_most_mm.value, Measure::length})}}}};
}

Check layers_check(const ReinforcedWall& wall, const WallSteelRules& rules) {
    const bool two_needed = above(wall.thickness_mm, rules.two_layers_above_mm.value);
    const bool missing = two_needed && wall.bars.layers < 2;
    return {.id = "steel.layers",
            .verdict = missing ? Verdict::fails : Verdict::holds,
            .value = wall.bars.layers,
            .limit = Limit{.low = two_needed ? 2 : 1, .high = std::nullopt},
            .measure = Measure::count,
            .requirement = "layers of bars",
            .source = rules.two_layers_above_mm.source,
            .message = {"{value} of bars in {thickness}; above {limit} one near each face",
                        {word("value", wall.bars.layers < 2 ? "one layer" : "two layers"),
                         quantity("thickness", {wall.thickness_mm, Measure::length}),
                         quantity("limit", {rules.two_layers_above_mm.value, Measure::length})}}};
}

} // namespace

std::vector<Check> check_wall_steel(const ReinforcedWall& wall, const WallSteelRules& rules) {
    const LeastSteel least = least_steel(wall, rules);
    const auto advised =
        wall.exposed ? std::optional{exposed_steel_mm2_m(wall.thickness_mm, rules)} : std::nullopt;
    std::vector<Check> checks{
        amount_check({"steel.vertical", "vertical", wall.bars.vertical, least.vertical_mm2_m, {}},
                     wall.bars.layers, least.source),
        amount_check({"steel.horizontal", "horizontal", wall.bars.horizontal,
                      least.horizontal_mm2_m, advised},
                     wall.bars.layers, least.source)};
    for (Check& check : spacing_check(wall, rules)) {
        checks.push_back(std::move(check));
    }
    checks.push_back(layers_check(wall, rules));
    return checks;
}

} // namespace boardmark::core
