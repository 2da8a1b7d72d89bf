#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/method/proportion.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../checks/compare.hpp"
#include "../checks/remembered_limit.hpp"
#include "bars_beside.hpp"
#include "cast_part_checks.hpp"
#include "form_forces.hpp"
#include "wall_checks.hpp"

namespace boardmark::core {
namespace {

Check cover_of_low_part(const CastPart& part, const Wall& wall, const Tables& tables) {
    const bool footing = part.kind == CastKind::footing;
    const Reinforcement bars{.cover_mm = part.cover_mm};
    Check check = check_part_cover(
        bars, footing ? FaceExposure::against_earth : FaceExposure::weather, wall, tables);
    watch_rule_of_another_code(tables.code, check);
    if (!part.cover_mm) {
        check.message = {footing ? "'footing.cover' is not stated; cast against earth bars need "
                                   "{least}, the drawings have it"
                                 : "'cover' of the bench is not stated; {least} serves every bar, "
                                   "the drawings have it",
                         {quantity("least", {footing ? tables.joints->cover.against_earth_mm.value
                                                     : tables.joints->cover.weather_large_mm.value,
                                             Measure::length})}};
    }
    return check;
}

/// No key states the cover of a planter's floor, which is not that of its sides.
Check cover_of_floor(const Tables& tables) {
    return {.id = check_ids::cover_least,
            .verdict = Verdict::not_checked,
            .measure = Measure::length,
            .requirement = "cover",
            .source = tables.joints->cover.against_earth_mm.source,
            .message = {"the cover of its bars is not stated here: cast against earth they need "
                        "{least}, the drawings have it",
                        {quantity("least", {tables.joints->cover.against_earth_mm.value,
                                            Measure::length})}}};
}

Check steel_of_floor() {
    return {.id = check_ids::steel_horizontal,
            .verdict = Verdict::not_checked,
            .measure = Measure::steel_area,
            .requirement = "every part that is cast",
            .message = {"no rule here checks its bars; the engineer's drawings have them", {}}};
}

/// Cast in one lift where the vibrator reaches through it; else as many as it takes.
Check lift_of_low_part(double height_mm, const LiftRules& rules) {
    const TypicalFigure& most = rules.most_mm;
    const bool one = !above(height_mm, most.value);
    Check check{.id = check_ids::lift_height,
                .verdict = Verdict::not_checked,
                .measure = Measure::length,
                .requirement = "consolidation by internal vibration",
                .source = most.source,
                .message = {one ? "{value} cast in one lift, at most {most}"
                                : "{value} high, above one lift of {most}: its lifts are not "
                                  "planned here",
                            {quantity("value", {height_mm, Measure::length}),
                             quantity("most", {most.value, Measure::length})}}};
    if (one) {
        check.verdict = Verdict::holds;
        check.value = height_mm;
        check.limit = Limit{.low = std::nullopt, .high = most.value};
    }
    watch_what_is_from_memory(check);
    return check;
}

/// As on walls: what a pump presses is open, the density may be assumed, and a load with less air
/// is heavier; the head grows with it.
void watch_density_and_pump(const FormCase& pour, const FormPressure& pressure, bool assumed,
                            Check& check) {
    const double heavier_kpa = pressure.kpa * pour.heaviest_kg_m3 / pour.fresh_density_kg_m3;
    if (is_pumped(pressure)) {
        check.verdict = worse(check.verdict, Verdict::watch);
        check.message.text += pump_is_open();
    }
    if (assumed) {
        check.verdict = worse(check.verdict, Verdict::watch);
        check.message.text += "; " + why_density_is_assumed().text;
    }
    if (check.verdict == Verdict::holds && above(heavier_kpa, *check.limit->high)) {
        watch_heaviest_load(pour, heavier_kpa, check);
    }
}

/// What the pressure on the sides is made of, for a message.
Phrase head_told(const FormPressure& pressure) {
    if (is_pumped(pressure)) {
        return {"{value} on the sides, {times} times the full head for concrete pumped from below",
                {no_less_than("value", {pressure.kpa, Measure::pressure}),
                 quantity("times", {pressure.kpa / pressure.head_kpa, Measure::ratio})}};
    }
    return {"{value} on the sides, the full head of the concrete",
            {no_less_than("value", {pressure.kpa, Measure::pressure})}};
}

Check pressure_on_low_part(const CastPart& part, const Wall& wall, const Proportions& proportions,
                           const Tables& tables) {
    const FormCase pour = form_case(wall, proportions, part.height_m, std::nullopt, tables);
    // As for a rise that nobody knows: the full head, which no formula exceeds, and a pump's part.
    const FormPressure pressure = aci_form_pressure(pour, tables);
    const auto& rating_kpa = wall.placing.form_pressure_kpa;
    Check check{.id = check_ids::forms_pressure,
                .verdict = Verdict::not_checked,
                .measure = Measure::pressure,
                .requirement = "design pressure",
                .source = {"common practice, no source", Confidence::common_practice},
                .message = head_told(pressure)};
    if (is_pumped(pressure)) {
        check.source = pressure.source;
    }
    if (!rating_kpa) {
        check.message.text += "; 'placing.form_pressure' is not stated";
        return check;
    }
    constexpr double precision_kpa = 0.1;
    check.value = pressure.kpa;
    check.limit = Limit{.low = {}, .high = rating_kpa};
    check.verdict = at_most({pressure.kpa, *rating_kpa, precision_kpa});
    check.message.text += ", on forms designed for {limit}";
    check.message.arguments.push_back(quantity("limit", {*rating_kpa, Measure::pressure}));
    const Totals& totals = proportions.totals;
    watch_density_and_pump(pour, pressure, !totals.fresh_density_kg_m3 || !totals.volume_m3, check);
    if (part.soffit) {
        check.verdict = worse(check.verdict, Verdict::watch);
        check.message.text += "; the form of its soffit carries the concrete, crew and equipment: "
                              "a qualified person designs it";
    }
    return check;
}

/// A planter's floor; its sides are checked as walls.
void check_floor(const CastPart& planter, bool reinforced, const Tables& tables,
                 std::vector<Check>& checks) {
    const auto add = [&](Check check) {
        checks.push_back(of_wall("floor of " + planter.name, std::move(check)));
    };
    if (reinforced) {
        add(cover_of_floor(tables));
        add(steel_of_floor());
    }
    add(lift_of_low_part(*planter.slab_mm, tables.placing->lifts));
}

} // namespace

void check_low_parts(const Wall& wall, const std::vector<CastPart>& parts,
                     const Proportions& proportions, const Tables& tables,
                     std::vector<Check>& checks) {
    const bool reinforced = requirements_of(wall.mix).reinforced;
    for (const CastPart& part : parts) {
        if (part.kind == CastKind::planter && part.slab_mm) {
            check_floor(part, reinforced, tables, checks);
        }
        if (part.kind != CastKind::footing && part.kind != CastKind::bench) {
            continue;
        }
        const auto add = [&](Check check) {
            checks.push_back(of_wall(part.name, std::move(check)));
        };
        if (reinforced) {
            add(cover_of_low_part(part, wall, tables));
        }
        add(lift_of_low_part(1000 * part.height_m, tables.placing->lifts));
        add(pressure_on_low_part(part, wall, proportions, tables));
    }
}

} // namespace boardmark::core
