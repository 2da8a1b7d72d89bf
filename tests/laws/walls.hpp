#pragma once

// Walls drawn at random, with the concrete of a submitted mix: every fact that a file may leave out
// is drawn now and then, and can be taken away again by its name.

#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/wall/wall_contradictions.hpp>
#include <boardmark/core/wall/wall_plan.hpp>

#include "laws/mixes.hpp"
#include "made.hpp"
#include "wall_support.hpp"

#include <functional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace boardmark::test {

inline std::optional<double> perhaps_between(double low, double high, const std::string& name) {
    return perhaps(name + " stated") ? std::optional{between(low, high, name)} : std::nullopt;
}

/// A mix that is there as it stands: no draw of it is without proportions.
inline core::SubmittedMix any_submitted_mix(core::UnitSystem system) {
    core::SubmittedMix mix{.title = "drawn",
                           .system = system,
                           .requirements = {.strength_mpa = between(25, 40, "strength, MPa"),
                                            .slump_mm = between(50, 150, "slump, mm")},
                           .air_percent = 6,
                           .amounts = {},
                           .nominal_max_size_mm = one_of<double>({9.5, 19, 37.5}, "stone, mm")};
    core::Requirements& asked = mix.requirements;
    asked.code = "ACI 318-19";
    asked.exposure = any_exposure();
    asked.reinforced = one_of<bool>({true, true, true, false}, "reinforced");
    asked.board_marked = perhaps("board-marked");
    asked.section = {perhaps_between(80, 350, "section, mm"),
                     perhaps_between(50, 300, "clear bar spacing, mm"),
                     perhaps_between(20, 80, "clear cover, mm")};
    core::Material cement{.name = "cement", .kind = core::Kind::portland_cement};
    cement.standard = one_of<std::string>({"", "ASTM C150 I", "ASTM C150 V"}, "standard");
    mix.water_kg_m3 = between(140, 200, "water, kg/m3");
    mix.amounts = {amount_of(cement, between(280, 420, "cement, kg/m3")),
                   amount_of({.name = "stone", .kind = core::Kind::coarse_aggregate}, 1000),
                   amount_of({.name = "sand", .kind = core::Kind::fine_aggregate}, 750)};
    return mix;
}

inline std::vector<core::HeightAt> any_heights(core::Top top, double length_m) {
    std::vector<core::HeightAt> heights{{0, between(0.3, 5, "height, m")}};
    if (top != core::Top::level) {
        heights.push_back({between(0.2, 0.8, "step") * length_m, between(0.3, 5, "height, m")});
    }
    return heights;
}

/// Niches and openings that stand apart, below the lowest top.
inline std::vector<core::Opening> any_openings(const core::WallRun& run) {
    std::vector<core::Opening> openings;
    double lowest_m = run.heights.front().height_m;
    for (const core::HeightAt& at : run.heights) {
        lowest_m = std::min(lowest_m, at.height_m);
    }
    const bool stated = perhaps("stations stated");
    const int count = *rc::gen::inRange(0, 3).as("openings");
    for (int i = 0; i < count; ++i) {
        core::Opening opening{.name = "opening " + std::to_string(i),
                              .width_mm = 100 * run.length_m,
                              .height_mm = 300 * lowest_m,
                              .depth_mm = {},
                              .sill_m = {},
                              .at_m = {},
                              .count = 1};
        if (perhaps("a niche")) {
            opening.depth_mm = between(0.1, 0.6, "niche") * run.thickness_mm;
        }
        if (perhaps("sill stated")) {
            opening.sill_m = 0.3 * lowest_m;
        }
        if (stated) {
            opening.at_m = {(0.2 + 0.4 * i) * run.length_m};
        }
        openings.push_back(std::move(opening));
    }
    return openings;
}

inline core::WallRun any_run(const std::string& name) {
    const auto top =
        one_of<core::Top>({core::Top::level, core::Top::stepped, core::Top::sloping}, "top");
    const double length_m = between(1, 25, "length, m");
    core::WallRun run{.name = name,
                      .length_m = length_m,
                      .top = top,
                      .heights = any_heights(top, length_m),
                      .thickness_mm = between(120, 400, "thickness, mm"),
                      .bottom_thickness_mm = 0};
    run.bottom_thickness_mm = run.thickness_mm + (perhaps("battered") ? 100 : 0);
    run.shows = perhaps("both faces") ? core::ShownFaces::both : core::ShownFaces::one;
    if (perhaps("corner")) {
        run.corners = 1;
        run.corners_at = {{between(0, 1, "corner") * length_m, 90}};
    }
    if (perhaps("footing")) {
        run.footing = core::Footing{.width_mm = run.bottom_thickness_mm + 500,
                                    .depth_mm = between(100, 700, "footing, mm"),
                                    .cover_mm = perhaps_between(40, 100, "footing's cover, mm")};
    }
    run.openings = any_openings(run);
    return run;
}

