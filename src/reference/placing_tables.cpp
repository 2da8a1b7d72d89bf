#include "placing_tables.hpp"

#include <boardmark/units/unit.hpp>

#include "lookup.hpp"

namespace boardmark::reference {
namespace {

using core::UnitSystem;

/// Times are read as days; placing counts hours.
core::TypicalFigure hours(const EmbeddedTable& printed, const char* name, UnitSystem system) {
    core::TypicalFigure found = figure(printed, name, system);
    found.value = units::unit("h").from_inside(found.value);
    return found;
}

core::VibrationRules vibration(UnitSystem system) {
    const EmbeddedTable& printed = table("placing");
    const EmbeddedTable& vibrators = table("internal-vibrators");
    core::VibrationRules rules{.groups = {},
                               .group_source = source_of(vibrators.source),
                               .spacing_in_radii = figure(printed, "spacing_in_radii", system),
                               .into_lift_below_mm = figure(printed, "into_lift_below", system),
                               .insertion_least_s = figure(printed, "insertion_least_s", system),
                               .insertion_most_s = figure(printed, "insertion_most_s", system),
                               .off_the_face_mm = figure(printed, "off_the_face", system),
                               .room_for_head_mm = figure(printed, "room_for_head", system)};
    for (const EmbeddedRow& line : vibrators.rows) {
        rules.groups.push_back({.head_from_mm = cell(vibrators, line, "head_from"),
                                .head_to_mm = cell(vibrators, line, "head_to"),
                                .radius_from_mm = cell(vibrators, line, "radius_from"),
                                .radius_to_mm = cell(vibrators, line, "radius_to")});
    }
    return rules;
}

core::LiftRules lifts(UnitSystem system) {
    const EmbeddedTable& printed = table("placing");
    return {.least_mm = figure(printed, "lift_least", system),
            .most_mm = figure(printed, "lift_most", system),
            .most_architectural_mm = figure(printed, "lift_most_architectural", system),
            .discharge_h = hours(printed, "discharge", system),
            .between_lifts_h = hours(printed, "between_lifts", system),
            .part_of_setting_percent = figure(printed, "part_of_setting", system)};
}

core::CrewRules crew(UnitSystem system) {
    const EmbeddedTable& printed = table("placing");
    return {.free_fall_mm = figure(printed, "free_fall", system),
            .hose_apart_mm = figure(printed, "hose_apart", system),
            .spare_vibrators = figure(printed, "spare_vibrators", system)};
}

core::MaturityRules maturity(UnitSystem system) {
    const EmbeddedTable& printed = table("curing");
    return {.datum_c = figure(printed, "datum", system),
            .classic_datum_c = figure(printed, "classic_datum", system),
            .activation_k = figure(printed, "activation_k", system),
            .reference_c = figure(printed, "reference", system),
            .en_activation_k = figure(printed, "en_activation_k", system),
            .en_exponent = figure(printed, "en_exponent", system)};
}

core::SoffitRules soffits(UnitSystem system) {
    const EmbeddedTable& printed = table("soffit-removal");
    const char* below = system == UnitSystem::us ? "below_us" : "below_si";
    constexpr double metres_in_millimetre = 0.001;
    core::SoffitRules rules{.rows = {}, .source = source_of(printed.source)};
    for (const EmbeddedRow& line : printed.rows) {
        rules.rows.push_back({.below_m = metres_in_millimetre * cell(printed, line, below),
                              .slab_less_d = cell(printed, line, "slab_less"),
                              .slab_more_d = cell(printed, line, "slab_more"),
                              .beam_less_d = cell(printed, line, "beam_less"),
                              .beam_more_d = cell(printed, line, "beam_more")});
    }
    return rules;
}

core::ProtectionRules protection() {
    const EmbeddedTable& printed = table("cold-protection");
    const auto days = [&](const char* name) {
        const EmbeddedRow& line = row(printed, name);
        return core::ProtectionDays{cell(printed, line, "normal"),
                                    cell(printed, line, "accelerated")};
    };
    return {.no_load_not_exposed = days("no_load_not_exposed"),
            .no_load_exposed = days("no_load_exposed"),
            .partial_load_exposed = days("partial_load_exposed"),
            .source = source_of(printed.source)};
}

core::CuringRules curing(UnitSystem system) {
    const EmbeddedTable& printed = table("curing");
    core::CuringRules rules{
        .moist_d = figure(printed, "moist", system),
        .moist_high_early_d = figure(printed, "moist_high_early", system),
        .least_c = figure(printed, "least_air", system),
        .by_cement_d = {},
        .strip_after_h = hours(printed, "strip_after", system),
        .strip_surely_after_h = hours(printed, "strip_surely_after", system),
        .strip_slag_most_percent = figure(printed, "strip_slag_most", system),
        .strip_ash_most_percent = figure(printed, "strip_ash_most", system),
        .strip_air_c = figure(printed, "strip_air", system),
        .strip_strength_mpa = figure(printed, "strip_strength", system),
        .strip_strength_in_frost_mpa = figure(printed, "strip_strength_in_frost", system),
        .strength_before_freezing_mpa = figure(printed, "strength_before_freezing", system),
        .strength_before_freezing_en_mpa = figure(printed, "strength_before_freezing_en", system),
        .en_codes_begin =
            std::string{note(row(printed, "strength_before_freezing_en"), "codes_begin")},
        .soffits = soffits(system),
        .protection = protection(),
        .maturity = maturity(system),
        .strength_gain = {},
        .en_strength_gain = {}};
    const EmbeddedTable& times = table("curing-time");
    for (const EmbeddedRow& line : times.rows) {
        rules.by_cement_d[std::string{line.name}] = {cell(times, line, "least"),
                                                     source_of(line.source)};
    }
    const EmbeddedTable& gain = table("strength-time");
    for (const EmbeddedRow& line : gain.rows) {
        rules.strength_gain[std::string{line.name}] = {cell(gain, line, "a"), cell(gain, line, "b"),
                                                       source_of(line.source)};
    }
    const EmbeddedTable& en_gain = table("strength-time-en");
    for (const EmbeddedRow& line : en_gain.rows) {
        rules.en_strength_gain[std::string{line.name}] = {cell(en_gain, line, "s"),
                                                          source_of(line.source)};
    }
    return rules;
}

} // namespace

core::PlacingTables placing_tables(UnitSystem system) {
    return {.lifts = lifts(system),
            .vibration = vibration(system),
            .crew = crew(system),
            .curing = curing(system)};
}

} // namespace boardmark::reference
