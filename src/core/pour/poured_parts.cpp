#include "../basis/tolerance.hpp"
#include "../placing/filling.hpp"
#include "../wall/trucks.hpp"
#include "pour_case.hpp"

#include <algorithm>
#include <cassert>

namespace boardmark::core {
namespace {

template <class Parts>
auto* named(Parts& parts, const std::string& name, auto member) {
    const auto found = std::ranges::find(parts, name, member);
    return found == parts.end() ? nullptr : &*found;
}

/// The lower of what forms and ties bear. What is not stated of them leaves the rate that the
/// pressure shown holds for.
HighestRise highest_rise(const FormForces& forces, bool has_ties) {
    const auto& by_form = forces.rise_by_form;
    const auto& by_ties = forces.rise_by_ties;
    const bool both_known = by_form && (by_ties || !has_ties);
    const bool none_allowed = (by_form && !by_form->any && !by_form->usable_m_h) ||
                              (by_ties && !by_ties->any && !by_ties->usable_m_h);
    if (none_allowed) {
        return {.why = {"NOT BORNE at any rate: do not place", {}}};
    }
    std::optional<double> least_m_h;
    for (const auto* rise : {&by_form, &by_ties}) {
        if (*rise && (*rise)->usable_m_h) {
            least_m_h = std::min(least_m_h.value_or(*(*rise)->usable_m_h), *(*rise)->usable_m_h);
        }
    }
    const auto planned_m_h = forces.rise.fastest_m_h();
    if (!both_known) {
        if (planned_m_h) {
            least_m_h = std::min(least_m_h.value_or(*planned_m_h), *planned_m_h);
        }
        return {.m_h = least_m_h,
                .why = {"what forms or ties bear is not stated: ask the formwork's designer", {}}};
    }
    if (!least_m_h) {
        return {.any = true, .why = {"forms and ties bear the full liquid head", {}}};
    }
    return {.m_h = least_m_h, .why = {"what forms and ties bear", {}}};
}

PouredPart poured_part(const CastPart& cast, const Wall& wall, const WallPlan& plan) {
    PouredPart part{.name = cast.name,
                    .forces = named(plan.forces, cast.name, &FormForces::wall),
                    .run = named(plan.runs, cast.name, &RunPlan::wall)};
    if (const auto* planter = named(wall.planters, cast.name, &Planter::name)) {
        part.copies = planter->count;
    }
    if (const auto* bench = named(wall.benches, cast.name, &BenchTop::name)) {
        part.copies = bench->count;
    }
    const auto* quantities = named(plan.quantities.parts, cast.name, &PartQuantities::name);
    part.concrete_m3 = quantities ? quantities->concrete_m3 : cast.plan_m2 * cast.height_m;
    if (part.forces) {
        part.highest = highest_rise(*part.forces, wall.ties.has_value());
    }
    return part;
}

/// A planter's floor is no lift of its walls: what they leave of its concrete, at the output there.
void add_floor(const PouredPart& part, const Wall& wall, UnloadedPart& unloaded) {
    const double floor_m3 = part.concrete_m3 / part.copies - volume_of(unloaded.lifts);
    const auto* planter = named(wall.planters, part.name, &Planter::name);
    if (!planter || unloaded.lifts.empty() || !above(floor_m3, 0)) {
        return;
    }
    const auto output_m3_h = planter->output_m3_h ? planter->output_m3_h : wall.placing.output_m3_h;
    if (!output_m3_h) {
        unloaded.lifts.clear(); // how long its floor takes is not known
        return;
    }
    unloaded.lifts.insert(unloaded.lifts.begin(), {floor_m3, floor_m3 / *output_m3_h});
}

} // namespace

std::vector<PouredPart> poured_parts(const Wall& wall, const WallPlan& plan,
                                     const std::string& part) {
    std::vector<PouredPart> parts;
    for (const CastPart& cast : cast_parts(wall)) {
        if (part.empty() ? cast.kind != CastKind::footing : cast.name == part) {
            parts.push_back(poured_part(cast, wall, plan));
        }
    }
    assert(!parts.empty());
    return parts;
}

std::vector<UnloadedPart> filled_parts(const std::vector<PouredPart>& parts, const Wall& wall,
                                       const Tables& tables) {
    const auto all = unloaded_parts(wall, tables);
    std::vector<UnloadedPart> filled;
    for (const PouredPart& part : parts) {
        filled.push_back(*std::ranges::find(all, part.name, &UnloadedPart::name));
        add_floor(part, wall, filled.back());
    }
    return filled;
}

void add_vibrators(const std::vector<UnloadedPart>& filled, std::vector<PouredPart>& parts) {
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const auto& lifts = filled[i].lifts;
        if (!parts[i].run || lifts.empty()) {
            continue;
        }
        // The floor of a planter stands before the lifts of its walls.
        const auto of_walls = lifts.end() - parts[i].run->lifts.lifts;
        const auto quickest =
            std::ranges::min_element(of_walls, lifts.end(), {}, &FilledLift::hours);
        parts[i].least_lift_h = quickest->hours;
        if (parts[i].run->vibration && above(quickest->hours, 0)) {
            parts[i].vibrators = vibrators_at_work(*parts[i].run->vibration, quickest->hours);
        }
    }
}

} // namespace boardmark::core
