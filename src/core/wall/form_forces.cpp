#include "form_forces.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../checks/compare.hpp"
#include "method_choice.hpp"
#include "wall_checks.hpp"

#include <algorithm>
#include <utility>

namespace boardmark::core {
namespace {

std::optional<TieRating> rating_of(const Ties& ties) {
    if (ties.working_load_kn) {
        return TieRating{.kn = *ties.working_load_kn};
    }
    return ties.breaking_load_kn ? std::optional{TieRating{*ties.breaking_load_kn, true}}
                                 : std::nullopt;
}

/// Without all densities the heaviest normal concrete is assumed.
void tell_assumed_density(const Totals& totals, MethodChoice& choice) {
    if (totals.fresh_density_kg_m3 && totals.volume_m3) {
        return;
    }
    for (FormPressure& pressure : choice.pressures) {
        pressure.assumed_density = why_density_is_assumed();
        pressure.remarks.push_back(*pressure.assumed_density);
    }
}

/// A form of the walls while its forces are found.
struct ForcedForm {
    const std::string& name;
    const FormCase& pour;
    const MethodChoice& choice;
    const Tables& tables;
    std::vector<Check>& checks;
};

/// A load with less air than the mix weighs more, and presses harder by most methods.
FormCase of_heaviest_load(FormCase pour) {
    pour.fresh_density_kg_m3 = std::max(pour.heaviest_kg_m3, pour.fresh_density_kg_m3);
    return pour;
}

/// The fastest rise at which the heaviest load is borne too; open where only that one is not.
AllowableRise rise_of_heaviest(const ForcedForm& form, const FormDemand& demand) {
    AllowableRise rise = least_rise(of_heaviest_load(form.pour), demand, form.choice, form.tables);
    const AllowableRise of_mix = least_rise(form.pour, demand, form.choice, form.tables);
    if (rise.usable_m_h != of_mix.usable_m_h || rise.any != of_mix.any) {
        rise.reason.text += ", for a load with the least air that it may have";
        rise.open = !rise.any && !rise.usable_m_h; // the mix itself is borne
    }
    return rise;
}

void watch_heavier_loads(const ForcedForm& form, const FormDemand& demand, Check& check) {
    const FormCase& pour = form.pour;
    if (check.verdict != Verdict::holds || !above(pour.heaviest_kg_m3, pour.fresh_density_kg_m3)) {
        return;
    }
    const std::string asked =
        form.choice.asked ? form.choice.pressures[form.choice.governing].method : "";
    const MethodChoice choice = method_choice(of_heaviest_load(pour), asked, form.tables);
    const double heavier = demand.asked(choice.pressures[choice.governing]);
    if (above(heavier, demand.borne)) {
        watch_heaviest_load(pour, heavier, check);
    }
}

/// Which rise a check of a form holds for: a pressure below the full head grows with it, and a
/// rise that no output shows to be kept is only planned.
Check for_its_rise(Check check, const FormForces& forces, const FormCase& pour) {
    const FormPressure& pressure = governing_pressure(forces);
    const auto rise_m_h = forces.rise.fastest_m_h();
    const bool full_head = !below(pressure.kpa, pressure.head_kpa);
    const bool whatever_rate = check.verdict != Verdict::fails || !pressure.valid;
    if (check.value && is_pumped(pressure)) {
        check.message.text += "; {times} times the full liquid head";
        check.message.text += pump_is_open();
        check.message.arguments.push_back(
            quantity("times", {pressure.kpa / pressure.head_kpa, Measure::ratio}));
        check.verdict = worse(check.verdict, Verdict::watch);
        return check;
    }
    if (check.value && full_head && whatever_rate) {
        check.message.text += "; at any rate of rise, because it is the full liquid head of "
                              "concrete of {density}";
        check.message.arguments.push_back(
            quantity("density", {pour.fresh_density_kg_m3, Measure::fresh_density}));
        return check;
    }
    if (!check.value || !rise_m_h) {
        return check; // a slower one may be borne, but nobody states one
    }
    check.message.text += "; for a rate of rise up to {rise}";
    check.message.arguments.push_back(no_more_than("rise", {*rise_m_h, Measure::rate_of_rise}));
    if (!forces.rise.output_m3_h) {
        check.message.text +=
            "; 'placing.output', which would show that the crew keeps it, is not stated";
        check.verdict = worse(check.verdict, Verdict::watch);
    }
    return check;
}

/// A part that can be filled by itself rises faster than the form as one. Where what presses then
/// is not borne, the verdict rests on a crew that raises all parts together.
Check watch_parts(Check check, const FormDemand& demand, const FormForces& forces,
                  const FormCase& pour, const Tables& tables) {
    const auto alone_m_h = forces.rise.alone_m_h();
    if (!alone_m_h || severity(check.verdict) > severity(Verdict::watch)) {
        return check;
    }
    FormCase alone = pour;
    alone.rise_m_h = alone_m_h;
    const std::string asked = forces.method_asked ? governing_pressure(forces).method : "";
    const MethodChoice choice = method_choice(alone, asked, tables);
    const FormPressure& pressure = choice.pressures[choice.governing];
    if (!above(demand.asked(pressure), demand.borne)) {
        return check;
    }
    check.verdict = Verdict::watch;
    check.message.text += "; only while all parts beside openings and steps are raised together: "
                          "{alone_rise} in the smallest, {part_area}, filled by itself";
    check.message.arguments.push_back(quantity("alone_rise", {*alone_m_h, Measure::rate_of_rise}));
    check.message.arguments.push_back(
        quantity("part_area", {*forces.rise.smallest_part_m2, Measure::area}));
    return check;
}

/// The highest of all methods governs, and one that was begun cannot be computed.
void open_without_method(const ForcedForm& form, Check& check) {
    const auto missing = missing_method_check(form.pour, form.choice);
    if (!missing || form.choice.asked || check.verdict != Verdict::holds) {
        return;
    }
    check.verdict = Verdict::not_checked;
    check.message.text += "; " + missing->message.text;
    check.message.arguments.insert(check.message.arguments.end(),
                                   missing->message.arguments.begin(),
                                   missing->message.arguments.end());
}

/// A check and what the methods that nobody asked for say beside it.
void put_checks(const ForcedForm& form, Check check, const std::optional<FormDemand>& demand) {
    open_without_method(form, check);
    form.checks.push_back(of_wall(form.name, check));
    if (!demand) {
        return;
    }
    if (auto other = other_method_check(check, *demand, form.choice)) {
        form.checks.push_back(of_wall(form.name, std::move(*other)));
    }
}

void force_on_form(const ForcedForm& form, double design_kpa, FormForces& forces) {
    const FormDemand demand{[](const FormPressure& pressure) { return pressure.kpa; }, design_kpa,
                            Measure::pressure};
    forces.rise_by_form = rise_of_heaviest(form, demand);
    Check check =
        for_its_rise(form_pressure_check(governing_pressure(forces), design_kpa, form.tables),
                     forces, form.pour);
    watch_heavier_loads(form, demand, check);
    put_checks(form, watch_parts(check, demand, forces, form.pour, form.tables), demand);
}

/// What a tie beside an opening or a step carries, since the tie in it is left out.
std::vector<Phrase> tie_remarks(const FormForces& forces) {
    std::optional<TieRowLoad> hardest;
    for (const TieRowLoad& row : forces.tie_rows) {
        if (row.takes_over && row.load_kn > (hardest ? hardest->load_kn : 0)) {
            hardest = row;
        }
    }
    if (!hardest) {
        return {};
    }
    return {{"where an opening or a step leaves a tie out, each tie beside it is taken to carry "
             "that tie's area too: up to {load} on {area}",
             {no_less_than("load", {hardest->load_kn, Measure::force}),
              quantity("area", {hardest->area_m2, Measure::area})}}};
}

void force_on_ties(const ForcedForm& form, const Wall& wall, FormForces& forces) {
    const FormPressure& governing = governing_pressure(forces);
    forces.ties = tie_layout(wall, form.name, *wall.ties);
    forces.tie_rows = tie_loads(governing, forces.ties);
    forces.tie_remarks = tie_remarks(forces);
    const auto rating = rating_of(*wall.ties);
    std::optional<FormDemand> demand;
    if (rating) {
        demand = FormDemand{[&layout = forces.ties](const FormPressure& pressure) {
                                return hardest_tie_kn(pressure, layout);
                            },
                            working_load_kn(*rating, form.tables), Measure::force};
    }
    Check check =
        for_its_rise(tie_check(governing, forces.ties, rating, form.tables), forces, form.pour);
    if (demand && check.value) {
        watch_heavier_loads(form, *demand, check);
        check = watch_parts(std::move(check), *demand, forces, form.pour, form.tables);
    }
    put_checks(form, check, demand);
    if (demand) {
        forces.rise_by_ties =
            forces.ties.all_held
                ? rise_of_heaviest(form, *demand)
                : AllowableRise{.reason = {"part of the form has no tie near it", {}}};
    }
}

} // namespace

Phrase why_density_is_assumed() {
    return {"the concrete is taken at the highest density of normal concrete: the mix file does "
            "not state all densities",
            {}};
}

void watch_heaviest_load(const FormCase& pour, double asked, Check& check) {
    check.verdict = Verdict::watch;
    check.message.text += "; with the least air that a load may have it weighs {heaviest} and asks "
                          "{heavier}";
    check.message.arguments.push_back(
        quantity("heaviest", {pour.heaviest_kg_m3, Measure::fresh_density}));
    check.message.arguments.push_back(no_less_than("heavier", {asked, check.measure}));
}

FormForces form_forces(const Wall& wall, const FormedWall& formed, const Proportions& proportions,
                       const Tables& tables, std::vector<Check>& checks) {
    const FormRise rise{formed.smallest_plan_m2, wall.placing.rise_m_h, formed.output_m3_h,
                        formed.smallest_part_m2};
    if (const auto check = rise_check(rise, tables.system)) {
        checks.push_back(of_wall(formed.name, *check));
    }
    FormCase pour = form_case(wall, proportions, formed.height_m, rise.fastest_m_h(), tables);
    pour.column = formed.plan;
    pour.pier = formed.pier;
    MethodChoice choice = method_choice(pour, wall.placing.pressure_method, tables);
    tell_assumed_density(proportions.totals, choice);
    FormForces forces{.wall = formed.name,
                      .height_m = formed.height_m,
                      .rise = rise,
                      .density_kg_m3 = pour.fresh_density_kg_m3,
                      .concrete_c = pour.temperature_c,
                      .slump_mm = pour.highest_slump_mm,
                      .pressures = choice.pressures,
                      .governing = choice.governing,
                      .method_asked = choice.asked,
                      .tie_rows = {},
                      .rise_by_form = {},
                      .rise_by_ties = {}};
    const ForcedForm form{formed.name, pour, choice, tables, checks};
    if (wall.placing.form_pressure_kpa) {
        force_on_form(form, *wall.placing.form_pressure_kpa, forces);
    }
    if (wall.ties) {
        force_on_ties(form, wall, forces);
    }
    const bool judged = wall.placing.form_pressure_kpa || wall.ties;
    if (auto missing = missing_method_check(pour, choice); missing && judged) {
        checks.push_back(of_wall(formed.name, std::move(*missing)));
    }
    return forces;
}

} // namespace boardmark::core
