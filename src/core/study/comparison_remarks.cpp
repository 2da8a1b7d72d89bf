#include "comparison_remarks.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../mix/high_range_reducer.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// Whether strength is bought that nothing asks for. Where an exposure limit holds the ratio down,
/// the strength beyond need comes with durability.
bool is_spare(const ExpectedStrength& expected, const Selection& selection, const Tables& tables) {
    const double spare = 1 + tables.practice.spare_strength_percent.value / 100;
    constexpr double w_cm_precision = 0.01;
    const bool held_by_exposure =
        selection.w_cm_by_exposure &&
        !above(*selection.w_cm_by_exposure - selection.w_cm, w_cm_precision);
    return above(expected.mpa, selection.required_average_strength_mpa * spare) &&
           !held_by_exposure;
}

void remark_strength(const ComparedMix& column, const Tables& tables,
                     std::vector<Phrase>& remarks) {
    const Selection& selection = column.proportions->selection;
    const double needed_mpa = selection.required_average_strength_mpa;
    const Argument needed = quantity("needed", {needed_mpa, Measure::strength});
    if (!column.strength) {
        remarks.push_back(
            {"no strength is read at its w/cm {w_cm}: the strength is to be "
             "proven by trial (needed {needed})",
             {quantity("w_cm", {column.proportions->totals.w_cm, Measure::w_cm}), needed}});
        return;
    }
    const Argument expected = quantity("expected", {column.strength->mpa, Measure::strength});
    if (is_spare(*column.strength, selection, tables)) {
        remarks.push_back({"expected {expected}, needed {needed}: do not buy strength you don't "
                           "need",
                           {expected, needed}});
    } else if (below(column.strength->mpa, needed_mpa)) {
        remarks.push_back(
            {"expected {expected} falls short of the needed {needed}", {expected, needed}});
    }
}

bool holds_reducer(const Proportions& proportions) {
    return std::ranges::any_of(high_range_reducers(proportions),
                               [](const Ingredient* reducer) { return reducer->goes_in(); });
}

/// Fluid concrete pushes harder, and a reducer makes it fluid at a wrong dose.
void remark_forms(const ComparedMix& column, const Tables& tables, std::vector<Phrase>& remarks) {
    const double limit_mm = tables.practice.formula_slump_mm.value;
    const Argument limit = quantity("limit", {limit_mm, Measure::slump});
    if (!column.slump.mm) {
        remarks.push_back({"flows beyond what slump measures: test flow and segregation; the forms "
                           "carry the full liquid head",
                           {}});
    } else if (above(*column.slump.mm, limit_mm)) {
        remarks.push_back({"above {limit} slump the pressure formulas end: the forms carry the "
                           "full liquid head",
                           {limit}});
    } else if (holds_reducer(*column.proportions)) {
        remarks.push_back({"with a high-range reducer assume the full liquid head on the forms "
                           "unless their designer has found otherwise",
                           {}});
    }
}

void remark_slump(const ComparedMix& column, const Requirements& asked,
                  std::vector<Phrase>& remarks) {
    if (column.gives_slump || !column.slump.mm) {
        return;
    }
    Phrase remark{"its slump {slump} is not the target, {asked}",
                  {quantity("slump", {*column.slump.mm, Measure::slump}),
                   quantity("asked", {asked.slump_mm, Measure::slump})}};
    if (asked.slump_window) {
        remark.text += " ({low} to {high} permitted at placing)";
        remark.arguments.push_back(quantity("low", {asked.slump_window->low_mm, Measure::slump}));
        remark.arguments.push_back(quantity("high", {asked.slump_window->high_mm, Measure::slump}));
    }
    remarks.push_back(std::move(remark));
}

void remark_estimate(const ComparedMix& column, std::vector<Phrase>& remarks) {
    if (column.proportions->estimate) {
        remarks.push_back({"an estimate with usual aggregate figures: it must not be batched", {}});
    }
}

void remark_binder(const ComparedMix& column, std::vector<Phrase>& remarks) {
    if (column.proportions->selection.w_cm_governed_by == Governor::minimum_binder) {
        remarks.push_back({"held at the minimum of cementitious material: no more of it can be "
                           "saved",
                           {}});
    }
}

/// The face needs fines and paste; what its checks only watch is still to be known when choosing.
void remark_finish(const ComparedMix& column, std::vector<Phrase>& remarks) {
    for (const Check& check : column.checks) {
        const bool of_the_face = check.is(check_ids::finish_fines_low) ||
                                 check.is(check_ids::finish_fines_high) ||
                                 check.is(check_ids::finish_paste);
        if (of_the_face && check.verdict == Verdict::watch) {
            remarks.push_back({check.id + ": " + check.message.text, check.message.arguments});
        }
    }
}

void remark_cost(const ComparedMix& column, std::vector<Phrase>& remarks) {
    const bool any_price =
        std::ranges::any_of(column.proportions->ingredients, [](const Ingredient& ingredient) {
            return ingredient.material && ingredient.material->price;
        });
    if (column.no_cost && any_price) {
        remarks.push_back({"cost: " + column.no_cost->text, column.no_cost->arguments});
    }
}

void remark_supply(const ComparedMix& column, std::vector<Phrase>& remarks) {
    if (!column.supply) {
        return;
    }
    const Argument least = quantity("least", {column.supply->minimum_load_m3, Measure::volume});
    const auto& charge = column.supply->short_load_charge;
    if (charge) {
        remarks.push_back({"a load below {least} pays {currency} {charge} for the volume it is "
                           "short; that is not in the cost here",
                           {least, word("currency", charge->currency),
                            quantity("charge", {charge->per_m3, Measure::money})}});
    } else {
        remarks.push_back(
            {"the supplier counts a load below {least} as short: ask what is charged for it",
             {least}});
    }
}

} // namespace

std::vector<Phrase> remarks_on(const ComparedMix& column, const Requirements& asked,
                               const Tables& tables) {
    std::vector<Phrase> remarks;
    remark_estimate(column, remarks);
    remark_strength(column, tables, remarks);
    remark_slump(column, asked, remarks);
    remark_forms(column, tables, remarks);
    remark_binder(column, remarks);
    remark_finish(column, remarks);
    remark_cost(column, remarks);
    remark_supply(column, remarks);
    return remarks;
}

} // namespace boardmark::core
