#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "finish_checks.hpp"

namespace boardmark::core {
namespace {

constexpr double moisture_known_within_percent = 0.5; // common practice, no source

/// What a small change of the ratio is in water and in moisture of the sand, and whether moistures
/// are known that closely in an ordinary plant.
void ratio_check(const CheckContext& context, Findings& findings) {
    const TypicalFigure& change = context.tables.finish->w_cm_change;
    const double water_kg_m3 = change.value * context.proportions.totals.binder_kg_m3;
    double sand_kg_m3 = 0;
    for (const Ingredient* sand : of_role(context.proportions, Role::fine)) {
        sand_kg_m3 += sand->dry_kg_m3.value_or(sand->kg_m3);
    }
    const bool has_sand = sand_kg_m3 != 0;
    const double moisture_percent = has_sand ? 100 * water_kg_m3 / sand_kg_m3 : 0;
    Finding found{.id = check_ids::finish_w_cm_constancy,
                  .verdict = Verdict::not_checked,
                  .measure = Measure::water_amount};
    if (has_sand) {
        const bool can_be_held = !below(moisture_percent, moisture_known_within_percent);
        found.verdict = can_be_held ? Verdict::holds : Verdict::watch;
        found.value = water_kg_m3;
    }
    findings.add(found, [&](Check& told) {
        told.requirement = board_marked;
        told.source = change.source;
        std::string& text = told.message.text;
        text = "a change of {change} in w/cm shows in the colour: here that is {value} of water";
        told.message.arguments = {quantity("change", {change.value, Measure::w_cm}),
                                  quantity("value", {water_kg_m3, Measure::water_amount})};
        if (!has_sand) {
            text += "; the sand's moisture counts too, but no sand is listed";
            return;
        }
        text += ", or {moisture} of moisture in the sand; measure the moistures for each load";
        text += found.verdict == Verdict::holds ? "" : ", closer than the usual {known}";
        told.message.arguments.push_back(percent_of("moisture", moisture_percent));
        told.message.arguments.push_back(percent_of("known", moisture_known_within_percent));
    });
}

/// One cement, one sand, one plant.
void source_check(const CheckContext& context, Findings& findings) {
    int cements = 0;
    int sands = 0;
    for (const Ingredient& ingredient : context.proportions.ingredients) {
        cements += ingredient.material && is_cement(ingredient.material->kind);
        sands += ingredient.role == Role::fine;
    }
    const bool one_of_each = cements <= 1 && sands <= 1;
    findings.add({.id = check_ids::finish_constancy,
                  .verdict = one_of_each ? Verdict::holds : Verdict::watch,
                  .measure = Measure::count},
                 [&](Check& told) {
                     told.requirement = board_marked;
                     told.source = context.tables.finish->constancy_source;
                     told.message = {
                         one_of_each ? "one cement and one sand colour the face: keep them, the "
                                       "plant and every other material for all its loads"
                                     : "{cements} cements and {sands} sands colour the face: one "
                                       "of each, from one plant, keeps its colour",
                         {quantity("cements", {static_cast<double>(cements), Measure::count}),
                          quantity("sands", {static_cast<double>(sands), Measure::count})}};
                 });
}

} // namespace

void check_finish_constancy(const CheckContext& context, Findings& findings) {
    ratio_check(context, findings);
    source_check(context, findings);
}

} // namespace boardmark::core
