#include "ratio_doubts.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../mix/material_figures.hpp"
#include "supplementary.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace boardmark::core {
namespace {

double ratio(double water_kg, double binder_kg) {
    return binder_kg > 0 ? water_kg / binder_kg : std::numeric_limits<double>::infinity();
}

double counted_kg(const CheckContext& context) {
    return context.code.binder.by_k ? context.binder.counted_kg
                                    : context.proportions.totals.binder_kg_m3;
}

/// Liquid of the highest dose of a reducer in 1 m3.
double highest_liquid_kg(const Material& reducer, const CheckContext& context) {
    const auto& most = reducer.admixture.maximum_dose;
    if (!most) {
        return std::numeric_limits<double>::infinity();
    }
    const double percent = dose_percent(*most, product_density(reducer, context.tables).value);
    return context.proportions.totals.binder_kg_m3 * percent / 100 * liquid_fraction(reducer);
}

/// An air-entraining admixture comes in drops, a pigment as a powder.
bool brings_water(const Material& admixture) {
    return admixture.kind != Kind::air_entraining_admixture && admixture.kind != Kind::pigment;
}

bool breaks(const std::optional<double>& w_cm, const Demand& demand) {
    return w_cm && (!std::isfinite(*w_cm) || held(demand, *w_cm) == Verdict::fails);
}

} // namespace

RatioDoubts ratio_doubts(const CheckContext& context) {
    const double limestone_kg = ground_limestone_kg_m3(context.proportions);
    double liquid_kg = 0;
    bool any_by_trial = false;
    for (const Ingredient& one : context.proportions.ingredients) {
        if (one.by_trial && brings_water(*one.material)) {
            liquid_kg += highest_liquid_kg(*one.material, context);
            any_by_trial = true;
        }
    }
    RatioDoubts doubts;
    const double water_kg = context.proportions.totals.water_kg_m3;
    // Where additions count by k, limestone counts as nothing already.
    if (limestone_kg > 0 && !context.code.binder.by_k) {
        doubts.without_limestone = ratio(water_kg, counted_kg(context) - limestone_kg);
    }
    if (any_by_trial) {
        doubts.with_highest_doses = ratio(water_kg + liquid_kg, counted_kg(context));
    }
    return doubts;
}

bool may_break(const RatioDoubts& doubts, const Demand& demand) {
    return breaks(doubts.without_limestone, demand) || breaks(doubts.with_highest_doses, demand);
}

void append_doubts(const RatioDoubts& doubts, const Demand& demand, Phrase& message) {
    const auto& bare = doubts.without_limestone;
    if (breaks(bare, demand)) {
        message.text += "; without the ground limestone, which the code may not count, {bare}";
        message.arguments.push_back(std::isfinite(*bare) ? quantity("bare", {*bare, Measure::w_cm})
                                                         : word("bare", "nothing binds"));
    }
    const auto& dosed = doubts.with_highest_doses;
    if (dosed && !std::isfinite(*dosed)) {
        message.text += "; the water of an admixture that is dosed as needed is not counted: its "
                        "'maximum_dose' is not stated";
    } else if (breaks(dosed, demand)) {
        message.text += "; with the highest dose of what is dosed as needed {dosed}";
        message.arguments.push_back(quantity("dosed", {*dosed, Measure::w_cm}));
    }
}

} // namespace boardmark::core
