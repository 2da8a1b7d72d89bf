#include <boardmark/core/basis/tables.hpp>

#include "../basis/interpolation.hpp"
#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../method/air_content.hpp"
#include "compare.hpp"
#include "exposure_limits.hpp"

#include <algorithm>
#include <string_view>

namespace boardmark::core {
namespace {

Verdict within(double percent, Limit limit) {
    return worse(at_least({percent, *limit.low, percent_precision}),
                 at_most({percent, *limit.high, percent_precision}));
}

Argument percent_of(std::string name, double percent) {
    return quantity(std::move(name), {percent, Measure::percent});
}

/// Says where the air at placing is not the air of the batch.
void append_loss(const Selection& selection, Phrase& message) {
    if (same(selection.air_percent, selection.air_at_placing_percent)) {
        return;
    }
    constexpr std::string_view value = "{value}";
    message.text.insert(message.text.find(value) + value.size(),
                        " at placing ({batch} in the batch)");
    message.arguments.push_back(percent_of("batch", selection.air_percent));
}

/// The tolerance of delivery belongs to the load: a mix is designed for the air itself.
void watch_design_below(double target_percent, const CheckContext& context, Check& check) {
    const double percent = context.proportions.selection.air_at_placing_percent;
    if (context.proportions.is_load || check.verdict != Verdict::holds ||
        !below(percent, target_percent)) {
        return;
    }
    check.verdict = Verdict::watch;
    check.message.text += "; the mix is designed below {target}: the tolerance belongs to the "
                          "load";
}

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
    append_loss(selection, check.message);
    watch_design_below(required.percent, context, check);
    return {std::move(check)};
}

Checks exposure_check(const CheckContext& context) {
    const ExposureClass* freezing = freezing_class(context.requirements, context.tables);
    const SizeRow* row = demanded_air(freezing, context.tables);
    if (!row) {
        return {};
    }
    const AirRules& rules = context.tables.code.air;
    const double size_mm = context.proportions.selection.nominal_max_size_mm;
    const double percent = context.proportions.selection.air_at_placing_percent;
    Check check{.id = "air.exposure",
                .verdict = Verdict::not_checked,
                .measure = Measure::percent,
                .requirement = freezing->name,
                .source = row->source};
    const auto target = value_at_size(*row, size_mm);
    if (!target) {
        check.message = {"the code's air table has no {size} stone",
                         {quantity("size", {size_mm, Measure::aggregate_size})}};
        return {std::move(check)};
    }
    const Limit limit{.low = target->value - rules.tolerance_percent,
                      .high = target->value + rules.tolerance_percent};
    const double strength_mpa = context.requirements.strength_mpa;
    const bool on_the_step = same(strength_mpa, rules.reduction_above_strength_mpa) ||
                             same(strength_mpa, rules.reduction_above_strength_twin_mpa);
    const bool may_reduce = above(strength_mpa, rules.reduction_above_strength_mpa) && !on_the_step;
    check.value = percent;
    check.limit = limit;
    check.verdict = within(percent, limit);

    std::string text = "air {value}, {low} to {high}: {class} asks {target} at {size} stone, "
                       "delivered within {tolerance} points";
    if (may_reduce) {
        text += "; above {strength} the code permits {reduction} point less";
        const Limit reduced{.low = *limit.low - rules.reduction_percent, .high = limit.high};
        if (check.verdict == Verdict::fails && within(percent, reduced) != Verdict::fails) {
            check.verdict = Verdict::watch;
            text += ", and only with that does it hold";
        }
    } else if (on_the_step) {
        text += ". {editions}"; // on the step itself the editions part
    }
    check.message = {std::move(text),
                     {percent_of("value", percent), percent_of("low", *limit.low),
                      percent_of("high", *limit.high), word("class", freezing->name),
                      word("editions", rules.reduction_in_other_editions),
                      percent_of("target", target->value),
                      quantity("size", {size_mm, Measure::aggregate_size}),
                      quantity("tolerance", {rules.tolerance_percent, Measure::ratio}),
                      quantity("strength", {rules.reduction_above_strength_mpa, Measure::strength}),
                      quantity("reduction", {rules.reduction_percent, Measure::ratio})}};
    append_loss(context.proportions.selection, check.message);
    watch_design_below(target->value, context, check);
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
    Checks checks = exposure_check(context);
    std::ranges::move(stated_check(context), std::back_inserter(checks));
    std::ranges::move(agent_check(context), std::back_inserter(checks));
    return checks;
}

} // namespace boardmark::core
