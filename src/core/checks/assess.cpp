#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/batch/batch.hpp>

#include "../batch/batch_yield.hpp"
#include "checks.hpp"

#include <algorithm>
#include <iterator>

namespace boardmark::core {

std::vector<Check> assess(const Requirements& requirements, const Proportions& proportions,
                          const Tables& tables) {
    const StatedClasses stated{requirements, proportions, tables.code};
    const Demands demands{
        stated, tables.code, {tables.system, proportions.selection.nominal_max_size_mm}};
    const CheckContext context{requirements, proportions, tables, stated, demands};
    Checks all;
    Findings findings{all};
    const auto append = [&](Checks told) { std::ranges::move(told, std::back_inserter(all)); };
    check_demanded_ratio(context, findings);
    append(check_water_cement_ratio(context));
    check_demanded_strength(context, findings);
    append(check_strength(context));
    check_demanded_air(context, findings);
    append(check_air(context));
    check_demanded_shares(context, findings);
    check_sulfate_cement(context, findings);
    append(check_chloride(context));
    append(check_alkali(context));
    append(check_aggregate_size(context));
    append(check_amounts(context));
    append(check_water_reduction(context));
    append(check_grading(context));
    check_exposure_statement(context, findings);
    check_site(context, findings);
    append(check_temperature(context));
    append(check_finish(context));
    return all;
}

std::vector<Check> assess(const Requirements& requirements, const Proportions& proportions,
                          const Batch& batch, const Tables& tables) {
    return assess(requirements, as_weighed(proportions, batch), tables);
}

bool any_fails(const std::vector<Check>& checks) {
    return std::ranges::any_of(checks,
                               [](const Check& check) { return check.verdict == Verdict::fails; });
}

} // namespace boardmark::core
