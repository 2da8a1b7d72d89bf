#include "least_cement.hpp"

#include "../basis/tolerance.hpp"
#include "../checks/compare.hpp"

#include <algorithm>
#include <limits>

namespace boardmark::core {
namespace {

constexpr double counted_of_kg = 100; // the count of a mix to be proportioned is of so much binder

/// Additions that count by k let the least cement fall, each by its own rule.
double relief_kg_m3(double least_kg_m3, const CountedBinder& binder, const Source*& source) {
    double relief_kg_m3 = 0;
    for (const CountedMass& mass : binder.additions) {
        if (!mass.by || mass.counted_kg <= 0 || !mass.by->relief_above_kg_m3) {
            continue;
        }
        const double by_rule = mass.k * std::max(least_kg_m3 - *mass.by->relief_above_kg_m3, 0.0);
        const bool is_capped =
            mass.by->most_relief_kg_m3 && !above(least_kg_m3, mass.by->most_relief_up_to_kg_m3);
        relief_kg_m3 += is_capped ? std::min(by_rule, *mass.by->most_relief_kg_m3) : by_rule;
        source = &mass.by->relief_source;
    }
    return relief_kg_m3;
}

/// The limits of the class that demands.
const ClassLimits& limits_of(const Demand& demand, bool reinforced) {
    const ExposureClass& by = *demand.by;
    return !reinforced && by.plain_limits ? *by.plain_limits : by.limits;
}

/// What is asked of cement alone where enough of what counts stands beside it.
double relieved_kg_m3(const Demand& demand, const CountedBinder& binder, const ClassLimits& limits,
                      const Source*& source) {
    if (limits.min_cement_with_additions_kg_m3) {
        source = &limits.source;
        return *limits.min_cement_with_additions_kg_m3;
    }
    return demand.low - relief_kg_m3(demand.low, binder, source);
}

LeastCement by_k_value(const Demand& demand, const CountedBinder& binder,
                       const ClassLimits& limits) {
    LeastCement found{binder.cement_kg, demand.low, held(demand, binder.cement_kg),
                      CementMet::by_cement};
    if (found.verdict != Verdict::fails || below(with_counted_kg_m3(binder), demand.low)) {
        found.met = found.verdict == Verdict::fails ? CementMet::not_met : found.met;
        return found;
    }
    found.limit_kg_m3 = relieved_kg_m3(demand, binder, limits, found.relief_source);
    found.met = limits.min_cement_with_additions_kg_m3 ? CementMet::by_lower_figure
                                                       : CementMet::with_relief;
    found.verdict = at_least({binder.cement_kg, found.limit_kg_m3, demand.precision});
    const bool in_doubt = binder.in_doubt || demand.from_memory() || !found.relief_source ||
                          found.relief_source->confidence == Confidence::from_memory;
    if (found.verdict == Verdict::fails) {
        found.met = CementMet::not_met;
    } else if (in_doubt) {
        found.verdict = worse(found.verdict, Verdict::watch);
    }
    return found;
}

} // namespace

double with_counted_kg_m3(const CountedBinder& binder) {
    double kg_m3 = binder.cement_kg;
    for (const CountedMass& mass : binder.additions) {
        if (mass.by) {
            kg_m3 += (mass.by->together_by_k ? mass.k : 1) * mass.counted_kg;
        }
    }
    return kg_m3;
}

LeastCement hold_least_cement(const Demand& demand, const CountedBinder& binder,
                              const BinderRules& rules, bool reinforced) {
    if (rules.by_k) {
        return by_k_value(demand, binder, limits_of(demand, reinforced));
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
    const Source* source = nullptr;
    const double relieved =
        relieved_kg_m3(demand, per_100kg, limits_of(demand, reinforced), source);
    const double with_additions_kg_m3 =
        std::max(binder_for(demand.low, with_counted_kg_m3(per_100kg)),
                 binder_for(relieved, per_100kg.cement_kg));
    return std::min(by_cement_kg_m3, with_additions_kg_m3);
}

} // namespace boardmark::core
