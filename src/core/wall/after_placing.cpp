#include <boardmark/core/stripping.hpp>
#include <boardmark/core/wall_plan.hpp>

#include "../phrases.hpp"
#include "../tolerance.hpp"

namespace boardmark::core {
namespace {

/// "II" of "ASTM C150 II"; of several cements the one that is cured longest counts, so each is
/// asked.
std::string type_of(const std::string& standard) {
    return standard.substr(standard.rfind(' ') + 1);
}

TypicalFigure curing_of(const Proportions& proportions, const CuringRules& rules) {
    TypicalFigure longest = curing_time_d("", false, rules);
    for (const Ingredient* ingredient : of_role(proportions, Role::binder)) {
        const TypicalFigure own =
            curing_time_d(type_of(ingredient->material->standard), false, rules);
        longest = own.value > longest.value ? own : longest;
    }
    return longest;
}

/// By hours in air above the rule's temperature. The stated air is taken to last.
std::optional<double> earliest_strip_h(const Wall& wall, const CuringRules& rules) {
    constexpr double long_enough_h = 1000;
    return wall.placing.air_c
               ? stripping_age({.air = {{long_enough_h, *wall.placing.air_c}}}, rules).earliest_h()
               : std::nullopt;
}

Check stripping_check(const Wall& wall, std::optional<double> earliest_h,
                      const CuringRules& rules) {
    Check check{.id = "stripping.age",
                .verdict = Verdict::not_checked,
                .measure = Measure::duration,
                .requirement = "stripping",
                .source = rules.strip_after_h.source};
    const Argument limit_air = quantity("air", {rules.strip_air_c.value, Measure::temperature});
    if (!earliest_h) {
        check.message = {"the rule by time counts hours in air above {air}; without them tests of "
                         "strength decide",
                         {limit_air}};
        return check;
    }
    const double stated_h = *wall.placing.strip_after_h;
    check.value = stated_h;
    check.limit = Limit{.low = *earliest_h, .high = std::nullopt};
    check.verdict = below(stated_h, *earliest_h) ? Verdict::fails : Verdict::holds;
    check.message = {"stripped after {value}, at least {limit} in air above {air}; one age for "
                     "every lift, or colours differ",
                     {quantity("value", {stated_h, Measure::duration}),
                      quantity("limit", {*earliest_h, Measure::duration}), limit_air}};
    return check;
}

} // namespace

AfterPlacing after_placing(const Wall& wall, const Proportions& proportions, const Tables& tables,
                           std::vector<Check>& checks) {
    const CuringRules& rules = tables.placing.curing;
    const AfterPlacing after{.curing_d = curing_of(proportions, rules),
                             .earliest_strip_h = earliest_strip_h(wall, rules)};
    if (wall.placing.strip_after_h) {
        checks.push_back(stripping_check(wall, after.earliest_strip_h, rules));
    }
    return after;
}

} // namespace boardmark::core
