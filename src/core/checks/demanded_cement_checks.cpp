// The least cement that classes ask, and the most that a code permits.

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "checks.hpp"
#include "compare.hpp"
#include "exposure_limits.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// How a least cement is met.
enum class CementMet {
    by_cement,         ///< alone
    by_all,            ///< with the additions, all of which the code counts
    with_relief,       ///< less cement, as counted additions permit
    by_lower_figure,   ///< the class's own lower figure for concrete with additions
    not_met,
};

struct LeastCement {
    double value_kg_m3; ///< what is held against the limit: cement, or all that the code counts
    double limit_kg_m3; ///< after relief
    Verdict verdict;
    CementMet met;
    const Source* relief_source = nullptr;
};

/// Additions that count by k let the least cement fall, each by its own rule.
double relief_kg_m3(double least_kg_m3, const CountedBinder& binder, const Source*& source) {
    double relief_kg_m3 = 0;
    for (const CountedMass& mass : binder.additions) {
        if (!mass.by || mass.counted_kg <= 0 || !mass.by->relief_above_kg_m3) {
            continue;
        }
        const double by_rule =
            mass.k * std::max(least_kg_m3 - *mass.by->relief_above_kg_m3, 0.0);
        relief_kg_m3 += std::min(by_rule, mass.by->most_relief_kg_m3.value_or(by_rule));
        source = &mass.by->relief_source;
    }
    return relief_kg_m3;
}

/// Cement and the additions that count at all, before k.
double with_counted_kg_m3(const CountedBinder& binder) {
    double kg_m3 = binder.cement_kg;
    for (const CountedMass& mass : binder.additions) {
        kg_m3 += mass.by ? mass.counted_kg : 0;
    }
    return kg_m3;
}

LeastCement by_k_value(const Demand& demand, const CountedBinder& binder,
                       const ClassLimits& limits) {
    LeastCement found{binder.cement_kg, demand.low, held(demand, binder.cement_kg),
                      CementMet::by_cement};
    if (found.verdict != Verdict::fails || with_counted_kg_m3(binder) < demand.low) {
        found.met = found.verdict == Verdict::fails ? CementMet::not_met : found.met;
        return found;
    }
    if (const auto& lower_kg_m3 = limits.min_cement_with_additions_kg_m3) {
        found.limit_kg_m3 = *lower_kg_m3;
        found.met = CementMet::by_lower_figure;
        found.relief_source = &limits.source;
    } else {
        found.limit_kg_m3 -= relief_kg_m3(demand.low, binder, found.relief_source);
        found.met = CementMet::with_relief;
    }
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

LeastCement hold_least(const Demand& demand, const CountedBinder& binder, const BinderRules& rules,
                       bool reinforced) {
    if (rules.by_k) {
        const ExposureClass& by = *demand.by;
        return by_k_value(demand, binder,
                          !reinforced && by.plain_limits ? *by.plain_limits : by.limits);
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

void tell_least(const Demand& demand, const LeastCement& found, const CheckContext& context,
                Check& told) {
    told.requirement = demand.by->name;
    told.source = *demand.source;
    const char* text = "";
    switch (found.met) {
    case CementMet::by_cement:
        text = "cement {value}, at least {limit} in {class}";
        break;
    case CementMet::by_all:
        text = "cement and additions {value}, at least {limit} of cement in {class}";
        break;
    case CementMet::with_relief:
        text = "cement {value}: with the additions that count, {with}, at least {limit} instead of "
               "{least} in {class}";
        break;
    case CementMet::by_lower_figure:
        text = "cement {value}: with the additions that count, {with}, at least {limit} instead of "
               "{least} in {class}, as the class says for such concrete";
        break;
    case CementMet::not_met:
        text = "cement {value}, less than {limit}, which {class} requires";
        break;
    }
    told.message = {text,
                    {concentration("value", found.value_kg_m3),
                     concentration("limit", found.limit_kg_m3),
                     concentration("with", with_counted_kg_m3(context.binder)),
                     concentration("least", demand.low), word("class", demand.by->name)}};
    const bool by_additions = found.met != CementMet::by_cement;
    if (by_additions) {
        append_counting(context.binder, context.tables.code.binder, told.message);
    }
    append_memory(by_additions && found.relief_source ? *found.relief_source : *demand.source,
                  told.message);
}

void check_least(const CheckContext& context, Findings& findings) {
    const Demand* demand = context.demands.strictest(Demanded::cement);
    if (!demand) {
        return;
    }
    if (!demand->has_figure()) {
        findings.add({.id = check_ids::binder_exposure, .verdict = Verdict::not_checked},
                     [&](Check& told) {
                         told.requirement = demand->by->name;
                         told.source = *demand->source;
                         told.message = {
                             "the code's table of least cement by size has no {size} stone",
                             {quantity("size",
                                       {context.proportions.selection.nominal_max_size_mm,
                                        Measure::aggregate_size})}};
                     });
        return;
    }
    const LeastCement found = hold_least(*demand, context.binder, context.tables.code.binder,
                                         context.requirements.reinforced);
    findings.add({.id = check_ids::binder_exposure,
                  .verdict = found.verdict,
                  .value = found.value_kg_m3,
                  .limit = Limit{.low = found.limit_kg_m3, .high = std::nullopt},
                  .measure = Measure::concentration},
                 [&](Check& told) { tell_least(*demand, found, context, told); });
}

void check_most(const CheckContext& context, Findings& findings) {
    const auto& most = context.tables.code.binder.most_cement_kg_m3;
    if (!most || context.stated.empty()) {
        return;
    }
    const double value_kg_m3 = context.binder.cement_kg;
    const Verdict verdict = at_most(
        {value_kg_m3, most->value, amount_precision_kg_m3(context.tables.system)});
    findings.add({.id = check_ids::cement_most,
                  .verdict = most->source.confidence == Confidence::from_memory
                                 ? worse(verdict, Verdict::watch)
                                 : verdict,
                  .value = value_kg_m3,
                  .limit = Limit{.low = std::nullopt, .high = most->value},
                  .measure = Measure::concentration},
                 [&](Check& told) {
                     told.requirement = context.tables.code.name;
                     told.source = most->source;
                     told.message = {"cement {value}, additions not counted, at most {limit}",
                                     {concentration("value", value_kg_m3),
                                      concentration("limit", most->value)}};
                     append_memory(most->source, told.message);
                 });
}

} // namespace

void check_demanded_cement(const CheckContext& context, Findings& findings) {
    check_least(context, findings);
    check_most(context, findings);
}

void check_code_scope(const CheckContext& context, Findings& findings) {
    const CodeTables& code = context.tables.code;
    if (code.scope.empty() || context.requirements.code.empty()) {
        return;
    }
    findings.add({.id = check_ids::code_scope, .verdict = Verdict::watch}, [&](Check& told) {
        told.requirement = code.name;
        told.message = {"{scope}", {word("scope", code.scope)}};
    });
}

} // namespace boardmark::core
