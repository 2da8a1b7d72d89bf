#include <boardmark/core/batch/batch.hpp>

#include "../batch/batch_yield.hpp"
#include "checks.hpp"

#include <algorithm>
#include <iterator>

namespace boardmark::core {

std::vector<Check> assess(const Requirements& requirements, const Proportions& proportions,
                          const Tables& tables) {
    const CheckContext context{requirements, proportions, tables};
    Checks all;
    for (const auto check :
         {check_water_cement_ratio, check_strength, check_air, check_supplementary,
          check_sulfate_cement, check_chloride, check_alkali, check_aggregate_size, check_amounts,
          check_water_reduction, check_grading, check_exposure_statement, check_site,
          check_temperature, check_finish}) {
        std::ranges::move(check(context), std::back_inserter(all));
    }
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
