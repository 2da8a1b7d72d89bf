// Laws of ties: they hold all of the form, and carry no less where more is asked or less is known.

#include "core/wall/method_choice.hpp"
#include "core/wall/profile.hpp"
#include "core/walls.hpp"
#include "form_support.hpp"
#include "laws/law.hpp"

#include <numeric>

using namespace boardmark;
using namespace boardmark::test;
using core::FormCase;
using core::TieLayout;

namespace {

core::Ties any_ties() {
    core::Ties ties{core::TieKind::stainless_steel, between(150, 1200, "across, mm"),
                    between(150, 1200, "up, mm")};
    if (perhaps("first stated")) {
        ties.first_mm = between(50, 600, "first, mm");
    }
    return ties;
}

core::WallRun any_run() {
    core::WallRun run = run_of(between(1, 12, "length, m"), between(0.3, 5, "height, m"), 250);
    const int kind = *rc::gen::inRange(0, 3).as("level, stepped, sloping");
    if (kind > 0) {
        run.top = kind == 1 ? core::Top::stepped : core::Top::sloping;
        run.heights.push_back(
            {run.length_m * between(0.1, 1, "station"), between(0.3, 5, "other height, m")});
    }
    if (perhaps("an opening")) {
        const double least_m = std::min(run.heights.front().height_m, run.heights.back().height_m);
        const double width_m = run.length_m * between(0.05, 0.5, "opening's width");
        run.openings = {{.name = "opening",
                         .width_mm = 1000 * width_m,
                         .height_mm = 1000 * least_m * between(0.1, 0.6, "opening's height"),
                         .depth_mm = {},
                         .sill_m = least_m * between(0, 0.3, "sill"),
                         .at_m = {(run.length_m - width_m) * between(0, 1, "opening at")},
                         .count = 1}};
    }
    return run;
}

double held_m2(const TieLayout& layout) {
    return std::accumulate(layout.ties.begin(), layout.ties.end(), 0.0,
                           [](double sum, const core::TiePlace& tie) { return sum + tie.area_m2; });
}

double concrete_face_m2(const core::WallRun& run) {
    const core::Profile profile = core::profile_of(run);
    double area_m2 = profile.face_m2(profile.whole());
    for (const core::Opening& opening : run.openings) {
        for (const core::FaceBox& box : core::boxes_of(opening, profile)) {
            area_m2 -= profile.face_m2(box);
        }
    }
    return area_m2;
}

FormCase any_pour(double height_m) {
    FormCase pour = si_wall({.height_m = height_m,
                             .rise_m_h = between(0.1, 5, "rise, m/h"),
                             .temperature_c = between(2, 35, "temperature, degC"),
                             .weight_kn_m3 = between(18, 27, "weight, kN/m3")});
    pour.highest_slump_mm = between(50, 200, "slump, mm");
    return pour;
}

const core::Tables& any_tables() {
    return form_tables_in(perhaps("US") ? core::UnitSystem::us : core::UnitSystem::si);
}

/// The hardest load as a wall's plan finds it.
double hardest_kn(const FormCase& pour, const TieLayout& layout, const core::Tables& tables) {
    const auto choice = core::method_choice(pour, "", tables);
    return core::hardest_tie_kn(choice.pressures[choice.governing], layout);
}

} // namespace

TEST_CASE("ties hold all of the concrete's face, or say that they do not") {
    holds([] {
        const core::WallRun run = any_run();
        const TieLayout layout = core::tie_layout(run, any_ties());
        if (layout.all_held) {
            demand_at_most(concrete_face_m2(run), held_m2(layout), "face");
        }
        for (const core::TiePlace& tie : layout.ties) {
            demand_at_most(tie.deepest_m, core::greatest_height_m(run), "deepest");
            demand_at_most(tie.depth_m, tie.deepest_m, "depth");
        }
    });
}

TEST_CASE(
    "with rows unchanged no tie carries less where rise, cold, slump, height or spacing grow") {
    holds([] {
        core::WallRun run = run_of(between(1, 12, "length, m"), between(0.4, 5, "height, m"), 250);
        core::Ties ties = any_ties();
        FormCase pour = any_pour(run.heights.front().height_m);
        const auto& tables = any_tables();
        const TieLayout before = core::tie_layout(run, ties);
        const double before_kn = hardest_kn(pour, before, tables);
        const int grows = *rc::gen::inRange(0, 5).as("what grows");
        const double by = between(0, 1, "grows by");
        if (grows == 0) {
            *pour.rise_m_h += by;
        } else if (grows == 1) {
            *pour.temperature_c -= 20 * by;
        } else if (grows == 2) {
            *pour.highest_slump_mm += 100 * by;
        } else if (grows == 3) {
            run.heights.front().height_m += by;
            pour.form_height_m += by;
        } else {
            ties.across_mm *= 1 + by;
        }
        const TieLayout after = core::tie_layout(run, ties);
        if (after.rows == before.rows && !before.ties.empty() &&
            core::tie_layout(run, ties).ties.front().height_m == before.ties.front().height_m) {
            demand_at_most(before_kn, hardest_kn(pour, after, tables), "load before");
        }
    });
}

TEST_CASE("no tie carries less, and no form may rise faster, where a fact is left out") {
    holds([] {
        const FormCase pour = any_pour(between(0.4, 5, "height, m"));
        const auto& tables = any_tables();
        const TieLayout layout = core::tie_layout(run_of(3, pour.form_height_m, 250), any_ties());
        FormCase less = pour;
        const int which = *rc::gen::inRange(0, 6).as("what is left out");
        if (which == 0) {
            less.rise_m_h.reset();
        } else if (which == 1) {
            less.temperature_c.reset();
        } else if (which == 2) {
            less.highest_slump_mm.reset();
        } else if (which == 3) {
            less.retards.reset();
        } else if (which == 4) {
            less.cement = core::FormCement::unknown;
        } else {
            less.vibration.depth_m.reset();
        }
        demand_at_most(hardest_kn(pour, layout, tables), hardest_kn(less, layout, tables), "known");
        const core::FormDemand demand{
            [](const core::FormPressure& pressure) { return pressure.kpa; },
            between(15, 120, "borne, kPa"), core::Measure::pressure};
        const auto allowed = [&](const FormCase& one) {
            const auto choice = core::method_choice(one, "", tables);
            const auto rise = core::least_rise(one, demand, choice, tables);
            return rise.any ? 1e3 : rise.rise_m_h.value_or(0);
        };
        if (which > 0) { // the allowable rise does not ask for the rate
            demand_at_most(allowed(less), allowed(pour), "rise with less known");
        }
    });
}

TEST_CASE("the highest method governs unless another is asked for") {
    holds([] {
        FormCase pour = any_pour(between(1, 5, "height, m"));
        pour.flow_class = one_of<std::string>({"F2", "F3", "F4"}, "class");
        pour.set_time_h = between(4, 18, "end of setting, h");
        const auto& tables = any_tables();
        const auto highest = core::method_choice(pour, "", tables);
        for (const core::FormPressure& pressure : highest.pressures) {
            demand_at_most(pressure.kpa, highest.pressures[highest.governing].kpa, "shown");
            const auto asked = core::method_choice(pour, pressure.method, tables);
            RC_ASSERT(asked.pressures[asked.governing].method == pressure.method);
            RC_ASSERT(asked.pressures.size() == highest.pressures.size());
        }
    });
}
