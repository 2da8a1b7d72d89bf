#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "compare.hpp"
#include "exposure_limits.hpp"

#include <algorithm>
#include <iterator>

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

} // namespace

Checks check_strength(const CheckContext& context) {
    Checks checks = exposure_check(context);
    std::ranges::move(check_average_strength(context), std::back_inserter(checks));
    std::ranges::move(check_own_line(context), std::back_inserter(checks));
    std::ranges::move(check_strength_records(context), std::back_inserter(checks));
    return checks;
}

} // namespace boardmark::core
