#include "least_cement.hpp"

#include "../basis/tolerance.hpp"
#include "../checks/compare.hpp"

#include <algorithm>
#include <limits>

namespace boardmark::core {
namespace {

constexpr double counted_of_kg = 100; // the count of a mix to be proportioned is of so much binder

/// By how much an addition lets the least cement fall.
double relief_kg_m3(double least_kg_m3, const CountedMass& mass) {
    const double by_rule = mass.k * std::max(least_kg_m3 - *mass.by->relief_above_kg_m3, 0.0);
    const bool is_capped =
        mass.by->most_relief_kg_m3 && !above(least_kg_m3, mass.by->most_relief_up_to_kg_m3);
    return is_capped ? std::min(by_rule, *mass.by->most_relief_kg_m3) : by_rule;
}

/// What of an addition reaches the least cement together with the cement.
double beside_kg_m3(const CountedMass& mass) {
    return mass.by ? (mass.by->together_by_k ? mass.k : 1) * mass.counted_kg : 0;
}

/// One rule by which less cement does where an addition stands beside it.
struct Relief {
    double least_kg_m3;  ///< of cement alone
    double beside_kg_m3; ///< with which the cement still has to reach what the class demands
    const Source* source;
};

/// Tells each relief that a binder has: the class's own lower figure, beside which all counts that
/// counts at all, else the rule of each addition. What two rules permit is not added up: no code
/// read here says so.
template <class Tell>
void for_each_relief(const Demand& demand, const CountedBinder& binder, const ClassLimits& limits,
                     const Tell& tell) {
    if (limits.min_cement_with_additions_kg_m3) {
        double beside = 0;
        for (const CountedMass& mass : binder.additions) {
            beside += beside_kg_m3(mass);
        }
        tell(Relief{*limits.min_cement_with_additions_kg_m3, beside, &limits.source});
        return;
    }
    for (const CountedMass& mass : binder.additions) {
        if (mass.by && mass.counted_kg > 0 && mass.by->relief_above_kg_m3) {
            tell(Relief{demand.low - relief_kg_m3(demand.low, mass), beside_kg_m3(mass),
                        &mass.by->relief_source});
        }
    }
}

LeastCement by_k_value(const Demand& demand, const CountedBinder& binder,
                       const ClassLimits& limits) {
    LeastCement found{binder.cement_kg, demand.low, held(demand, binder.cement_kg),
                      CementMet::by_cement};
    if (found.verdict != Verdict::fails) {
        return found;
    }
    found.met = CementMet::not_met;
    for_each_relief(demand, binder, limits, [&](const Relief& relief) {
        const double least_kg_m3 = std::max(relief.least_kg_m3, demand.low - relief.beside_kg_m3);
        if (least_kg_m3 < found.limit_kg_m3) {
            found.limit_kg_m3 = least_kg_m3;
            found.relief_source = relief.source;
            found.beside_kg_m3 = relief.beside_kg_m3;
        }
    });
    found.verdict = at_least({binder.cement_kg, found.limit_kg_m3, demand.precision});
    const bool in_doubt = binder.in_doubt || demand.from_memory() || !found.relief_source ||
                          found.relief_source->confidence == Confidence::from_memory;
    if (found.verdict != Verdict::fails) {
        found.met = limits.min_cement_with_additions_kg_m3 ? CementMet::by_lower_figure
                                                           : CementMet::with_relief;
        found.verdict = in_doubt ? worse(found.verdict, Verdict::watch) : found.verdict;
    }
    return found;
}

} // namespace

LeastCement hold_least_cement(const Demand& demand, const CountedBinder& binder,
                              const BinderRules& rules, bool reinforced) {
    if (rules.by_k) {
        return by_k_value(demand, binder, demand.limits(reinforced));
    }
    LeastCement found{binder.cement_kg, demand.low, held(demand, binder.cement_kg),
                      CementMet::by_cement};
    if (found.verdict != Verdict::fails) {
        return found;
    }
    found.value_kg_m3 = binder.all_kg;
    found.verdict = held(demand, binder.all_kg);
    found.met = found.verdict == Verdict::fails ? CementMet::not_met : CementMet::by_all;
    if (binder.in_doubt) {
        found.verdict = worse(found.verdict, Verdict::watch);
    }
    return found;
}

double least_binder_kg_m3(const Demand& demand, const CountedBinder& per_100kg,
                          const BinderRules& rules, bool reinforced) {
    const auto binder_for = [&](double asked_kg_m3, double share_kg) {
        return share_kg > 0 ? counted_of_kg * asked_kg_m3 / share_kg
                            : std::numeric_limits<double>::infinity();
    };
    const double by_cement_kg_m3 = binder_for(demand.low, per_100kg.cement_kg);
    if (!rules.by_k) {
        return std::min(by_cement_kg_m3, binder_for(demand.low, per_100kg.all_kg));
    }
    double least = by_cement_kg_m3;
    for_each_relief(demand, per_100kg, demand.limits(reinforced), [&](const Relief& relief) {
        least = std::min(least,
                         std::max(binder_for(demand.low, per_100kg.cement_kg + relief.beside_kg_m3),
                                  binder_for(relief.least_kg_m3, per_100kg.cement_kg)));
    });
    return least;
}

} // namespace boardmark::core
