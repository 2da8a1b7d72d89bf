#include "../phrases.hpp"
#include "../required_strength.hpp"
#include "../tolerance.hpp"
#include "compare.hpp"
#include "exposure_limits.hpp"

namespace boardmark::core {
namespace {

Checks exposure_check(const CheckContext& context) {
    const auto classes = stated_classes(context);
    if (classes.empty()) {
        return {};
    }
    double highest_mpa = 0;
    for (const StatedClass& stated : classes) {
        highest_mpa = std::max(highest_mpa, stated.limits->min_strength_mpa);
    }
    const double strength_mpa = context.requirements.strength_mpa;
    std::vector<std::string> governing;
    double twin_mpa = highest_mpa;
    Check check{.id = "strength.exposure",
                .verdict = Verdict::holds,
                .value = strength_mpa,
                .limit = Limit{.low = highest_mpa, .high = std::nullopt},
                .measure = Measure::strength,
                .requirement = {}};
    for (const StatedClass& stated : classes) {
        if (stated.limits->min_strength_mpa == highest_mpa) {
            governing.push_back(stated.exposure->name);
            check.source = stated.limits->source;
            twin_mpa = stated.limits->min_strength_twin_mpa;
            check.verdict = worse(check.verdict, strength_at_least(strength_mpa, *stated.limits,
                                                                   context.tables.system));
        }
    }
    check.requirement = joined(governing);
    const bool by_twin = check.verdict == Verdict::holds && below(strength_mpa, highest_mpa);
    check.message = {
        by_twin ? "specified strength {value}: {classes} asks {limit}, which the other "
                  "system of units prints as {twin}"
                : "specified strength {value}, at least {limit} in {classes}",
        {quantity("twin", {twin_mpa, Measure::strength}),
         quantity("value", {strength_mpa, Measure::strength}),
         quantity("limit", {highest_mpa, Measure::strength}), word("classes", check.requirement)}};
    std::vector<const ExposureClass*> without_ratio;
    for (const StatedClass& stated : classes) {
        if (stated.limits->min_strength_mpa == highest_mpa && !stated.limits->max_w_cm) {
            without_ratio.push_back(stated.exposure); // the others tell it with their w/cm
        }
    }
    append_other_editions(without_ratio, check.message);
    return {std::move(check)};
}

Check average_check(const CheckContext& context) {
    const auto by_code = code_average(context.requirements, context.tables.code.average_strength);
    const auto& stated = context.requirements.average;
    Check check{.id = "strength.average",
                .verdict = Verdict::not_checked,
                .measure = Measure::strength,
                .requirement = "required average strength",
                .source = by_code.source};
    const Argument limit = quantity("limit", {by_code.strength_mpa, Measure::strength});
    if (context.proportions.submitted && !stated) {
        check.message = {"the code asks an average of {limit}; what this concrete reaches, by its "
                         "own records or trial batches, is for the supplier to show",
                         {limit}};
        return check;
    }
    const double average_mpa = context.proportions.selection.required_average_strength_mpa;
    check.value = average_mpa;
    check.limit = Limit{.low = by_code.strength_mpa, .high = std::nullopt};
    check.verdict = at_least(
        {average_mpa, by_code.strength_mpa, strength_precision_mpa(context.tables.system)});
    const bool has_basis = stated && !stated->basis.empty();
    if (check.verdict == Verdict::fails && has_basis) {
        check.verdict = Verdict::watch;
    }
    check.message = {
        !stated ? "designed for the code's average of {limit}; the trial batches must reach it"
        : check.verdict == Verdict::holds
            ? "average strength {value} as stated; the code's is {limit}"
        : has_basis ? "average strength {value}, below the code's {limit}, on this basis: {basis}"
                    : "average strength {value}, below the code's {limit}, and no basis is given",
        {quantity("value", {average_mpa, Measure::strength}), limit,
         word("basis", has_basis ? stated->basis : "")}};
    return check;
}

} // namespace

Checks check_strength(const CheckContext& context) {
    Checks checks = exposure_check(context);
    checks.push_back(average_check(context));
    return checks;
}

} // namespace boardmark::core
