#pragma once

#include <boardmark/core/checks/check.hpp>

#include "findings.hpp"

#include <vector>

namespace boardmark::core {

/// What every check may look at.
struct CheckContext {
    const Requirements& requirements;
    const Proportions& proportions;
    const Tables& tables;
};

using Checks = std::vector<Check>;

// One function for each subject; a check that does not apply is left out.

Checks check_exposure_statement(const CheckContext& context);
Checks check_site(const CheckContext& context);
void check_water_cement_ratio(const CheckContext& context, Findings& findings);
void check_strength(const CheckContext& context, Findings& findings);
void check_average_strength(const CheckContext& context, Findings& findings);
void check_own_line(const CheckContext& context, Findings& findings);
void check_strength_records(const CheckContext& context, Findings& findings);
void check_air(const CheckContext& context, Findings& findings);
Checks check_supplementary(const CheckContext& context);
Checks check_sulfate_cement(const CheckContext& context);
void check_chloride(const CheckContext& context, Findings& findings);
void check_aggregate_size(const CheckContext& context, Findings& findings);
void check_amounts(const CheckContext& context, Findings& findings);
void check_grading(const CheckContext& context, Findings& findings);
void check_temperature(const CheckContext& context, Findings& findings);
void check_finish(const CheckContext& context, Findings& findings);
void check_alkali(const CheckContext& context, Findings& findings);
void check_water_reduction(const CheckContext& context, Findings& findings);

} // namespace boardmark::core
