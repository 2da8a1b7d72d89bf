#include <boardmark/core/proportion.hpp>

#include "../checks/compare.hpp"
#include "../phrases.hpp"
#include "../tolerance.hpp"
#include "part_checks.hpp"
#include "wall_checks.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

Check cover_of_low_part(const CastPart& part, const Wall& wall, const Tables& tables) {
    const bool footing = part.kind == CastKind::footing;
    const Reinforcement bars{.cover_mm = part.cover_mm};
    Check check = check_part_cover(
        bars, footing ? FaceExposure::against_earth : FaceExposure::weather, wall, tables);
    if (!part.cover_mm) {
        check.message = {footing ? "'footing.cover' is not stated; cast against earth bars need "
                                   "{least}, the drawings have it"
                                 : "'cover' of the bench is not stated; {least} serves every bar, "
                                   "the drawings have it",
                         {quantity("least", {footing ? tables.joints.cover.against_earth_mm.value
                                                     : tables.joints.cover.weather_large_mm.value,
                                             Measure::length})}};
    }
    return check;
}

/// Cast in one lift where the vibrator reaches through it; else as many as it takes.
Check lift_of_low_part(const CastPart& part, const LiftRules& rules) {
    const TypicalFigure& most = rules.most_mm;
    const double height_mm = 1000 * part.height_m;
    const bool one = !above(height_mm, most.value);
    return {.id = "lift.height",
            .verdict = one ? Verdict::holds : Verdict::watch,
            .value = height_mm,
            .limit = Limit{.low = std::nullopt, .high = most.value},
            .measure = Measure::length,
            .requirement = "consolidation by internal vibration",
            .source = most.source,
            .message = {one ? "{value} cast in one lift, at most {most}"
                            : "{value} high, above one lift of {most}: its lifts are not planned "
                              "here",
                        {quantity("value", {height_mm, Measure::length}),
                         quantity("most", {most.value, Measure::length})}}};
}

/// No method gives less than is asked here where the full head is taken.
double side_pressure_kpa(const CastPart& part, const Wall& wall, const Proportions& proportions,
                         const Tables& tables) {
    const FormCase pour = form_case(wall, proportions, part.height_m, part.plan_m2, tables);
    double kpa = 0;
    for (const FormPressure& pressure : form_pressures(pour, tables)) {
        kpa = std::max({kpa, pressure.head_kpa, pressure.data_suffice ? pressure.kpa : 0});
    }
    return kpa;
}

Check pressure_on_low_part(const CastPart& part, const Wall& wall, double kpa) {
    const auto& rating_kpa = wall.placing.form_pressure_kpa;
    const Argument value = quantity("value", {kpa, Measure::pressure});
    Check check{.id = "forms.pressure",
                .verdict = Verdict::not_checked,
                .measure = Measure::pressure,
                .requirement = "design pressure",
                .source = {"common practice, no source", Confidence::common_practice},
                .message = {"{value} on the sides, the full head of the concrete; "
                            "'placing.form_pressure' is not stated",
                            {value}}};
    if (!rating_kpa) {
        return check;
    }
    constexpr double precision_kpa = 0.1;
    check.value = kpa;
    check.limit = Limit{.low = {}, .high = rating_kpa};
    check.verdict = at_most({kpa, *rating_kpa, precision_kpa});
    check.message = {"{value} on the sides, the full head of the concrete, on forms designed for "
                     "{limit}",
                     {value, quantity("limit", {*rating_kpa, Measure::pressure})}};
    if (part.soffit) {
        check.verdict = worse(check.verdict, Verdict::watch);
        check.message.text += "; the form of its soffit carries the concrete, crew and equipment: "
                              "a qualified person designs it";
    }
    return check;
}

} // namespace

void check_low_parts(const Wall& wall, const std::vector<CastPart>& parts,
                     const Proportions& proportions, const Tables& tables,
                     std::vector<Check>& checks) {
    const bool reinforced = requirements_of(wall.mix).reinforced;
    for (const CastPart& part : parts) {
        if (part.kind != CastKind::footing && part.kind != CastKind::bench) {
            continue;
        }
        const auto add = [&](Check check) {
            checks.push_back(of_wall(part.name, std::move(check)));
        };
        if (reinforced) {
            add(cover_of_low_part(part, wall, tables));
        }
        add(lift_of_low_part(part, tables.placing.lifts));
        const double kpa = side_pressure_kpa(part, wall, proportions, tables);
        add(pressure_on_low_part(part, wall, kpa));
    }
}

} // namespace boardmark::core