inline core::Planter any_planter() {
    return {.name = "planter",
            .length_m = between(1.5, 8, "planter's length, m"),
            .width_m = between(1, 3, "planter's width, m"),
            .height_m = between(0.3, 1.2, "planter's height, m"),
            .thickness_mm = between(80, 300, "planter's thickness, mm"),
            .floor_mm = perhaps("floor") ? 150.0 : 0.0};
}

inline core::BenchTop any_bench() {
    return {.name = "bench",
            .length_m = between(1, 6, "bench's length, m"),
            .depth_mm = between(300, 600, "bench's depth, mm"),
            .thickness_mm = between(60, 250, "bench's thickness, mm"),
            .overhang_mm = perhaps("overhang") ? 100.0 : 0.0,
            .cover_mm = perhaps_between(20, 70, "bench's cover, mm")};
}

inline std::optional<core::BarGrid> any_bars(const std::string& name) {
    if (!perhaps(name + " stated")) {
        return std::nullopt;
    }
    const double bar_mm = one_of<double>({9.5, 12.7, 15.9, 19.1, 25.4}, name);
    return core::BarGrid{bar_mm, 0.785 * bar_mm * bar_mm, between(80, 500, name + " apart, mm")};
}

inline std::optional<core::Reinforcement> any_reinforcement() {
    if (!perhaps("reinforcement")) {
        return std::nullopt;
    }
    core::Reinforcement bars{.vertical = any_bars("vertical bars"),
                             .horizontal = any_bars("horizontal bars"),
                             .layers = perhaps("two layers") ? 2 : 1,
                             .cover_mm = perhaps_between(25, 80, "cover, mm")};
    bars.layers_stated = bars.layers == 2 || perhaps("layers stated");
    return bars;
}

inline core::WallPlacing any_placing() {
    core::WallPlacing placing;
    placing.rise_m_h = perhaps_between(0.3, 6, "rise, m/h");
    placing.output_m3_h = perhaps_between(3, 40, "output, m3/h");
    placing.lift_m = perhaps_between(0.3, 0.7, "lift, m");
    placing.concrete_c = perhaps_between(2, 38, "concrete, degC");
    placing.air_c = perhaps_between(-10, 38, "air, degC");
    placing.humidity_percent = perhaps_between(20, 100, "humidity");
    placing.wind_km_h = perhaps_between(0, 40, "wind, km/h");
    placing.setting_h = perhaps_between(1, 8, "setting, h");
    placing.truck_m3 = perhaps_between(4, 9, "truck, m3");
    placing.round_trip_min = perhaps_between(20, 150, "round trip, min");
    placing.vibrator_head_mm = perhaps_between(25, 76, "head, mm");
    placing.vibrator_depth_m = perhaps_between(0.3, 2, "depth of vibration, m");
    placing.form_pressure_kpa = perhaps_between(5, 120, "form pressure, kPa");
    placing.strip_after_h = perhaps_between(4, 200, "strip after, h");
    return placing;
}

/// Cones and cover that the thinnest wall has no room for: no such wall passes the door.
inline void leave_out_what_does_not_fit(core::Wall& wall) {
    if (wall.ties && core::cones_meet(*wall.ties, wall)) {
        wall.ties->cone_mm.reset();
    }
    if (wall.reinforcement && core::do_not_fit(*wall.reinforcement, wall)) {
        wall.reinforcement->cover_mm.reset();
    }
}

/// At least one of runs, planters and benches.
inline core::Wall any_wall_file() {
    const core::UnitSystem system = any_system();
    core::Wall wall{{}, "drawn", system, entered(any_submitted_mix(system))};
    const int runs = *rc::gen::inRange(0, 3).as("runs");
    for (int i = 0; i < runs; ++i) {
        wall.runs.push_back(any_run("run " + std::to_string(i)));
    }
    if (perhaps("planter")) {
        wall.planters = {any_planter()};
    }
    if (perhaps("bench") || (wall.runs.empty() && wall.planters.empty())) {
        wall.benches = {any_bench()};
    }
    if (perhaps("boards")) {
        wall.boards = core::Boards{.face_width_mm = 150,
                                   .thickness_mm = 20,
                                   .course_mm = 150,
                                   .stock_m = {4},
                                   .saw_cut_mm = 3};
        wall.boards->relief_stated = perhaps("relief stated");
        wall.boards->relief_mm = wall.boards->relief_stated ? between(0, 15, "relief, mm") : 0;
    }
    if (perhaps("ties")) {
        wall.ties = core::Ties{.kind = perhaps("mild steel") ? core::TieKind::mild_steel
                                                             : core::TieKind::stainless_steel,
                               .across_mm = between(300, 1000, "ties across, mm"),
                               .up_mm = between(300, 1000, "ties up, mm"),
                               .working_load_kn = perhaps_between(5, 60, "tie's load, kN")};
        wall.ties->cone_mm = perhaps_between(0, 80, "cone, mm");
        wall.ties->plug = perhaps("plug");
    }
    if (core::requirements_of(wall.mix).reinforced) {
        wall.reinforcement = any_reinforcement();
    }
    wall.placing = any_placing();
    leave_out_what_does_not_fit(wall);
    return wall;
}

