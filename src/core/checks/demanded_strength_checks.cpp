#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "checks.hpp"
#include "compare.hpp"
#include "exposure_limits.hpp"
#include "ratio_doubts.hpp"
#include "remembered_limit.hpp"

#include <algorithm>
#include <optional>
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
    const bool by_k = context.code.binder.by_k;
    message = {
        by_k ? "water over cement and counted additions {value}, at most {limit} in {classes}"
             : "w/cm {value}, at most {limit} in {classes}",
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
    append_counting(context.binder, context.code.binder, message);
    append_memory(told.source, message);
}

/// The ratio as the code means it: water over what counts of the binder. Nothing where nothing
/// counts, because the binder holds no cement.
std::optional<double> counted_ratio(const CheckContext& context) {
    const Totals& totals = context.proportions.totals;
    const double counted_kg = context.binder.counted_kg;
    return !context.code.binder.by_k ? std::optional{totals.w_cm}
           : counted_kg > 0          ? std::optional{totals.water_kg_m3 / counted_kg}
                                     : std::nullopt;
}

/// No ratio is as bad as any: what is no cement binds by no rule of the code.
void tell_no_cement(const Demand& demand, Check& told) {
    told.requirement = demand.by->name;
    told.source = *demand.source;
    told.message = {
        "the binder holds no cement, beside which additions could count: at most "
        "{limit} in {class}",
        {quantity("limit", {demand.high, Measure::w_cm}), word("class", demand.by->name)}};
}

bool bounds_ratio(const ExposureClass& exposure, const CheckContext& context) {
    return std::ranges::any_of(context.demands.all(), [&](const Demand& demand) {
        return demand.quantity == Demanded::w_cm && demand.by == &exposure;
    });
}

/// Whether a figure keeps the limit of a class only because pozzolan or slag eases it: how much of
/// them is enough has to be shown by tests, which nobody has looked at.
bool rests_on_addition(Demanded quantity, double value, const CheckContext& context) {
    return std::ranges::any_of(context.demands.all(), [&](const Demand& demand) {
        if (demand.quantity != quantity || !demand.by->pozzolanic_limits ||
            held(demand, value) == Verdict::fails) {
            return false;
        }
        const ClassLimits& bare = demand.by->limits;
        return quantity == Demanded::w_cm
                   ? bare.max_w_cm &&
                         at_most({value, *bare.max_w_cm, w_cm_precision}) == Verdict::fails
                   : below(value, bare.min_strength_mpa) &&
                         below(value, bare.min_strength_twin_mpa);
    });
}

constexpr const char* eased =
    ". The class eases it for pozzolan or slag, of which so much must be shown to be enough";

/// The highest strength that a class asks, and how the mix meets it.
struct StrengthFinding {
    std::optional<double> specified_mpa; ///< by the code's specimen
    double least_mpa;
    Specimen specimen;
    bool by_twin;       ///< it holds by what the other system of units prints
    bool by_other_rule; ///< specified by a code that lets another part of the tests fall below
};

/// Concrete gains strength: one that is specified for a later age than the class asks says nothing
/// of that age, unless it is too low even so.
bool is_too_late(const Demand& demand, const Requirements& asked) {
    const auto& age_d = demand.limits(asked.reinforced).strength_age_d;
    return age_d && above(asked.strength_age_d, *age_d);
}

Verdict held_at_its_age(const Demand& demand, double stated_mpa, const Requirements& asked) {
    const Verdict verdict = held(demand, stated_mpa);
    return verdict != Verdict::fails && is_too_late(demand, asked) ? Verdict::not_checked : verdict;
}

/// The class in the code's own word where it has one: "C30/37".
std::string class_asked(const Demand& demand, bool reinforced) {
    return demand.limits(reinforced).strength_name;
}

/// A strength of cubes beside a limit of cylinders, or the other way round.
Phrase not_comparable(const StrengthFinding& found, const Requirements& asked,
                      const std::string& classes) {
    return {"{classes} requires {limit} of {its}; the strength of the file is of {stated}, and "
            "nothing pairs the two: state a class that names both, such as 'strength: C30/37', or "
            "the strength by 'specimen: {specimen}'",
            {word("classes", classes), quantity("limit", {found.least_mpa, Measure::strength}),
             word("its", plural_of(found.specimen)), word("stated", plural_of(asked.specimen)),
             word("specimen", found.specimen == Specimen::cube ? "cube" : "cylinder")}};
}

/// The class that the code names, the age at which it asks it, and whose rule the strength is.
void append_class(const Demand& demand, const StrengthFinding& found, const CheckContext& context,
                  Phrase& message) {
    const bool reinforced = context.requirements.reinforced;
    if (const std::string name = class_asked(demand, reinforced); !name.empty()) {
        message.text += " ({strength_class}, by {specimens})";
        message.arguments.push_back(word("strength_class", name));
        message.arguments.push_back(word("specimens", plural_of(found.specimen)));
    }
    if (const std::string& age = demand.limits(reinforced).strength_age; !age.empty()) {
        message.text += " at {class_age}";
        message.arguments.push_back(word("class_age", age));
    }
    if (is_too_late(demand, context.requirements)) {
        message.text += "; the file's is of {file_age} ('strength_age'), which says nothing of "
                        "that age: state the strength that the class asks";
        message.arguments.push_back(
            quantity("file_age", {context.requirements.strength_age_d, Measure::age}));
    }
    if (found.by_other_rule) {
        message.text += "; it is specified by the rule of {own_code}: {own_rule}. Here another one "
                        "holds: {rule}";
        message.arguments.push_back(word("own_code", context.specified_by->name));
        message.arguments.push_back(word("own_rule", context.specified_by->strength_rule));
        message.arguments.push_back(word("rule", context.code.strength_rule));
    }
}

