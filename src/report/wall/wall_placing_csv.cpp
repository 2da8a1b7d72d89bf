#include <boardmark/report/writing/words.hpp>

#include "wall_tables.hpp"

#include <algorithm>

namespace boardmark::report {
namespace {

using core::Measure;

constexpr double minutes_in_hour = 60;

void add_lifts(LongTable& table, const core::RunPlan& run) {
    table.subject(run.wall);
    table.add_count("lifts", run.lifts.lifts);
    table.add("height of a lift", Measure::line_length, run.lifts.lift_m);
    if (const auto minutes = run.lifts.between_lifts_min) {
        table.add("between lifts", Measure::duration, *minutes / minutes_in_hour);
    }
    if (const auto& vibration = run.vibration) {
        table.add_count("insertions in a lift", vibration->insertions);
        table.add("insertions apart, at most", Measure::length, vibration->spacing_mm);
        table.add("tip below the lift's top", Measure::length, vibration->immersion_mm);
        table.add_in("each insertion, at least", vibration->least_s, "s");
        table.add_in("each insertion, at most", vibration->most_s, "s");
    }
}

void add_trucks(LongTable& table, const core::TruckPlan& trucks) {
    table.subject("trucks");
    table.add_count("loads", trucks.loads);
    table.add("between loads, at least", Measure::duration, trucks.shortest.hours, "",
              trucks.shortest.part);
    table.add("between loads, at most", Measure::duration, trucks.longest.hours, "",
              trucks.longest.part);
    if (trucks.trucks) {
        table.add_count("trucks", *trucks.trucks);
    }
    table.add("pour", Measure::duration, trucks.pour_h);
}

void add_after(LongTable& table, const core::AfterPlacing& after) {
    table.subject("after placing");
    table.add("moist curing, at least", Measure::age, after.curing_d.value, "",
              "[" + after.curing_d.source.citation + "]");
    const bool known = after.strip.earliest_h().has_value();
    table.add("forms of faces may be stripped from", Measure::duration, after.strip.earliest_h(),
              known ? "all faces at one age" : "no rule says when");
    table.add("by time", Measure::duration, after.strip.by_time_h);
    table.add("by time alone", Measure::duration, after.strip.surely_by_time_h);
    table.add("too soon before", Measure::duration, after.strip.not_before_h);
    table.add("by strength", Measure::duration, after.strip.by_strength_h,
              after.strip.by_strength_h ? "an estimate; strength tests decide" : "");
    table.add("strength that the face needs", Measure::strength, after.strip.needed_mpa);
    table.add("not applied", after.strip_open);
}

void add_soffits(LongTable& table, const std::vector<core::SoffitAge>& soffits) {
    for (const core::SoffitAge& age : soffits) {
        table.subject(age.soffit.opening.empty()
                          ? "soffit of " + age.soffit.part
                          : "soffit of " + age.soffit.part + ", head of " + age.soffit.opening);
        const bool known = age.earliest_h().has_value();
        table.add("form and props not before", Measure::duration, age.earliest_h(),
                  known ? "the engineer decides" : "not known");
        table.add("rule by time", Measure::age, age.days);
        table.add("by time", Measure::duration, age.by_time_h);
        table.add("strength that the engineer requires", Measure::strength, age.needed_mpa);
        table.add("by strength", Measure::duration, age.by_strength_h,
                  age.by_strength_h ? "an estimate; strength tests decide" : "");
    }
}

void add_cold(LongTable& table, const core::ColdPlan& plan) {
    table.subject("cold");
    table.add("coldest air", Measure::temperature, plan.coldest_c);
    table.add("protected for, at least", Measure::age, plan.days);
    table.add("protected for where a load comes early", Measure::age, plan.days_if_loaded);
    table.add("concrete held at, at least", Measure::temperature, plan.least_c.value, "",
              "[" + plan.least_c.source.citation + "]");
    table.add("strength before it freezes", Measure::strength, plan.frost_strength_mpa);
    table.add("that strength not before", Measure::duration, plan.frost_strength_h,
              plan.frost_strength_h ? "an estimate; strength tests decide" : "");
    table.add("cools in the first 24 h, at most", Measure::temperature_difference,
              plan.most_fall_k.value, "", "[" + plan.most_fall_k.source.citation + "]");
}

} // namespace

void add_placing(LongTable& table, const core::WallPlan& plan) {
    table.section("placing");
    for (const core::RunPlan& run : plan.runs) {
        add_lifts(table, run);
    }
    if (plan.trucks) {
        add_trucks(table, *plan.trucks);
    }
    if (plan.evaporation) {
        table.subject("weather");
        table.add("evaporation", Measure::evaporation, plan.evaporation->kg_m2_h);
    }
    add_after(table, plan.after);
    add_soffits(table, plan.after.soffits);
    if (plan.after.cold) {
        add_cold(table, *plan.after.cold);
    }
}

void add_joints_and_steel(LongTable& table, const core::WallPlan& plan) {
    table.section("joints");
    for (const core::RunPlan& run : plan.runs) {
        table.subject(run.wall);
        const auto widest = std::ranges::min(run.joints.spacings, {}, &core::JointSpacing::m);
        table.add("panels up to", Measure::line_length, widest.m, "",
                  "[" + widest.source.citation + "]");
        for (const double position_m : run.joints.positions_m) {
            table.add("contraction joint at", Measure::line_length, position_m,
                      run.round_a_planter ? "round its outside from a corner" : "");
        }
        table.add("grooves of both faces together", Measure::length, run.joints.groove_mm);
    }
    table.section("steel");
    for (const core::RunPlan& run : plan.runs) {
        table.subject(run.wall);
        const std::string source = "[" + run.least_steel.source.citation + "]";
        table.add("vertical, least", Measure::steel_area, run.least_steel.vertical_mm2_m, "",
                  source);
        table.add("vertical, stated", Measure::steel_area, run.vertical_mm2_m);
        table.add("horizontal, least", Measure::steel_area, run.least_steel.horizontal_mm2_m, "",
                  source);
        table.add("horizontal, stated", Measure::steel_area, run.horizontal_mm2_m);
    }
}

} // namespace boardmark::report
