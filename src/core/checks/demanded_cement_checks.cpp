// The least cement that classes ask, and the most that a code permits.

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../code/least_cement.hpp"
#include "checks.hpp"
#include "compare.hpp"
#include "exposure_limits.hpp"
#include "remembered_limit.hpp"

#include <algorithm>
#include <optional>
#include <utility>

namespace boardmark::core {
namespace {

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
        text = found.relief_source ? "cement {value}: with the addition that counts, {with}, less "
                                     "than {limit}, to which it lowers the {least} of {class}"
                                   : "cement {value}, less than {limit}, which {class} requires";
        break;
    }
    told.message = {text,
                    {concentration("value", found.value_kg_m3),
                     concentration("limit", found.limit_kg_m3),
                     concentration("with", found.value_kg_m3 + found.beside_kg_m3),
                     concentration("least", demand.low), word("class", demand.by->name)}};
    const bool by_additions = found.met != CementMet::by_cement;
    if (by_additions) {
        append_counting(context.binder, context.code.binder, told.message);
    }
    append_memory(by_additions && found.relief_source ? *found.relief_source : *demand.source,
                  told.message);
}

/// A demand of cement and how the binder stands to it.
struct HeldDemand {
    const Demand* demand;
    LeastCement found;
};

/// Each class has its own relief: the one that asks most alone need not be the one that is missed.
/// Of equal verdicts the highest limit.
HeldDemand hardest(const CheckContext& context) {
    std::optional<HeldDemand> hardest;
    for (const Demand& demand : context.demands.all()) {
        if (demand.quantity != Demanded::cement) {
            continue;
        }
        const HeldDemand held{&demand,
                              hold_least_cement(demand, context.binder, context.code.binder,
                                                context.requirements.reinforced)};
        const auto rank = [](const HeldDemand& of) {
            return std::pair{severity(of.found.verdict), of.found.limit_kg_m3};
        };
        if (!hardest || rank(held) > rank(*hardest)) {
            hardest = held;
        }
    }
    return *hardest;
}

void check_least(const CheckContext& context, Findings& findings) {
    const Demand* strictest = context.demands.strictest(Demanded::cement);
    if (!strictest) {
        return;
    }
    if (!strictest->has_figure()) {
        findings.add({.id = check_ids::binder_exposure, .verdict = Verdict::not_checked},
                     [&](Check& told) {
                         told.requirement = strictest->by->name;
                         told.source = *strictest->source;
                         told.message = {
                             "the code's table of least cement by size has no {size} stone",
                             {quantity("size", {context.proportions.selection.nominal_max_size_mm,
                                                Measure::aggregate_size})}};
                     });
        return;
    }
    const HeldDemand held = hardest(context);
    const LeastCement& found = held.found;
    findings.add({.id = check_ids::binder_exposure,
                  .verdict = found.verdict,
                  .value = found.value_kg_m3,
                  .limit = Limit{.low = found.limit_kg_m3, .high = std::nullopt},
                  .measure = Measure::concentration},
                 [&](Check& told) { tell_least(*held.demand, found, context, told); });
}

void check_most(const CheckContext& context, Findings& findings) {
    const auto& most = context.code.binder.most_cement_kg_m3;
    if (!most || context.stated.empty()) {
        return;
    }
    const double value_kg_m3 = context.binder.cement_kg;
    const Verdict verdict =
        at_most({value_kg_m3, most->value, amount_precision_kg_m3(context.tables.system)});
    findings.add({.id = check_ids::cement_most,
                  .verdict = most->source.confidence == Confidence::from_memory
                                 ? worse(verdict, Verdict::watch)
                                 : verdict,
                  .value = value_kg_m3,
                  .limit = Limit{.low = std::nullopt, .high = most->value},
                  .measure = Measure::concentration},
                 [&](Check& told) {
                     told.requirement = context.code.name;
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
    const CodeTables& code = context.code;
    if (code.scope.empty() || context.requirements.code.empty()) {
        return;
    }
    findings.add({.id = check_ids::code_scope, .verdict = Verdict::watch}, [&](Check& told) {
        told.requirement = code.name;
        told.message = {"{scope}", {word("scope", code.scope)}};
    });
}

} // namespace boardmark::core
