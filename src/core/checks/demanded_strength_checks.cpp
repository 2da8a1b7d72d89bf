#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "checks.hpp"
#include "compare.hpp"
#include "exposure_limits.hpp"

#include <algorithm>
#include <vector>

namespace boardmark::core {
namespace {

/// Demands on one figure that share the bound which governs.
struct Governing {
    std::vector<std::string> classes;
    const Demand* last = nullptr;

    void add(const Demand& demand) {
        classes.push_back(demand.by->name);
        last = &demand;
    }
};

/// The lowest ratio; every other class is named with its own.
void tell_ratio(const CheckContext& context, double w_cm, double lowest, Check& told) {
    Governing governing;
    Phrase& message = told.message;
    message = {
        "w/cm {value}, at most {limit} in {classes}",
        {quantity("value", {w_cm, Measure::w_cm}), quantity("limit", {lowest, Measure::w_cm})}};
    for (const Demand& demand : context.demands.all()) {
        if (demand.quantity != Demanded::w_cm) {
            continue;
        }
        if (demand.high == lowest) {
            governing.add(demand);
            continue;
        }
        const bool broken = held(demand, w_cm) == Verdict::fails;
        const std::string name = numbered("class", message);
        message.arguments.push_back(word(name, demand.by->name));
        const std::string limit = numbered("limit", message);
        message.arguments.push_back(quantity(limit, {demand.high, Measure::w_cm}));
        message.text += broken ? "; exceeds {" + limit + "} ({" + name + "}) too"
                               : "; {" + name + "} allows {" + limit + "}";
    }
    told.source = *governing.last->source;
    told.requirement = joined(governing.classes);
    message.arguments.push_back(word("classes", told.requirement));
    for (const Demand& demand : context.demands.all()) {
        if (demand.quantity == Demanded::w_cm && demand.high == lowest) {
            append_other_editions(*demand.by, message);
        }
    }
}

bool bounds_ratio(const ExposureClass& exposure, const CheckContext& context) {
    return std::ranges::any_of(context.demands.all(), [&](const Demand& demand) {
        return demand.quantity == Demanded::w_cm && demand.by == &exposure;
    });
}

/// The highest strength that a class asks, and how the mix meets it.
struct StrengthFinding {
    double specified_mpa;
    double least_mpa;
    bool by_twin; ///< it holds by what the other system of units prints
};

void tell_strength(const CheckContext& context, const StrengthFinding& found, Check& told) {
    Governing governing;
    for (const Demand& demand : context.demands.all()) {
        if (demand.quantity == Demanded::strength && demand.low == found.least_mpa) {
            governing.add(demand);
        }
    }
    told.source = *governing.last->source;
    told.requirement = joined(governing.classes);
    told.message = {found.by_twin ? "specified strength {value}: {classes} requires {limit}, which "
                                    "the other system of units prints as {twin}"
                                  : "specified strength {value}, at least {limit} in {classes}",
                    {quantity("twin", {governing.last->low_twin, Measure::strength}),
                     quantity("value", {found.specified_mpa, Measure::strength}),
                     quantity("limit", {found.least_mpa, Measure::strength}),
                     word("classes", told.requirement)}};
    for (const Demand& demand : context.demands.all()) {
        if (demand.quantity == Demanded::strength && demand.low == found.least_mpa &&
            !bounds_ratio(*demand.by, context)) {
            append_other_editions(*demand.by, told.message); // the others tell it with their w/cm
        }
    }
}

} // namespace

void check_demanded_ratio(const CheckContext& context, Findings& findings) {
    const Demand* lowest = nullptr;
    for (const Demand& demand : context.demands.all()) {
        if (demand.quantity == Demanded::w_cm && (!lowest || demand.high < lowest->high)) {
            lowest = &demand;
        }
    }
    if (!lowest) {
        return;
    }
    const double w_cm = context.proportions.totals.w_cm;
    findings.add({.id = check_ids::w_cm_exposure,
                  .verdict = held(*lowest, w_cm),
                  .value = w_cm,
                  .limit = lowest->limit(),
                  .measure = Measure::w_cm},
                 [&](Check& told) { tell_ratio(context, w_cm, lowest->high, told); });
}

void check_demanded_strength(const CheckContext& context, Findings& findings) {
    const double strength_mpa = context.requirements.strength_mpa;
    const Demand* highest = nullptr;
    Verdict verdict = Verdict::holds;
    for (const Demand& demand : context.demands.all()) {
        if (demand.quantity != Demanded::strength || (highest && demand.low < highest->low)) {
            continue;
        }
        const bool raised = !highest || demand.low > highest->low;
        const Verdict found = held(demand, strength_mpa);
        verdict = raised ? found : worse(verdict, found);
        highest = raised ? &demand : highest;
    }
    if (!highest) {
        return;
    }
    const bool by_twin = verdict == Verdict::holds && below(strength_mpa, highest->low);
    findings.add({.id = check_ids::strength_exposure,
                  .verdict = verdict,
                  .value = strength_mpa,
                  .limit = highest->limit(),
                  .measure = Measure::strength},
                 [&](Check& told) {
                     tell_strength(context, {strength_mpa, highest->low, by_twin}, told);
                 });
}

} // namespace boardmark::core
