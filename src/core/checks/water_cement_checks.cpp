#include <boardmark/core/strength/expected_strength.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "checks.hpp"
#include "compare.hpp"

namespace boardmark::core {
namespace {

/// The strength expected, or the weakest that is known where the ratio is higher than any known.
std::optional<ExpectedStrength> most_expected(const CheckContext& context) {
    const auto expected =
        expected_strength(context.requirements, context.proportions, context.tables);
    return expected ? expected
                    : strength_bound(context.requirements, context.proportions, context.tables);
}

Check strength_check(const CheckContext& context) {
    const Selection& selection = context.proportions.selection;
    const double w_cm = context.proportions.totals.w_cm;
    Check check{.id = "w_cm.strength",
                .verdict = Verdict::not_checked,
                .measure = Measure::w_cm,
                .requirement = "average strength",
                .source = {}};
    const Argument average =
        quantity("average", {selection.required_average_strength_mpa, Measure::strength});
    if (selection.strength_by_trial) {
        check.message = {
            "w/cm {value} was not selected by strength: prove the average of {average} by "
            "trial",
            {quantity("value", {w_cm, Measure::w_cm}), average}};
        return check;
    }
    if (!selection.w_cm_by_strength) {
        if (const auto most = most_expected(context);
            most && below(most->mpa, selection.required_average_strength_mpa)) {
            check.verdict = Verdict::watch;
            check.value = w_cm;
            check.message = {"at w/cm {value} no more than {expected} is expected, below the "
                             "average of {average}: prove the strength by trial",
                             {quantity("value", {w_cm, Measure::w_cm}),
                              quantity("expected", {most->mpa, Measure::strength}), average}};
            return check;
        }
        check.message = {
            "no table or curve here gives the ratio for {average} at {age}: prove the "
            "strength by trial",
            {average, quantity("age", {context.requirements.strength_age_d, Measure::age})}};
        return check;
    }
    const double limit = *selection.w_cm_by_strength;
    check.verdict = above(w_cm, limit) ? Verdict::watch : Verdict::holds;
    check.value = w_cm;
    check.limit = Limit{.low = std::nullopt, .high = limit};
    check.message = {check.verdict == Verdict::holds
                         ? "w/cm {value}; {limit} is expected to reach the average of {average}"
                         : "w/cm {value} is above {limit}, at which the average of {average} is "
                           "expected: prove the strength by trial",
                     {quantity("value", {w_cm, Measure::w_cm}),
                      quantity("limit", {limit, Measure::w_cm}), average}};
    return check;
}

} // namespace

Checks check_water_cement_ratio(const CheckContext& context) {
    return {strength_check(context)};
}

} // namespace boardmark::core
