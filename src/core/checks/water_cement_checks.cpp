#include <boardmark/core/strength/expected_strength.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "compare.hpp"
#include "exposure_limits.hpp"

namespace boardmark::core {
namespace {

/// The lowest limit of the stated classes; the message names every other class with its own.
Checks exposure_check(const CheckContext& context) {
    const double w_cm = context.proportions.totals.w_cm;
    std::vector<StatedClass> limiting;
    for (const StatedClass& stated : stated_classes(context)) {
        if (stated.limits->max_w_cm) {
            limiting.push_back(stated);
        }
    }
    if (limiting.empty()) {
        return {};
    }
    double lowest = *limiting.front().limits->max_w_cm;
    for (const StatedClass& stated : limiting) {
        lowest = std::min(lowest, *stated.limits->max_w_cm);
    }
    Check check{.id = "w_cm.exposure",
                .verdict = at_most({w_cm, lowest, w_cm_precision}),
                .value = w_cm,
                .limit = Limit{.low = std::nullopt, .high = lowest},
                .measure = Measure::w_cm,
                .requirement = {}};
    std::vector<std::string> governing;
    std::vector<const ExposureClass*> at_lowest;
    std::string text = "w/cm {value}, at most {limit} in {classes}";
    check.message.arguments = {quantity("value", {w_cm, Measure::w_cm}),
                               quantity("limit", {lowest, Measure::w_cm})};
    for (const StatedClass& stated : limiting) {
        const ExposureClass& exposure = *stated.exposure;
        if (*stated.limits->max_w_cm == lowest) {
            governing.push_back(exposure.name);
            at_lowest.push_back(&exposure);
            check.source = stated.limits->source;
            continue;
        }
        const bool broken =
            at_most({w_cm, *stated.limits->max_w_cm, w_cm_precision}) == Verdict::fails;
        text += "; " + exposure.name + (broken ? " breaks {limit_" : " allows {limit_") +
                exposure.name + "}";
        check.message.arguments.push_back(
            quantity("limit_" + exposure.name, {*stated.limits->max_w_cm, Measure::w_cm}));
    }
    check.requirement = joined(governing);
    check.message.arguments.push_back(word("classes", check.requirement));
    check.message.text = std::move(text);
    append_other_editions(at_lowest, check.message);
    return {std::move(check)};
}

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
        found.verdict = above(w_cm, limit) ? Verdict::watch : Verdict::holds;
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
                found.verdict == Verdict::holds
                    ? "w/cm {value}; {limit} is expected to reach the average of {average}"
                    : "w/cm {value} is above {limit}, at which the average of {average} is "
                      "expected: prove the strength by trial",
                {value, quantity("limit", {*selection.w_cm_by_strength, Measure::w_cm}), average}};
            break;
        }
    });
}

} // namespace

void check_water_cement_ratio(const CheckContext& context, Findings& findings) {
    findings.take(exposure_check(context));
    strength_check(context, findings);
}

} // namespace boardmark::core
