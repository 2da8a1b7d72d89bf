// Laws of placing: temperatures, evaporation, joints, lifts, maturity.

#include <boardmark/core/placing/placing_plan.hpp>
#include <boardmark/core/strength/maturity.hpp>
#include <boardmark/core/wall/joint_layout.hpp>
#include <boardmark/core/weather/evaporation.hpp>
#include <boardmark/core/weather/mixture_temperature.hpp>
#include <boardmark/reference/tables.hpp>

#include "laws/law.hpp"

#include <algorithm>
#include <vector>

using namespace boardmark;
using namespace boardmark::test;

namespace {

core::Tables any_tables() {
    return reference::tables(perhaps("US") ? core::UnitSystem::us : core::UnitSystem::si);
}

core::MixtureHeat any_heat() {
    return {.solids_kg = between(1500, 2400, "solids, kg"),
            .solids_c = between(-5, 50, "solids, degC"),
            .free_water_kg = between(0, 80, "free water, kg"),
            .free_water_c = between(0, 50, "free water, degC"),
            .water_kg = between(50, 150, "water, kg"),
            .water_c = between(1, 90, "water, degC")};
}

core::JointedWall any_wall() {
    core::JointedWall wall{.stretches = {}};
    double length_m = 0;
    const int stretches = *rc::gen::inRange(1, 4).as("stretches");
    for (int i = 0; i < stretches; ++i) {
        wall.stretches.push_back({between(1, 30, "length, m"), between(0.5, 6, "height, m"),
                                  between(150, 500, "thickness, mm")});
        length_m += wall.stretches.back().length_m;
    }
    const int openings = *rc::gen::inRange(0, 4).as("openings");
    for (int i = 0; i < openings; ++i) {
        wall.openings_m.push_back(between(0, 1, "opening") * length_m);
    }
    wall.corner_at_start = perhaps("corner at start");
    wall.corner_at_end = perhaps("corner at end");
    wall.many_openings = perhaps("many openings");
    return wall;
}

} // namespace

TEST_CASE("a mixture without ice lies between its parts and warms with its water") {
    holds([] {
        const auto tables = any_tables();
        core::MixtureHeat heat = any_heat();
        const double mixed_c = core::mixture_temperature_c(heat, tables.weather);
        const auto [low, high] = std::minmax({heat.solids_c, heat.free_water_c, heat.water_c});
        demand_at_most(low, mixed_c, "coldest part");
        demand_at_most(mixed_c, high, "hottest part");
        const auto water_c = core::water_temperature_for_c(heat, mixed_c, tables.weather);
        demand_same(*water_c, heat.water_c, 1e-6, "water found backwards");
        heat.water_c += between(0.1, 10, "warmer by");
        RC_ASSERT(core::mixture_temperature_c(heat, tables.weather) > mixed_c);
    });
}

TEST_CASE("more ice is colder and the ice found is the ice that was") {
    holds([] {
        const auto tables = any_tables();
        core::MixtureHeat heat = any_heat();
        const double without_c = core::mixture_temperature_c(heat, tables.weather);
        heat.ice_kg = between(0.01, 1, "part of ice") * heat.water_kg;
        const double with_c = core::mixture_temperature_c(heat, tables.weather);
        RC_ASSERT(with_c < without_c);
        demand_same(core::ice_for_kg(heat, with_c, tables.weather), heat.ice_kg, 1e-6, "ice");
    });
}

TEST_CASE("wind and warm concrete dry a surface, humid air does not") {
    holds([] {
        const auto tables = any_tables();
        core::WetSurface surface{.concrete_c = between(5, 40, "concrete, degC"),
                                 .air_c = between(-10, 40, "air, degC"),
                                 .humidity_percent = between(0, 100, "humidity"),
                                 .wind_km_h = between(0, 60, "wind, km/h")};
        const auto rate = [&] { return core::evaporation(surface, tables.weather).kg_m2_h; };
        const double before = rate();
        RC_ASSERT(before >= 0);
        surface.wind_km_h += 5;
        demand_at_most(before, rate(), "less wind");
        surface.wind_km_h -= 5;
        surface.concrete_c += 5;
        demand_at_most(before, rate(), "cooler concrete");
        surface.concrete_c -= 5;
        surface.humidity_percent = 100;
        demand_at_most(rate(), before, "wet air");
    });
}

