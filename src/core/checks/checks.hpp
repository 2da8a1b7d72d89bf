#pragma once

#include <boardmark/core/checks/check.hpp>

#include "../code/demand.hpp"
#include "findings.hpp"

#include <vector>

namespace boardmark::core {

/// What every check may look at.
struct CheckContext {
    const Requirements& requirements;
    const Proportions& proportions;
    const Tables& tables;
    const StatedClasses& stated;
    const Demands& demands;
};

using Checks = std::vector<Check>;

// One function for each subject; a check that does not apply is left out.

void check_exposure_statement(const CheckContext& context, Findings& findings);
void check_site(const CheckContext& context, Findings& findings);
void check_demanded_ratio(const CheckContext& context, Findings& findings);
void check_demanded_strength(const CheckContext& context, Findings& findings);
void check_demanded_air(const CheckContext& context, Findings& findings);
void check_demanded_shares(const CheckContext& context, Findings& findings);
void check_sulfate_cement(const CheckContext& context, Findings& findings);
Checks check_water_cement_ratio(const CheckContext& context);
Checks check_strength(const CheckContext& context);
Checks check_average_strength(const CheckContext& context);
Checks check_own_line(const CheckContext& context);
Checks check_strength_records(const CheckContext& context);
Checks check_air(const CheckContext& context);
Checks check_chloride(const CheckContext& context);
Checks check_aggregate_size(const CheckContext& context);
Checks check_amounts(const CheckContext& context);
Checks check_grading(const CheckContext& context);
Checks check_temperature(const CheckContext& context);
Checks check_finish(const CheckContext& context);
Checks check_alkali(const CheckContext& context);
Checks check_water_reduction(const CheckContext& context);

} // namespace boardmark::core
