#include <boardmark/core/method/proportion.hpp>

#include "cast_part_checks.hpp"
#include "wall_checks.hpp"

#include <algorithm>
#include <array>

namespace boardmark::core {
namespace {

/// What a kind of part needs a verdict on, and what is missing where it has none.
struct NeededCheck {
    CheckId id;
    Measure measure;
    bool of_bars;
    const char* missing_of_wall; ///< runs and planters
    const char* missing_of_slab; ///< footings and benches; empty: nothing is needed
};

constexpr std::array needed_checks{
    NeededCheck{check_ids::cover_least, Measure::length, true,
                "'reinforcement.cover' is not stated; the drawings have it",
                "its cover is not stated; the drawings have it"},
    NeededCheck{check_ids::steel_vertical, Measure::steel_area, true,
                "'reinforcement.vertical' is not stated; the drawings have it", ""},
    NeededCheck{check_ids::steel_horizontal, Measure::steel_area, true,
                "'reinforcement.horizontal' is not stated; the drawings have it",
                "no rule here checks its bars; the engineer's drawings have them"},
    NeededCheck{check_ids::steel_spacing, Measure::length, true,
                "'reinforcement' is not stated; the drawings have it", ""},
    NeededCheck{check_ids::steel_layers, Measure::count, true,
                "'reinforcement' is not stated; the drawings have it", ""},
    NeededCheck{check_ids::vibrator_fits, Measure::length, true,
                "'reinforcement' is not stated; the drawings have it", ""},
    NeededCheck{check_ids::joints_spacing, Measure::line_length, false,
                "its joints are not planned here",
                "its joints are not planned here; the drawings have them"},
    NeededCheck{check_ids::lift_height, Measure::length, false, "its lifts are not planned here",
                "its lifts are not planned here"},
    NeededCheck{check_ids::forms_pressure, Measure::pressure, false,
                "'placing.form_pressure' is not stated; the form's designer has it",
                "'placing.form_pressure' is not stated; the form's designer has it"},
    NeededCheck{check_ids::forms_tie, Measure::force, false,
                "'ties' is not stated: it is not known what holds the sides of the form",
                "the stakes, braces or ties that hold the sides of its form are not checked here; "
                "a qualified person designs them"},
    NeededCheck{check_ids::stripping_age, Measure::duration, false,
                "'placing.strip_after' is not stated", "'placing.strip_after' is not stated"},
};

bool has_check(const std::vector<Check>& checks, CheckId id, const std::string& part) {
    return std::ranges::any_of(
        checks, [&](const Check& check) { return check.is(id) && check.part == part; });
}

} // namespace

Check missing_evaporation() {
    return {.id = check_ids::placing_evaporation,
            .verdict = Verdict::not_checked,
            .measure = Measure::evaporation,
            .requirement = "every part that is cast",
            .message = {"'concrete_temperature', 'air_temperature', 'humidity' and 'wind' are not "
                        "all stated under 'placing'",
                        {}}};
}

Check missing_trucks(const Wall& wall) {
    const bool formed = !wall.runs.empty() || !wall.planters.empty();
    const bool stated =
        wall.placing.truck_m3 && (wall.placing.output_m3_h || wall.placing.rise_m_h);
    const char* open = !formed && stated
                           ? "this plan does not say how fast footings and benches take a load; "
                             "agree the time of discharge with the supplier"
                           : "'truck' and 'output' or 'rise' are not stated under 'placing'";
    return {.id = check_ids::truck_discharge,
            .verdict = Verdict::not_checked,
            .measure = Measure::duration,
            .requirement = "every part that is cast",
            .message = {open, {}}};
}

void add_missing_checks(const Wall& wall, const std::vector<CastPart>& parts,
                        std::vector<Check>& checks) {
    const bool reinforced = requirements_of(wall.mix).reinforced;
    for (const CastPart& part : parts) {
        const bool upright = part.kind == CastKind::run || part.kind == CastKind::planter;
        for (const NeededCheck& needed : needed_checks) {
            const std::string missing = upright ? needed.missing_of_wall : needed.missing_of_slab;
            if (missing.empty() || (needed.of_bars && !reinforced) ||
                has_check(checks, needed.id, part.name)) {
                continue;
            }
            checks.push_back(of_wall(part.name, {.id = needed.id,
                                                 .verdict = Verdict::not_checked,
                                                 .measure = needed.measure,
                                                 .requirement = "every part that is cast",
                                                 .message = {missing, {}}}));
        }
    }
}

} // namespace boardmark::core
