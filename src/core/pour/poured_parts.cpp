#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../wall/trucks.hpp"
#include "pour_case.hpp"

#include <algorithm>
#include <cassert>

namespace boardmark::core {
namespace {

template <class Parts>
auto* part_named(Parts& parts, const std::string& name, auto member) {
    const auto found = std::ranges::find(parts, name, member);
    return found == parts.end() ? nullptr : &*found;
}

/// The rate that is planned, or less where the one that is known bears less.
HighestRise planned_rise(const FormForces& forces, std::optional<double> known_m_h) {
    const auto planned_m_h = forces.rise.fastest_m_h();
    const char* missing = !forces.rise_by_form && !forces.rise_by_ties
                              ? "what forms and ties can carry"
                          : forces.rise_by_form ? "what the ties can carry"
                                                : "what the forms can carry";
    HighestRise rise{.m_h = known_m_h ? known_m_h : planned_m_h,
                     .planned = true,
                     .why = {"planned, and not shown to be safe: {missing} is not stated; ask the "
                             "formwork's designer before placing",
                             {word("missing", missing)}}};
    if (rise.m_h && planned_m_h) {
        rise.m_h = std::min(*rise.m_h, *planned_m_h);
    }
    return rise;
}

/// Nothing on the sheet says how hard the pump may press, or that each load has its air.
HighestRise open_rise(const FormForces& forces) {
    const char* why = is_pumped(governing_pressure(forces))
                          ? "planned; for concrete pumped from below the pressure of the pump is "
                            "not stated: ask the formwork's designer which gauge reading stops the "
                            "pump"
                          : "planned; a load with the least air that it may have is heavier than "
                            "forms or ties carry: ask the formwork's designer before placing";
    return {.m_h = forces.rise.fastest_m_h(), .planned = true, .why = {why, {}}};
}

bool is_open(const std::optional<AllowableRise>& rise) {
    return rise && rise->open;
}

bool bears_nothing(const std::optional<AllowableRise>& rise) {
    return rise && !rise->any && !rise->open && !rise->usable_m_h;
}

/// The lower of what forms and ties bear. What is not stated of either leaves the planned rate.
HighestRise highest_rise(const FormForces& forces) {
    const auto& by_form = forces.rise_by_form;
    const auto& by_ties = forces.rise_by_ties;
    if (bears_nothing(by_form) || bears_nothing(by_ties)) {
        return {.why = {"NO RATE IS SLOW ENOUGH: do not place", {}}};
    }
    if (is_open(by_form) || is_open(by_ties)) {
        return open_rise(forces);
    }
    std::optional<double> least_m_h;
    for (const auto* rise : {&by_form, &by_ties}) {
        if (*rise && (*rise)->usable_m_h) {
            least_m_h = std::min(least_m_h.value_or(*(*rise)->usable_m_h), *(*rise)->usable_m_h);
        }
    }
    if (!by_form || !by_ties) {
        return planned_rise(forces, least_m_h);
    }
    if (!least_m_h) {
        return {.any = true, .why = {"forms and ties carry the full liquid head", {}}};
    }
    return {.m_h = least_m_h, .why = {"what forms and ties can carry", {}}};
}

PouredPart poured_part(const CastPart& cast, const Wall& wall, const WallPlan& plan) {
    PouredPart part{.name = cast.name,
                    .forces = part_named(plan.forces, cast.name, &FormForces::wall),
                    .run = part_named(plan.runs, cast.name, &RunPlan::wall)};
    if (const auto* planter = part_named(wall.planters, cast.name, &Planter::name)) {
        part.copies = planter->count;
    }
    if (const auto* bench = part_named(wall.benches, cast.name, &BenchTop::name)) {
        part.copies = bench->count;
    }
    const auto* quantities = part_named(plan.quantities.parts, cast.name, &PartQuantities::name);
    part.concrete_m3 = quantities ? quantities->concrete_m3 : cast.plan_m2 * cast.height_m;
    if (part.forces) {
        part.highest = highest_rise(*part.forces);
    }
    return part;
}

const UnloadedPart& filled_part(const std::vector<UnloadedPart>& filled, const std::string& name) {
    return *std::ranges::find(filled, name, &UnloadedPart::name);
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
        filled.push_back(filled_part(all, part.name));
    }
    return filled;
}

void add_vibrators(const std::vector<UnloadedPart>& filled, std::vector<PouredPart>& parts) {
    for (PouredPart& part : parts) {
        const auto& lifts = filled_part(filled, part.name).lifts;
        if (!part.run || !part.run->vibration || lifts.empty()) {
            continue;
        }
        const double quickest_h = std::ranges::min_element(lifts, {}, &FilledLift::hours)->hours;
        if (above(quickest_h, 0)) {
            part.vibrators = vibrators_at_work(*part.run->vibration, quickest_h);
        }
    }
}

} // namespace boardmark::core
