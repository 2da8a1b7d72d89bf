#include <boardmark/core/wall/wall_steel.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// One direction of bars against the least amounts.
struct Direction {
    CheckId id;
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
        check.message.text += "; for a face that shows {advised} is advised, or closer joints: "
                              "minimum steel does not keep cracks narrow";
        check.message.arguments.push_back(
            quantity("advised", {*direction.advised_mm2_m, Measure::steel_area}));
    }
    return check;
}

Check spacing_check(const ReinforcedWall& wall, const WallSteelRules& rules) {
    double widest_mm = 0;
    const bool known = wall.bars.vertical && wall.bars.horizontal;
    for (const auto* bars : {&wall.bars.vertical, &wall.bars.horizontal}) {
        widest_mm = std::max(widest_mm, *bars ? (*bars)->spacing_mm : 0);
    }
    const double limit_mm =
        std::min(rules.spacing_in_thicknesses.value * wall.thinnest_mm.value_or(wall.thickness_mm),
                 rules.spacing_most_mm.value);
    const bool wide = above(widest_mm, limit_mm);
    Check check{
        .id = check_ids::steel_spacing,
        .verdict = wide ? Verdict::fails : Verdict::holds,
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
                     quantity("most", {rules.spacing_most_mm.value, Measure::length})}}};
    if (!known && !wide) {
        check.verdict = Verdict::not_checked;
        check.value = std::nullopt;
        check.limit = std::nullopt;
        check.message.text = "the vertical and the horizontal bars are not both stated; at most "
                             "{limit} apart: the lesser of {times} thicknesses and {most}";
    }
    return check;
}

Check layers_check(const ReinforcedWall& wall, const WallSteelRules& rules) {
    const bool two_needed = above(wall.thickness_mm, rules.two_layers_above_mm.value);
    const bool missing = two_needed && wall.bars.layers < 2;
    Check check{
        .id = check_ids::steel_layers,
        .verdict = missing ? Verdict::fails : Verdict::holds,
        .value = wall.bars.layers,
        .limit = Limit{.low = two_needed ? 2 : 1, .high = std::nullopt},
        .measure = Measure::count,
        .requirement = "layers of bars",
        .source = rules.two_layers_above_mm.source,
        .message = {"{value} of bars in {thickness}; thicker than {limit} needs one near each face",
                    {word("value", wall.bars.layers < 2 ? "one layer" : "two layers"),
                     quantity("thickness", {wall.thickness_mm, Measure::length}),
                     quantity("limit", {rules.two_layers_above_mm.value, Measure::length})}}};
    const double needed_mm = room_for_layers_mm(wall.bars);
    const bool known = wall.bars.cover_mm && wall.bars.vertical && wall.bars.horizontal;
    const double room_mm = wall.thinnest_mm.value_or(wall.thickness_mm);
    if (above(needed_mm, room_mm)) {
        check.verdict = Verdict::fails;
        check.message.text = "{value} of bars do not fit: with the cover on both sides they need "
                             "{needed}, and the thinnest place has {room}";
        check.message.arguments.push_back(quantity("needed", {needed_mm, Measure::length}));
        check.message.arguments.push_back(quantity("room", {room_mm, Measure::length}));
    } else if (!missing && !known) {
        check.verdict = Verdict::not_checked;
        check.value = std::nullopt;
        check.limit = std::nullopt;
        check.message.text += "; whether they fit is not known: 'reinforcement.cover' and the bars "
                              "of both directions are not all stated";
    } else if (!missing && !wall.bars.layers_stated) {
        check.verdict = Verdict::watch;
        check.message.text += "; 'reinforcement.layers' is not stated and taken as one";
    }
    return check;
}

/// The ratio for strong bars is not taken on trust.
void doubt_yield(const ReinforcedWall& wall, double least_mm2_m, Check& check) {
    const bool passed = check.verdict == Verdict::holds || check.verdict == Verdict::watch;
    if (wall.bars.yield_stated || !passed || !check.value || !below(*check.value, least_mm2_m)) {
        return;
    }
    check.verdict = Verdict::watch;
    check.message.text += "; 'reinforcement.yield_strength' is not stated, and weaker bars need "
                          "{weaker}";
    check.message.arguments.push_back(quantity("weaker", {least_mm2_m, Measure::steel_area}));
}

} // namespace

std::vector<Check> check_wall_steel(const ReinforcedWall& wall, const WallSteelRules& rules) {
    const LeastSteel least = least_steel(wall, rules);
    const auto advised =
        wall.exposed ? std::optional{exposed_steel_mm2_m(wall.thickness_mm, rules)} : std::nullopt;
    std::vector<Check> checks{
        amount_check(
            {check_ids::steel_vertical, "vertical", wall.bars.vertical, least.vertical_mm2_m, {}},
            wall.bars.layers, least.source),
        amount_check({check_ids::steel_horizontal, "horizontal", wall.bars.horizontal,
                      least.horizontal_mm2_m, advised},
                     wall.bars.layers, least.source)};
    ReinforcedWall weaker = wall;
    weaker.bars.yield_strength_mpa = 0;
    const LeastSteel least_of_weaker = least_steel(weaker, rules);
    doubt_yield(wall, least_of_weaker.vertical_mm2_m, checks.at(0));
    doubt_yield(wall, least_of_weaker.horizontal_mm2_m, checks.at(1));
    checks.push_back(spacing_check(wall, rules));
    checks.push_back(layers_check(wall, rules));
    return checks;
}

} // namespace boardmark::core
