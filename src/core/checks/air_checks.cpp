#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "air_at_placing.hpp"
#include "checks.hpp"

#include <algorithm>
#include <iterator>

namespace boardmark::core {
namespace {

/// Air that the file itself asks for, or asks not to have.
Checks stated_check(const CheckContext& context) {
    const RequiredAir& required = context.requirements.air;
    const Selection& selection = context.proportions.selection;
    Check check{.id = "air.stated",
                .verdict = Verdict::fails,
                .value = selection.air_at_placing_percent,
                .measure = Measure::percent,
                .requirement = "requirements.air"};
    if (required.basis == AirBasis::none) {
        check.message = {"air {value} is entrained; the file asks for none",
                         {percent_of("value", selection.air_at_placing_percent)}};
        return selection.air_entrained ? Checks{std::move(check)} : Checks{};
    }
    if (required.basis != AirBasis::stated) {
        return {};
    }
    const double tolerance = context.tables.code.air.tolerance_percent;
    const Limit limit{.low = std::max(required.percent - tolerance, 0.0),
                      .high = required.percent + tolerance};
    check.verdict = within(selection.air_at_placing_percent, limit);
    check.limit = limit;
    check.message = {"air {value}, {low} to {high}: the file asks {target}, delivered within "
                     "{tolerance} points",
                     {percent_of("value", selection.air_at_placing_percent),
                      percent_of("low", *limit.low), percent_of("high", *limit.high),
                      percent_of("target", required.percent),
                      quantity("tolerance", {tolerance, Measure::ratio})}};
    const bool below_target = designed_below(required.percent, check.verdict, context.proportions);
    check.verdict = below_target ? Verdict::watch : check.verdict;
    append_loss(selection, check.message);
    append_design_below(below_target, check.message);
    return {std::move(check)};
}

/// Cements whose designation ends in A after the type (IA, IIA, IIIA) are air-entraining.
bool is_air_entraining_cement(const Material& material) {
    const std::string& standard = material.standard;
    return is_cement(material.kind) && standard.size() >= 2 && standard.ends_with("IA");
}

bool entrains_air(const Ingredient& ingredient) {
    return ingredient.material && (ingredient.material->kind == Kind::air_entraining_admixture ||
                                   is_air_entraining_cement(*ingredient.material));
}

Checks agent_check(const CheckContext& context) {
    if (!context.proportions.selection.air_entrained) {
        return {};
    }
    const bool found = std::ranges::any_of(context.proportions.ingredients, entrains_air);
    const double percent = context.proportions.selection.air_percent;
    return {{.id = "air.agent",
             .verdict = found ? Verdict::holds : Verdict::watch,
             .value = percent,
             .measure = Measure::percent,
             .requirement = "entrained air",
             .message = {found ? "an ingredient can entrain the air of {value}"
                               : "no ingredient can entrain the air of {value}: add an "
                                 "air-entraining admixture or an air-entraining cement",
                         {quantity("value", {percent, Measure::percent})}}}};
}

} // namespace

Checks check_air(const CheckContext& context) {
    Checks checks = stated_check(context);
    std::ranges::move(agent_check(context), std::back_inserter(checks));
    return checks;
}

} // namespace boardmark::core
