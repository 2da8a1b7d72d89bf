#include <boardmark/report/wall/wall_report.hpp>
#include <boardmark/report/writing/words.hpp>

#include "../drawing/layout_json.hpp"
#include "../study/added_cost_report.hpp"
#include "../writing/finite.hpp"
#include "../writing/json_values.hpp"
#include "../writing/names.hpp"
#include "../writing/verdicts.hpp"
#include "wall_lines.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::report {
namespace {

using report::json_of;

Json json_of(const core::WallRun& run) {
    Json heights = Json::array();
    for (const core::HeightAt& at : run.heights) {
        heights.push_back({{"station_m", at.station_m}, {"height_m", at.height_m}});
    }
    Json corners = Json::array();
    for (const core::Corner& corner : run.corners_at) {
        corners.push_back({{"station_m", corner.station_m}, {"turn_deg", corner.turn_deg}});
    }
    return {{"name", run.name},
            {"length_m", run.length_m},
            {"top", name_of(run.top)},
            {"heights", std::move(heights)},
            {"thickness_mm", run.thickness_mm},
            {"bottom_thickness_mm", run.bottom_thickness_mm},
            {"shows", name_of(run.shows)},
            {"corners", std::move(corners)},
            {"openings", openings_of(run)}};
}

Json json_of(const core::PartQuantities& part) {
    return {{"name", part.name},
            {"concrete_m3", part.concrete_m3},
            {"footing_m3", part.footing_m3},
            {"form_face_m2", part.form_face_m2},
            {"shown_m2", part.shown_m2},
            {"top_edge_m", part.top_edge_m},
            {"chamfer_strip_m", part.chamfer_strip_m},
            {"ties", part.ties},
            {"tie_holes_shown", part.tie_holes},
            {"release_agent_m2", part.release_m2},
            {"curing_m2", part.curing_m2},
            {"soil_m3", part.soil_m3}};
}

Json json_of(const core::BoardOrder& order) {
    Json stock = Json::array();
    for (const core::BoughtBoards& boards : order.boards) {
        stock.push_back(
            {{"stock_m", boards.stock_m}, {"cut", boards.cut}, {"bought", boards.bought}});
    }
    return {{"length_m", order.length_m},
            {"pieces", order.count},
            {"waste_percent", order.waste_percent},
            {"cut_waste_percent", order.cut_waste_percent},
            {"lined_m", order.lined_m},
            {"joints_m", order.lined_m},
            {"cutting",
             {{"bought_m", order.plan.bought_m},
              {"lower_bound_m", order.plan.lower_bound_m},
              {"proven", order.plan.proven}}},
            {"stock", std::move(stock)}};
}

Json json_of(const core::WallCoursing& coursing) {
    Json courses = Json::array();
    for (const core::RunCoursing& run : coursing.runs) {
        for (const core::StepCoursing& step : run.steps) {
            courses.push_back({{"wall", run.name},
                               {"station_m", step.station_m},
                               {"extent_m", step.extent_m},
                               {"course_mm", run.course_mm},
                               {"whole", step.fit.whole},
                               {"remainder_mm", step.fit.remainder_mm},
                               {"whole_below_m", number_or_null(step.fit.whole_below_m)},
                               {"whole_above_m", number_or_null(step.fit.whole_above_m)}});
        }
    }
    return courses;
}

Json json_of(const core::FormForces& forces, const core::FormPressure& pressure) {
    Json envelope = Json::array();
    for (const core::EnvelopePoint& point : pressure.envelope) {
        envelope.push_back({{"depth_m", point.depth_m}, {"kpa", point.kpa}});
    }
    Json marks = Json::array();
    for (const core::Mark mark : pressure.marks) {
        marks.push_back(name_of(mark));
    }
    return {{"wall", forces.wall},
            {"method", pressure.method},
            {"governs", &pressure == &core::governing_pressure(forces)},
            {"kpa", pressure.kpa},
            {"governed_by", in_words(std::string{core::name_of(pressure.governed_by)})},
            {"head_kpa", pressure.head_kpa},
            {"formula_kpa", number_or_null(pressure.formula_kpa)},
            {"height_m", forces.height_m},
            {"why", json_of(pressure.why)},
            {"remarks", json_of(pressure.remarks)},
            {"envelope", std::move(envelope)},
            {"source", pressure.source.citation},
            {"marked", std::move(marks)},
            {"caution", words(core::form_caution(), core::UnitSystem::si)}};
}

Json json_of(const std::optional<core::AllowableRise>& rise) {
    if (!rise) {
        return nullptr;
    }
    return {{"rise_m_h", number_or_null(rise->rise_m_h)},
            {"any", rise->any},
            {"reason", words(rise->reason, core::UnitSystem::si)}};
}

Json json_of_ties(const core::FormForces& forces) {
    Json rows = Json::array();
    for (const core::TieRowLoad& row : forces.tie_rows) {
        rows.push_back({{"height_m", row.height_m},
                        {"area_m2", row.area_m2},
                        {"highest_kpa", row.highest_kpa},
                        {"load_kn", row.load_kn},
                        {"stations_m", row.stations_m}});
    }
    return {{"wall", forces.wall},
            {"method", core::governing_pressure(forces).method},
            {"stations_m", forces.ties.stations_m},
            {"rows", std::move(rows)},
            {"remarks", json_of(forces.tie_remarks)},
            {"allowable_rise_by_form", json_of(forces.rise_by_form)},
            {"allowable_rise_by_ties", json_of(forces.rise_by_ties)},
            {"caution", words(core::form_caution(), core::UnitSystem::si)}};
}

Json json_of_joints(const core::RunPlan& run) {
    double spacing_m = run.joints.spacings.front().m;
    for (const core::JointSpacing& spacing : run.joints.spacings) {
        spacing_m = std::min(spacing_m, spacing.m);
    }
    return {{"wall", run.wall},
            {"spacing_m", spacing_m},
            {"positions_m", run.joints.positions_m},
            {"round_a_planter", run.round_a_planter},
            {"groove_depth_mm", run.joints.groove_mm}};
}

Json json_of_steel(const core::RunPlan& run) {
    return {{"wall", run.wall},
            {"vertical_mm2_m", run.least_steel.vertical_mm2_m},
            {"horizontal_mm2_m", run.least_steel.horizontal_mm2_m},
            {"stated_vertical_mm2_m", number_or_null(run.vertical_mm2_m)},
            {"stated_horizontal_mm2_m", number_or_null(run.horizontal_mm2_m)},
            {"source", run.least_steel.source.citation}};
}

Json json_of_lifts(const core::RunPlan& run, const core::FormForces& forces) {
    const auto by = forces.rise.by();
    Json lifts{{"wall", run.wall},
               {"rise_m_h", number_or_null(forces.rise.fastest_m_h())},
               {"rise_by", by ? Json(core::name_of(*by)) : Json(nullptr)},
               {"keeps_rise_m3_h", number_or_null(forces.rise.keeps_m3_h())},
               {"concrete_temperature_c", number_or_null(forces.concrete_c)},
               {"slump_mm", number_or_null(forces.slump_mm)},
               {"lifts", run.lifts.lifts},
               {"lift_m", run.lifts.lift_m},
               {"minutes_between_lifts", number_or_null(run.lifts.between_lifts_min)},
               {"vibrator_spacing_mm", nullptr},
               {"insertions_per_lift", nullptr}};
    if (run.vibration) {
        lifts["vibrator_spacing_mm"] = run.vibration->spacing_mm;
        lifts["insertions_per_lift"] = run.vibration->insertions;
    }
    return lifts;
}

Json json_of_soffits(const std::vector<core::SoffitAge>& soffits) {
    Json ages = Json::array();
    for (const core::SoffitAge& age : soffits) {
        ages.push_back(
            {{"part", age.soffit.part},
             {"opening", age.soffit.opening.empty() ? Json(nullptr) : Json(age.soffit.opening)},
             {"span_m", number_or_null(age.soffit.span_m)},
             {"stands_out", age.soffit.stands_out},
             {"rule_d", number_or_null(age.days)},
             {"needed_mpa", number_or_null(age.needed_mpa)},
             {"by_time_h", number_or_null(age.by_time_h)},
             {"by_strength_h", number_or_null(age.by_strength_h)},
             {"earliest_h", number_or_null(age.earliest_h())}});
    }
    return ages;
}

Json json_of_stripping(const core::AfterPlacing& after) {
    return {{"earliest_h", number_or_null(after.strip.earliest_h())},
            {"by_time_h", number_or_null(after.strip.by_time_h)},
            {"by_strength_h", number_or_null(after.strip.by_strength_h)},
            {"needed_mpa", after.strip.needed_mpa},
            {"surely_by_time_h", number_or_null(after.strip.surely_by_time_h)},
            {"not_before_h", number_or_null(after.strip.not_before_h)},
            {"not_applied", json_of(after.strip_open)},
            {"soffits", json_of_soffits(after.soffits)}};
}

Json json_of_cold(const std::optional<core::ColdPlan>& plan) {
    if (!plan) {
        return nullptr;
    }
    return {{"coldest_air_c", plan->coldest_c},
            {"protect_d", plan->days},
            {"protect_loaded_d", plan->days_if_loaded},
            {"least_c", plan->least_c.value},
            {"before_freezing_mpa", plan->frost_strength_mpa},
            {"before_freezing_h", number_or_null(plan->frost_strength_h)},
            {"most_fall_k", plan->most_fall_k.value}};
}

/// Placing of the highest run, then of each.
Json json_of_placing(const WallResult& result) {
    const auto& forces = result.plan.forces;
    std::size_t highest = 0;
    for (std::size_t i = 0; i < result.plan.runs.size(); ++i) {
        highest = forces[i].height_m > forces[highest].height_m ? i : highest;
    }
    Json placing{{"lifts", nullptr},
                 {"minutes_between_lifts", nullptr},
                 {"evaporation_kg_m2_h", nullptr},
                 {"loads", nullptr},
                 {"minutes_between_trucks", nullptr},
                 {"curing_d", result.plan.after.curing_d.value},
                 {"stripping", json_of_stripping(result.plan.after)},
                 {"cold", json_of_cold(result.plan.after.cold)},
                 {"walls", Json::array()}};
    if (!result.plan.runs.empty()) {
        const core::LiftPlan& lifts = result.plan.runs[highest].lifts;
        placing["lifts"] = lifts.lifts;
        placing["minutes_between_lifts"] = number_or_null(lifts.between_lifts_min);
    }
    if (result.plan.evaporation) {
        placing["evaporation_kg_m2_h"] = result.plan.evaporation->kg_m2_h;
    }
    if (result.plan.trucks) {
        placing["loads"] = result.plan.trucks->loads;
        placing["minutes_between_trucks"] = 60 * result.plan.trucks->longest.hours;
    }
    for (const core::RunPlan& one : result.plan.runs) {
        placing["walls"].push_back(
            json_of_lifts(one, *std::ranges::find(forces, one.wall, &core::FormForces::wall)));
    }
    return placing;
}

} // namespace

