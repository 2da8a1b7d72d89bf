#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/batch/batch.hpp>

#include "../batch/batch_yield.hpp"
#include "checks.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

void hold(const Requirements& requirements, const Proportions& proportions, const Tables& tables,
          Findings& findings) {
    const CodeCase code_case{requirements, proportions, tables};
    const CheckContext& context = code_case.context();
    check_water_cement_ratio(context, findings);
    check_strength(context, findings);
    check_air(context, findings);
    check_demanded_shares(context, findings);
    check_demanded_cement(context, findings);
    check_sulfate_cement(context, findings);
    check_chloride(context, findings);
    check_alkali(context, findings);
    check_aggregate_size(context, findings);
    check_amounts(context, findings);
    check_water_reduction(context, findings);
    check_water_of_slump(context, findings);
    check_grading(context, findings);
    check_aggregate_together(context, findings);
    check_colour(context, findings);
    check_code_scope(context, findings);
    check_exposure_statement(context, findings);
    check_site(context, findings);
    check_temperature(context, findings);
    check_finish(context, findings);
}

} // namespace

std::vector<Check> assess(CompleteRequirements requirements, const Proportions& proportions,
                          const Tables& tables) {
    std::vector<Check> told;
    Findings findings{told};
    hold(requirements, proportions, tables, findings);
    return told;
}

void judge(CompleteRequirements requirements, const Proportions& proportions, const Tables& tables,
           std::vector<Finding>& verdicts) {
    verdicts.clear();
    Findings findings{verdicts};
    hold(requirements, proportions, tables, findings);
}

std::vector<Check> assess(CompleteRequirements requirements, const Proportions& proportions,
                          const Batch& batch, const Tables& tables) {
    return assess(requirements, as_weighed(proportions, batch), tables);
}

bool any_fails(const std::vector<Check>& checks) {
    return std::ranges::any_of(checks,
                               [](const Check& check) { return check.verdict == Verdict::fails; });
}

} // namespace boardmark::core
