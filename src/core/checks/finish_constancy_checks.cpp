#include "../phrases.hpp"
#include "finish_checks.hpp"

namespace boardmark::core {
namespace {

/// What a small change of the ratio is in water and in moisture of the sand.
Check ratio_check(const CheckContext& context) {
    const TypicalFigure& change = context.tables.finish.w_cm_change;
    const double water_kg_m3 = change.value * context.proportions.totals.binder_kg_m3;
    double sand_kg_m3 = 0;
    for (const Ingredient* sand : of_role(context.proportions, Role::fine)) {
        sand_kg_m3 += sand->dry_kg_m3.value_or(sand->kg_m3);
    }
    Check check{.id = "finish.w_cm_constancy",
                .verdict = Verdict::watch,
                .value = water_kg_m3,
                .measure = Measure::water_amount,
                .requirement = {},
                .source = change.source};
    check.message = {"{change} of w/cm shows in the colour: here {value} of water",
                     {quantity("change", {change.value, Measure::w_cm}),
                      quantity("value", {water_kg_m3, Measure::water_amount})}};
    if (sand_kg_m3 > 0) {
        check.message.text += ", or {moisture} of moisture in the sand";
        check.message.arguments.push_back(
            quantity("moisture", {100 * water_kg_m3 / sand_kg_m3, Measure::percent}));
    }
    check.message.text += "; measure the moistures for each load";
    return check;
}

/// One cement, one sand, one plant.
Check source_check(const CheckContext& context) {
    int cements = 0;
    int sands = 0;
    for (const Ingredient& ingredient : context.proportions.ingredients) {
        cements += ingredient.material && is_cement(ingredient.material->kind);
        sands += ingredient.role == Role::fine;
    }
    const bool one_of_each = cements <= 1 && sands <= 1;
    return {.id = "finish.constancy",
            .verdict = one_of_each ? Verdict::holds : Verdict::watch,
            .measure = Measure::count,
            .requirement = {},
            .source = context.tables.finish.constancy_source,
            .message = {one_of_each
                            ? "one cement and one sand colour the face: keep them, the plant and "
                              "every other material for all its loads"
                            : "{cements} cements and {sands} sands colour the face: one of each, "
                              "from one plant, keeps its colour",
                        {quantity("cements", {static_cast<double>(cements), Measure::count}),
                         quantity("sands", {static_cast<double>(sands), Measure::count})}}};
}

} // namespace

Checks check_finish_constancy(const CheckContext& context) {
    return {ratio_check(context), source_check(context)};
}

} // namespace boardmark::core
