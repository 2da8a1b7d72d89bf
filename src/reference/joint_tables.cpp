#include "joint_tables.hpp"

#include "lookup.hpp"

namespace boardmark::reference {
namespace {

using core::UnitSystem;

constexpr double metres_per_millimetre = 0.001;

core::TypicalFigure metres(const EmbeddedTable& printed, const char* name, UnitSystem system) {
    core::TypicalFigure found = figure(printed, name, system);
    found.value *= metres_per_millimetre;
    return found;
}

core::ContractionJointRules contraction(UnitSystem system) {
    const EmbeddedTable& printed = table("joints");
    const EmbeddedTable& heights = table("joint-spacing-height");
    core::ContractionJointRules rules{
        .by_height = {},
        .height_source = source_of(heights.source),
        .spacing_solid_m = metres(printed, "spacing_solid", system),
        .spacing_many_openings_m = metres(printed, "spacing_many_openings", system),
        .spacing_in_thicknesses = figure(printed, "spacing_in_thicknesses", system),
        .low_wall_spacing_m = metres(printed, "low_wall_spacing", system),
        .least_apart_m = metres(printed, "least_apart", system),
        .first_from_corner_m = metres(printed, "first_from_corner", system),
        .corner_share = figure(printed, "corner_share", system),
        .groove_share = figure(printed, "groove_share", system),
        .groove_least_mm = figure(printed, "groove_least", system)};
    const char* below = system == UnitSystem::us ? "below_us" : "below_si";
    for (const EmbeddedRow& line : heights.rows) {
        rules.by_height.push_back(
            {metres_per_millimetre * cell(heights, line, below), cell(heights, line, "heights")});
    }
    return rules;
}

core::SteelRatios ratios(const char* name) {
    const EmbeddedTable& printed = table("aci318-19-wall-steel");
    const EmbeddedRow& line = row(printed, name);
    return {cell(printed, line, "vertical"), cell(printed, line, "horizontal"),
            source_of(line.source)};
}

core::WallSteelRules steel(UnitSystem system) {
    const EmbeddedTable& bars = table("aci318-19-wall-bars");
    return {.small_bars = ratios("small bars"),
            .other_bars = ratios("other bars"),
            .high_shear = ratios("high shear"),
            .exposed_face = ratios("exposed face"),
            .exposed_face_most = ratios("exposed face, long panels"),
            .small_bar_mm = figure(bars, "small_bar", system),
            .small_bar_yield_mpa = figure(bars, "small_bar_yield", system),
            .spacing_in_thicknesses = figure(bars, "spacing_in_thicknesses", system),
            .spacing_most_mm = figure(bars, "spacing_most", system),
            .two_layers_above_mm = figure(bars, "two_layers_above", system)};
}

core::CoverRules cover(UnitSystem system) {
    const EmbeddedTable& bars = table("aci318-19-wall-bars");
    return {.against_earth_mm = figure(bars, "cover_against_earth", system),
            .weather_large_mm = figure(bars, "cover_weather_large", system),
            .weather_small_mm = figure(bars, "cover_weather_small", system),
            .inside_mm = figure(bars, "cover_inside", system),
            .corrosive_mm = figure(bars, "cover_corrosive", system)};
}

core::PlumbRules plumb(UnitSystem system) {
    const EmbeddedTable& printed = table("plumb");
    const auto number = [&](const char* name) { return constant(printed, name, system); };
    return {.share_percent = number("share"),
            .most_mm = number("most"),
            .edge_share_percent = number("edge_share"),
            .edge_most_mm = number("edge_most"),
            .up_to_mm = number("up_to"),
            .source = source_of(printed.source)};
}

} // namespace

core::JointTables joint_tables(UnitSystem system) {
    return {.contraction = contraction(system),
            .steel = steel(system),
            .cover = cover(system),
            .plumb = plumb(system)};
}

} // namespace boardmark::reference