namespace {

/// The result with these in place of its elevations.
Json object_of(const WallResult& result, const std::vector<core::Elevation>& elevations) {
    const core::WallPlan& plan = result.plan;
    Json object = json_heading("wall", result.wall.title, verdicts_of(result.plan), result.inputs);
    object["mix"] = result.mix_file;
    object["walls"] = Json::array();
    for (const core::WallRun& run : result.wall.runs) {
        object["walls"].push_back(json_of(run));
    }
    object["concrete_m3"] = plan.quantities.total.concrete_m3;
    object["concrete_order_m3"] = plan.quantities.order.order_m3;
    object["footing_order_m3"] = plan.quantities.footing_order.order_m3;
    object["form_face_m2"] = plan.quantities.total.form_face_m2;
    object["boards"] = result.wall.boards ? json_of(plan.boards) : Json(nullptr);
    object["courses"] = json_of(plan.coursing);
    object["ties"] = plan.quantities.total.ties;
    object["quantities"] = Json::array();
    for (const core::PartQuantities& part : plan.quantities.parts) {
        object["quantities"].push_back(json_of(part));
    }
    object["pressure"] = Json::array();
    object["tie_load_kn"] = nullptr;
    object["tie_rows"] = Json::array();
    for (const core::FormForces& forces : plan.forces) {
        for (const core::FormPressure& pressure : forces.pressures) {
            object["pressure"].push_back(json_of(forces, pressure));
        }
        object["tie_rows"].push_back(json_of_ties(forces));
    }
    object["tie_load_kn"] = number_or_null(hardest_tie_kn(plan));
    object["joints"] = Json::array();
    object["steel"] = Json::array();
    for (const core::RunPlan& run : plan.runs) {
        object["joints"].push_back(json_of_joints(run));
        object["steel"].push_back(json_of_steel(run));
    }
    object["placing"] = json_of_placing(result);
    object["elevations"] = json_of(elevations);
    object["sections"] = json_of(plan.layout.sections);
    object["added_cost"] = json_of_added_cost(plan.added_cost);
    object["mix_checks"] = json_of(plan.mix_checks);
    object["checks"] = json_of(plan.checks);
    object["cautions"] = json_of(plan.cautions);
    return object;
}

/// A drawn face without its boards.
core::Elevation without_boards(const core::Elevation& whole) {
    // A member that is new must be named here, so that it is looked at.
    const auto& [part, face, length_m, height_m, alike, outline, boards, joints, ties, lifts_m,
                 openings, slivers, chamfer_m, boards_m] = whole;
    return {part,  face, length_m, height_m, alike,    outline, {},
            joints, ties, lifts_m,  openings, slivers, chamfer_m, boards_m};
}

} // namespace

std::string json(const WallResult& result) {
    return written(object_of(result, result.plan.layout.elevations));
}

bool all_finite(const WallResult& result) {
    std::vector<core::Elevation> bare;
    for (const core::Elevation& face : result.plan.layout.elevations) {
        bare.push_back(without_boards(face));
    }
    demand_finite(object_of(result, bare));
    const auto is_finite = [](const core::LaidBoard& board) {
        const auto& [x_m, z_m, length_m, width_m, stands, piece, cut_from_m] = board;
        return std::isfinite(x_m + z_m + length_m + width_m + cut_from_m);
    };
    return std::ranges::all_of(result.plan.layout.elevations, [&](const core::Elevation& face) {
        return std::ranges::all_of(face.boards, is_finite);
    });
}

} // namespace boardmark::report
