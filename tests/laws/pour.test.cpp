// Laws of one pour: a form's plan area, its rise, its pressure and its lifts from one picture.

#include <boardmark/core/wall/wall_plan.hpp>
#include <boardmark/core/wall/wall_quantities.hpp>
#include <boardmark/report/wall/wall_report.hpp>

#include "core/base_mix.hpp"
#include "core/wall/form_forces.hpp"
#include "core/walls.hpp"
#include "form_support.hpp"
#include "laws/law.hpp"
#include "wall_support.hpp"

using namespace boardmark;
using namespace boardmark::test;

namespace {

core::Opening any_opening(const core::WallRun& run, double least_height_m) {
    const int count = *rc::gen::inRange(1, 4).as("openings");
    const double slot_m = run.length_m / count;
    core::Opening opening{.name = "opening",
                          .width_mm = 1000 * slot_m * between(0.1, 0.9, "of its slot"),
                          .height_mm =
                              1000 * least_height_m * between(0.1, 0.5, "opening's height"),
                          .depth_mm = {},
                          .sill_m = least_height_m * between(0, 0.5, "sill"),
                          .at_m = {},
                          .count = count};
    if (perhaps("a niche")) {
        opening.depth_mm = run.thickness_mm * between(0.1, 0.9, "niche's depth");
    }
    for (int i = 0; i < count; ++i) {
        opening.at_m.push_back(i * slot_m);
    }
    return opening;
}

core::WallRun any_run(bool with_openings) {
    core::WallRun run = run_of(between(2, 40, "length, m"), 1, between(150, 500, "top, mm"));
    run.bottom_thickness_mm =
        run.thickness_mm + (perhaps("battered") ? between(0, 300, "batter, mm") : 0);
    run.heights.clear();
    const int heights = *rc::gen::inRange(1, 5).as("heights");
    double least_m = 100;
    for (int i = 0; i < heights; ++i) {
        run.heights.push_back({run.length_m * i / heights, between(1.5, 6, "height, m")});
        least_m = std::min(least_m, run.heights.back().height_m);
    }
    run.top = heights == 1         ? core::Top::level
              : perhaps("sloping") ? core::Top::sloping
                                   : core::Top::stepped;
    if (with_openings && perhaps("with openings")) {
        run.openings = {any_opening(run, least_m)};
    }
    return run;
}

double plan_m2(const core::WallRun& run) {
    return core::formed_wall(run, {}, form_tables_in(core::UnitSystem::si)).smallest_plan_m2;
}

} // namespace

TEST_CASE("no height of a form is narrower than its smallest plan area") {
    holds([] {
        const core::WallRun run = any_run(true);
        const auto formed = core::formed_wall(run, {}, form_tables_in(core::UnitSystem::si));
        const bool runs_out = run.top == core::Top::sloping;
        const double slice_m = runs_out ? std::min(1.28, formed.height_m) : 1e-4;
        const double at_m = between(0, 1, "height") * (formed.height_m - slice_m);
        const double mean_m2 = formed.volume_m3(at_m, at_m + slice_m) / slice_m;
        RC_ASSERT(formed.smallest_plan_m2 > 0);
        demand_at_most(formed.smallest_plan_m2, mean_m2 * (1 + 1e-6), "smallest");
    });
}

TEST_CASE("lifts of a form add up to the concrete of its wall") {
    holds([] {
        const core::WallRun run = any_run(true);
        const auto formed = core::formed_wall(run, {}, form_tables_in(core::UnitSystem::si));
        const int lifts = *rc::gen::inRange(1, 9).as("lifts");
        double sum_m3 = 0;
        for (int i = 0; i < lifts; ++i) {
            sum_m3 +=
                formed.volume_m3(formed.height_m * i / lifts, formed.height_m * (i + 1) / lifts);
        }
        demand_same(sum_m3, core::wall_quantities(wall_of(run), practice()).total.concrete_m3, 1e-9,
                    "concrete");
    });
}

TEST_CASE("a place of an opening left out never widens the form") {
    holds([] {
        core::WallRun run = any_run(true);
        const double known_m2 = plan_m2(run);
        for (core::Opening& opening : run.openings) {
            if (perhaps("sill left out")) {
                opening.sill_m.reset();
            }
            if (perhaps("stations left out")) {
                opening.at_m.clear();
            }
        }
        demand_at_most(plan_m2(run), known_m2, "unknown");
    });
}

TEST_CASE("a pressure never gets smaller with height, rise or output, nor without them") {
    holds([] {
        const core::WallRun run = any_run(false);
        const auto& tables = form_tables_in(core::UnitSystem::si);
        const double output_m3_h = between(1, 60, "output, m3/h");
        const std::optional<double> rise_m_h =
            perhaps("rise stated") ? std::optional{between(0.2, 4, "rise, m/h")} : std::nullopt;
        const auto kpa = [&](const core::WallRun& one, std::optional<double> stated_m_h,
                             std::optional<double> into_m3_h) {
            core::FormCase pour = si_wall();
            pour.form_height_m = core::greatest_height_m(one);
            pour.rise_m_h = core::FormRise{plan_m2(one), stated_m_h, into_m3_h}.fastest_m_h();
            return core::aci_form_pressure(pour, tables).kpa;
        };
        const double before_kpa = kpa(run, rise_m_h, output_m3_h);
        core::WallRun higher = run;
        const double more_m = between(0, 3, "higher by, m");
        for (core::HeightAt& at : higher.heights) {
            at.height_m += more_m;
        }
        demand_at_most(before_kpa, kpa(higher, rise_m_h, output_m3_h), "lower wall");
        demand_at_most(before_kpa, kpa(run, rise_m_h, output_m3_h * 1.5), "less output");
        if (rise_m_h) {
            demand_at_most(before_kpa, kpa(run, *rise_m_h * 1.5, output_m3_h), "slower");
        }
        demand_at_most(before_kpa, kpa(run, std::nullopt, std::nullopt), "rise and output known");
    });
}

TEST_CASE("every figure of a wall is finite, whatever it fills with") {
    static const Solved mix = solve(test::text({}));
    holds([] {
        core::Wall wall = wall_of(any_run(true));
        wall.mix = mix.mix;
        core::WallPlacing& placing = wall.placing;
        placing.lift_m = between(0.3, 0.6, "lift, m");
        placing.truck_m3 = between(2, 9, "truck, m3");
        if (perhaps("rise stated")) {
            placing.rise_m_h = between(0.05, 6, "rise, m/h");
        }
        if (perhaps("output stated")) {
            placing.output_m3_h = between(0.1, 100, "output, m3/h");
        }
        for (core::Opening& opening : wall.runs.front().openings) {
            if (perhaps("sill left out")) {
                opening.sill_m.reset();
            }
        }
        const core::WallPlan plan =
            boardmark::test::made(core::plan_wall(entered(wall), mix.tables));
        const report::WallResult result{wall, plan, "mix.yaml"};
        RC_ASSERT(!report::json(result).empty()); // each throws at a figure that is not
        RC_ASSERT(!report::text(result, {}).empty());
        const auto check = std::ranges::find(plan.checks, "placing.rise", &core::Check::id);
        RC_ASSERT((check == plan.checks.end()) == (!placing.rise_m_h && placing.output_m3_h));
        const core::FormRise& rise = plan.forces.front().rise;
        if (check != plan.checks.end() && check->verdict == core::Verdict::holds) {
            RC_ASSERT((rise.by() == core::RiseBy::stated && rise.output_m3_h.has_value()));
        }
    });
}
