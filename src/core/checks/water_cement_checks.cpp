#include <boardmark/core/strength/expected_strength.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../code/required_strength.hpp"
#include "checks.hpp"
#include "compare.hpp"
#include "exposure_limits.hpp"
#include "strength_doubt.hpp"

namespace boardmark::core {
namespace {

/// The strength expected, or the weakest that is known where the ratio is higher than any known.
std::optional<ExpectedStrength> most_expected(const CheckContext& context) {
    const auto expected =
        expected_strength(context.requirements, context.proportions, context.tables);
    return expected ? expected
                    : strength_bound(context.requirements, context.proportions, context.tables);
}

/// How the ratio stands to the average strength.
enum class RatioBasis { by_trial, too_weak, not_known, selected };

RatioBasis basis_of(const CheckContext& context, const std::optional<ExpectedStrength>& most) {
    const Selection& selection = context.proportions.selection;
    if (selection.strength_by_trial) {
        return RatioBasis::by_trial;
    }
    if (selection.w_cm_by_strength) {
        return RatioBasis::selected;
    }
    return most && below(most->mpa, selection.required_average_strength_mpa)
               ? RatioBasis::too_weak
               : RatioBasis::not_known;
}

/// Whether the average goes by a record of which nobody can tell whether it counts. One that does
/// not count makes the average higher and the ratio lower.
bool record_is_silent(const CheckContext& context) {
    const auto& records = context.requirements.records;
    const bool states_all = !records || (records->strength_mpa && records->age_d);
    return !states_all &&
           code_average(context.requirements, context.code.average_strength).record_is_silent();
}

Finding found_of(RatioBasis basis, const CheckContext& context) {
    const double w_cm = context.proportions.totals.w_cm;
    Finding found{
        .id = check_ids::w_cm_strength, .verdict = Verdict::not_checked, .measure = Measure::w_cm};
    if (basis == RatioBasis::too_weak) {
        found.verdict = Verdict::watch;
        found.value = w_cm;
    }
    if (basis == RatioBasis::selected) {
        const double limit = *context.proportions.selection.w_cm_by_strength;
        found.verdict =
            above(w_cm, limit) || record_is_silent(context) ? Verdict::watch : Verdict::holds;
        found.verdict = worse(found.verdict, strength_doubt(context));
        if (found.verdict == Verdict::not_checked) {
            return found;
        }
        found.value = w_cm;
        found.limit = Limit{.low = std::nullopt, .high = limit};
    }
    return found;
}

void strength_check(const CheckContext& context, Findings& findings) {
    const Selection& selection = context.proportions.selection;
    const auto most = selection.strength_by_trial || selection.w_cm_by_strength
                          ? std::nullopt
                          : most_expected(context);
    const RatioBasis basis = basis_of(context, most);
    const Finding found = found_of(basis, context);
    findings.add(found, [&](Check& told) {
        const Argument value = quantity("value", {context.proportions.totals.w_cm, Measure::w_cm});
        const Argument average =
            quantity("average", {selection.required_average_strength_mpa, Measure::strength});
        told.requirement = "average strength";
        switch (basis) {
        case RatioBasis::by_trial:
            told.message = {"w/cm {value} was not selected by strength: prove the average of "
                            "{average} by trial",
                            {value, average}};
            break;
        case RatioBasis::too_weak:
            told.message = {"at w/cm {value} no more than {expected} is expected, below the "
                            "average of {average}: prove the strength by trial",
                            {value, quantity("expected", {most->mpa, Measure::strength}), average}};
            break;
        case RatioBasis::not_known:
            told.message = {
                "no table or curve here gives the ratio for {average} at {age}: prove the "
                "strength by trial",
                {average, quantity("age", {context.requirements.strength_age_d, Measure::age})}};
            break;
        case RatioBasis::selected:
            told.message = {
                !above(context.proportions.totals.w_cm, *selection.w_cm_by_strength)
                    ? "w/cm {value}; {limit} is expected to reach the average of {average}"
                    : "w/cm {value} is above {limit}, at which the average of {average} is "
                      "expected: prove the strength by trial",
                {value, quantity("limit", {*selection.w_cm_by_strength, Measure::w_cm}), average}};
            append_strength_doubt(context, told.message);
            if (record_is_silent(context)) {
                told.message.text +=
                    "; by a strength record that may not count, for lack of {lacks}";
                told.message.arguments.push_back(
                    word("lacks",
                         joined(code_average(context.requirements, context.code.average_strength)
                                    .record_lacks())));
            }
            break;
        }
    });
}

} // namespace

void check_water_cement_ratio(const CheckContext& context, Findings& findings) {
    check_demanded_ratio(context, findings);
    strength_check(context, findings);
}

} // namespace boardmark::core
