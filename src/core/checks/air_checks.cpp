#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../mix/air_entraining.hpp"
#include "air_at_placing.hpp"
#include "checks.hpp"
#include "compare.hpp"

namespace boardmark::core {
namespace {

/// Entrained air where the file asks for none.
void unwanted_check(const Selection& selection, Findings& findings) {
    if (!selection.air_entrained) {
        return;
    }
    const double percent = selection.air_at_placing_percent;
    findings.add({.id = check_ids::air_stated,
                  .verdict = Verdict::fails,
                  .value = percent,
                  .measure = Measure::percent},
                 [&](Check& told) {
                     told.requirement = "requirements.air";
                     told.message = {"air {value} is entrained; the file wants none",
                                     {percent_of("value", percent)}};
                 });
}

/// Air that the file itself asks for, or asks not to have.
void stated_check(const CheckContext& context, Findings& findings) {
    const RequiredAir& required = context.requirements.air;
    const Selection& selection = context.proportions.selection;
    if (required.basis == AirBasis::none) {
        unwanted_check(selection, findings);
    }
    if (required.basis != AirBasis::stated) {
        return;
    }
    const double tolerance = context.code.air.tolerance_percent;
    const double percent = selection.air_at_placing_percent;
    const Limit limit{.low = std::max(required.percent - tolerance, 0.0),
                      .high = required.percent + tolerance};
    const Verdict delivered = within(percent, limit);
    const bool low_design = designed_below(required.percent, delivered, context.proportions);
    const Verdict designed = low_design ? Verdict::watch : delivered;
    findings.add({.id = check_ids::air_stated,
                  .verdict = is_left_over(context) ? worse(designed, Verdict::watch) : designed,
                  .value = percent,
                  .limit = limit,
                  .measure = Measure::percent},
                 [&](Check& told) {
                     told.requirement = "requirements.air";
                     told.message = {"air {value}, {low} to {high}: the file requires {target}, "
                                     "delivered within {tolerance} points",
                                     {percent_of("value", percent), percent_of("low", *limit.low),
                                      percent_of("high", *limit.high),
                                      percent_of("target", required.percent),
                                      quantity("tolerance", {tolerance, Measure::ratio})}};
                     append_loss(selection, told.message);
                     append_design_below(low_design, told.message);
                     append_left_over(context, told.message);
                 });
}

void agent_check(const CheckContext& context, Findings& findings) {
    if (!context.proportions.selection.air_entrained) {
        return;
    }
    const bool found = can_entrain_air(context.proportions);
    const double percent = context.proportions.selection.air_percent;
    findings.add({.id = check_ids::air_agent,
                  .verdict = found ? Verdict::holds : Verdict::watch,
                  .value = percent,
                  .measure = Measure::percent},
                 [&](Check& told) {
                     told.requirement = "entrained air";
                     told.message = {found ? "an ingredient can entrain the air of {value}"
                                           : "no ingredient can entrain the air of {value}: add an "
                                             "air-entraining admixture or an air-entraining cement",
                                     {percent_of("value", percent)}};
                 });
}

} // namespace

void check_air(const CheckContext& context, Findings& findings) {
    check_demanded_air(context, findings);
    stated_check(context, findings);
    agent_check(context, findings);
}

} // namespace boardmark::core