/// A fact that a file may leave out: its name, and how a wall is told without it.
struct Fact {
    std::string name;
    std::function<void(core::Wall&)> leave_out;
};

/// Every such fact of walls and of what the mix asks of their section. What is a wish and no fact,
/// such as the height of a lift or the spacing of joints, is not among them.
inline std::vector<Fact> facts() {
    std::vector<Fact> all;
    const auto placing = [&](const char* name, auto member) {
        all.push_back({name, [member](core::Wall& wall) { (wall.placing.*member).reset(); }});
    };
    // Beside an output the rise is a wish: what forms are planned for, and what slows the pour.
    all.push_back({"rise", [](core::Wall& wall) {
                       if (!wall.placing.output_m3_h) {
                           wall.placing.rise_m_h.reset();
                       }
                   }});
    placing("output", &core::WallPlacing::output_m3_h);
    placing("concrete_temperature", &core::WallPlacing::concrete_c);
    placing("air_temperature", &core::WallPlacing::air_c);
    placing("humidity", &core::WallPlacing::humidity_percent);
    placing("wind", &core::WallPlacing::wind_km_h);
    placing("setting", &core::WallPlacing::setting_h);
    placing("truck", &core::WallPlacing::truck_m3);
    placing("round_trip", &core::WallPlacing::round_trip_min);
    placing("vibrator.head", &core::WallPlacing::vibrator_head_mm);
    placing("vibrator.depth", &core::WallPlacing::vibrator_depth_m);
    placing("form_pressure", &core::WallPlacing::form_pressure_kpa);
    placing("strip_after", &core::WallPlacing::strip_after_h);
    const auto bars = [&](const char* name, auto leave_out) {
        all.push_back({name, [leave_out](core::Wall& wall) {
                           if (wall.reinforcement) {
                               leave_out(*wall.reinforcement);
                           }
                       }});
    };
    bars("cover", [](core::Reinforcement& it) { it.cover_mm.reset(); });
    bars("vertical bars", [](core::Reinforcement& it) { it.vertical.reset(); });
    bars("horizontal bars", [](core::Reinforcement& it) { it.horizontal.reset(); });
    bars("layers", [](core::Reinforcement& it) {
        it.layers = 1;
        it.layers_stated = false;
    });
    bars("yield strength", [](core::Reinforcement& it) {
        it.yield_strength_mpa = core::Reinforcement{}.yield_strength_mpa;
        it.yield_stated = false;
    });
    all.push_back({"reinforcement", [](core::Wall& wall) { wall.reinforcement.reset(); }});
    all.push_back({"ties", [](core::Wall& wall) { wall.ties.reset(); }});
    all.push_back({"working load", [](core::Wall& wall) {
                       if (wall.ties) {
                           wall.ties->working_load_kn.reset();
                       }
                   }});
    all.push_back({"cone and plug", [](core::Wall& wall) {
                       if (wall.ties) {
                           wall.ties->cone_mm.reset();
                           wall.ties->plug.reset();
                       }
                   }});
    all.push_back({"relief", [](core::Wall& wall) {
                       if (wall.boards) {
                           wall.boards->relief_mm = 0;
                           wall.boards->relief_stated = false;
                       }
                   }});
    all.push_back({"cover of low parts", [](core::Wall& wall) {
                       for (core::WallRun& run : wall.runs) {
                           if (run.footing) {
                               run.footing->cover_mm.reset();
                           }
                       }
                       for (core::BenchTop& bench : wall.benches) {
                           bench.cover_mm.reset();
                       }
                   }});
    all.push_back({"stations of corners", [](core::Wall& wall) {
                       for (core::WallRun& run : wall.runs) {
                           run.corners_at.clear();
                       }
                   }});
    all.push_back({"stations of openings", [](core::Wall& wall) {
                       for (core::WallRun& run : wall.runs) {
                           for (core::Opening& opening : run.openings) {
                               opening.at_m.clear();
                           }
                       }
                   }});
    const auto section = [&](const char* name, auto member) {
        all.push_back({name, [member](core::Wall& wall) {
                           core::SubmittedMix mix = std::get<core::CompleteSubmittedMix>(wall.mix);
                           (mix.requirements.section.*member).reset();
                           wall.mix = entered(std::move(mix));
                       }});
    };
    section("section.thickness", &core::Section::thickness_mm);
    section("section.clear_bar_spacing", &core::Section::clear_bar_spacing_mm);
    section("section.clear_cover", &core::Section::clear_cover_mm);
    return all;
}

inline core::WallPlan planned(const core::Wall& wall) {
    return boardmark::test::made(core::plan_wall(entered(wall), tables_of(wall.system)));
}

} // namespace boardmark::test