TEST_CASE("a panel wider than the rules could not be parted, and no change lacks its joint") {
    holds([] {
        const auto tables = any_tables();
        const core::JointedWall wall = any_wall();
        const core::ContractionJointRules& rules = tables.joints->contraction;
        const auto layout = core::joint_layout(wall, rules);
        const double least_m = rules.least_apart_m.value;
        double length_m = 0;
        for (const core::WallStretch& stretch : wall.stretches) {
            length_m += stretch.length_m;
        }
        std::vector<double> ends{0};
        ends.insert(ends.end(), layout.positions_m.begin(), layout.positions_m.end());
        ends.push_back(length_m);
        double step_m = 0;
        for (std::size_t i = 0; i + 1 < wall.stretches.size(); ++i) {
            step_m += wall.stretches[i].length_m;
            const auto distance_m = [&](double at_m) { return std::abs(at_m - step_m); };
            const double nearest_m = distance_m(std::ranges::min(ends, {}, distance_m));
            RC_ASSERT((nearest_m < 1e-6 || nearest_m < least_m));
        }
        for (std::size_t i = 1; i < ends.size(); ++i) {
            const double width_m = ends[i] - ends[i - 1];
            demand_at_most(i > 1 || i + 1 < ends.size() ? least_m : 0, width_m, "least panel");
            const double middle_m = (ends[i] + ends[i - 1]) / 2;
            const bool at_corner =
                (i == 1 && wall.corner_at_start) || (i + 1 == ends.size() && wall.corner_at_end);
            double begin_m = 0;
            for (std::size_t j = 0; j < wall.stretches.size(); ++j) {
                const double end_m = begin_m + wall.stretches[j].length_m;
                const double most_m = layout.spacings[j].m * (at_corner ? 0.5 : 1);
                if (middle_m > begin_m && middle_m < end_m && width_m > most_m + 1e-6) {
                    // Parted, one of its two panels would be too narrow.
                    demand_at_most(width_m, (at_corner ? 3 : 2) * least_m, "a panel that is wide");
                }
                begin_m = end_m;
            }
        }
        RC_ASSERT(layout.groove_mm >= rules.groove_least_mm.value);
    });
}

TEST_CASE("lifts of one height make up the wall") {
    holds([] {
        const auto tables = any_tables();
        const core::PouredWall wall{.height_m = between(0.3, 8, "height, m"),
                                    .plan_area_m2 = between(0.5, 30, "plan, m2"),
                                    .output_m3_h = between(1, 40, "output, m3/h")};
        const auto plan = core::lift_plan(wall, tables.placing->lifts);
        demand_same(plan.lifts * plan.lift_m, wall.height_m, 1e-12, "height");
        demand_at_most(1000 * plan.lift_m, tables.placing->lifts.most_mm.value, "lift");
        if (plan.between_lifts_min) {
            // One lift is as much concrete as the output brings in the time.
            demand_same(*plan.between_lifts_min / 60 * *wall.output_m3_h,
                        plan.lift_m * wall.plan_area_m2, 1e-9, "concrete of a lift");
        }
    });
}

TEST_CASE("a warmer history is older, and parts of it add up") {
    holds([] {
        const auto tables = any_tables();
        const auto& rules = tables.placing->curing.maturity;
        core::TemperatureHistory history;
        const int stretches = *rc::gen::inRange(1, 6).as("stretches");
        double sum_h = 0;
        for (int i = 0; i < stretches; ++i) {
            history.push_back({between(0, 48, "hours"), between(-10, 40, "degC")});
            sum_h += core::equivalent_age_h({history.back()}, rules);
        }
        const double age_h = core::equivalent_age_h(history, rules);
        demand_same(age_h + 1, sum_h + 1, 1e-9, "sum of the parts");
        for (core::TemperatureStretch& stretch : history) {
            stretch.temperature_c += 2;
        }
        demand_at_most(age_h, core::equivalent_age_h(history, rules), "cooler");
        demand_at_most(0, core::temperature_time_factor_c_h(history, 0), "factor");
    });
}