void tell_strength(const CheckContext& context, const StrengthFinding& found, Check& told) {
    Governing governing;
    for (const Demand& demand : context.demands.all()) {
        if (demand.quantity == Demanded::strength && demand.low == found.least_mpa) {
            governing.add(demand);
        }
    }
    told.source = *governing.last->source;
    told.requirement = joined(governing.classes);
    if (!found.specified_mpa) {
        told.message = not_comparable(found, context.requirements, told.requirement);
        return;
    }
    told.message = {found.by_twin ? "specified strength {value}: {classes} requires {limit}, which "
                                    "the other system of units prints as {twin}"
                                  : "specified strength {value}, at least {limit} in {classes}",
                    {quantity("twin", {governing.last->low_twin, Measure::strength}),
                     quantity("value", {*found.specified_mpa, Measure::strength}),
                     quantity("limit", {found.least_mpa, Measure::strength}),
                     word("classes", told.requirement)}};
    for (const Demand& demand : context.demands.all()) {
        if (demand.quantity == Demanded::strength && demand.low == found.least_mpa &&
            !bounds_ratio(*demand.by, context)) {
            append_other_editions(*demand.by, told.message); // the others tell it with their w/cm
        }
    }
    append_class(*governing.last, found, context, told.message);
    append_memory(told.source, told.message);
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
    const auto ratio = counted_ratio(context);
    if (!ratio) {
        findings.add({.id = check_ids::w_cm_exposure,
                      .verdict = Verdict::fails,
                      .limit = lowest->limit(),
                      .measure = Measure::w_cm},
                     [&](Check& told) { tell_no_cement(*lowest, told); });
        return;
    }
    const double w_cm = *ratio;
    const Verdict verdict = held(*lowest, w_cm);
    const RatioDoubts doubts = ratio_doubts(context);
    const bool is_eased = rests_on_addition(Demanded::w_cm, w_cm, context);
    const bool in_doubt = context.binder.in_doubt || is_eased ||
                          (verdict != Verdict::fails && may_break(doubts, *lowest));
    findings.add({.id = check_ids::w_cm_exposure,
                  .verdict = in_doubt ? worse(verdict, Verdict::watch) : verdict,
                  .value = w_cm,
                  .limit = lowest->limit(),
                  .measure = Measure::w_cm},
                 [&](Check& told) {
                     tell_ratio(context, w_cm, lowest->high, told);
                     if (is_eased) {
                         told.message.text += eased;
                     }
                     if (verdict != Verdict::fails) {
                         append_doubts(doubts, *lowest, told.message);
                     }
                 });
}

void check_demanded_strength(const CheckContext& context, Findings& findings) {
    const Demand* highest = nullptr;
    std::optional<double> specified_mpa;
    Verdict verdict = Verdict::holds;
    for (const Demand& demand : context.demands.all()) {
        if (demand.quantity != Demanded::strength || (highest && demand.low < highest->low)) {
            continue;
        }
        const bool raised = !highest || demand.low > highest->low;
        const auto stated_mpa = strength_by(demand.specimen, context.requirements);
        const Verdict found = stated_mpa
                                  ? held_at_its_age(demand, *stated_mpa, context.requirements)
                                  : Verdict::not_checked;
        verdict = raised ? found : worse(verdict, found);
        specified_mpa = raised ? stated_mpa : specified_mpa;
        highest = raised ? &demand : highest;
    }
    if (!highest) {
        return;
    }
    const bool by_other_rule = context.specified_by && !context.code.strength_rule.empty() &&
                               context.specified_by->strength_rule != context.code.strength_rule;
    const bool by_twin = specified_mpa && same(*specified_mpa, highest->low_twin) &&
                         below(*specified_mpa, highest->low);
    const bool by_addition =
        specified_mpa && rests_on_addition(Demanded::strength, *specified_mpa, context);
    const bool watched = (by_other_rule && specified_mpa) || by_addition;
    findings.add({.id = check_ids::strength_exposure,
                  .verdict = watched ? worse(verdict, Verdict::watch) : verdict,
                  .value = specified_mpa,
                  .limit = specified_mpa ? highest->limit() : Limit{},
                  .measure = Measure::strength},
                 [&](Check& told) {
                     tell_strength(
                         context,
                         {specified_mpa, highest->low, highest->specimen, by_twin, by_other_rule},
                         told);
                     if (by_addition) {
                         told.message.text += eased;
                     }
                 });
}

} // namespace boardmark::core
