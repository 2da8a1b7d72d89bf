#pragma once

#include <boardmark/core/checks/check.hpp>

#include "../code/counted_binder.hpp"
#include "../code/demand.hpp"
#include "findings.hpp"

namespace boardmark::core {

/// What every check may look at.
struct CheckContext {
    const Requirements& requirements;
    const Proportions& proportions;
    const Tables& tables;
    const CodeTables& code; ///< that is asked
    const StatedClasses& stated;
    const Demands& demands;
    const CountedBinder& binder;              ///< as the code counts it
    const CodeTables* specified_by = nullptr; ///< the code by which the strength is specified,
                                              ///< where it is not the one that is asked here
};

/// A mix that is held against one code: what its classes demand, looked up once, with the context
/// of the checks.
class CodeCase {
public:
    CodeCase(const Requirements& requirements, const Proportions& proportions, const Tables& tables,
             const CodeTables* specified_by = nullptr);
    CodeCase(const CodeCase&) = delete; // the context refers to the members
    CodeCase& operator=(const CodeCase&) = delete;
    ~CodeCase() = default;

    const CheckContext& context() const { return context_; }

private:
    StatedClasses stated_;
    Demands demands_;
    CountedBinder binder_;
    CheckContext context_;
};

// One function for each subject; a check that does not apply is left out.

void check_code_scope(const CheckContext& context, Findings& findings);
void check_demanded_cement(const CheckContext& context, Findings& findings);
void check_exposure_statement(const CheckContext& context, Findings& findings);
void check_site(const CheckContext& context, Findings& findings);
void check_demanded_ratio(const CheckContext& context, Findings& findings);
void check_demanded_strength(const CheckContext& context, Findings& findings);
void check_demanded_air(const CheckContext& context, Findings& findings);
void check_demanded_shares(const CheckContext& context, Findings& findings);
void check_water_cement_ratio(const CheckContext& context, Findings& findings);
void check_strength(const CheckContext& context, Findings& findings);
void check_average_strength(const CheckContext& context, Findings& findings);
void check_own_line(const CheckContext& context, Findings& findings);
void check_strength_records(const CheckContext& context, Findings& findings);
void check_air(const CheckContext& context, Findings& findings);
void check_sulfate_cement(const CheckContext& context, Findings& findings);
void check_chloride(const CheckContext& context, Findings& findings);
void check_aggregate_size(const CheckContext& context, Findings& findings);
void check_amounts(const CheckContext& context, Findings& findings);
void check_grading(const CheckContext& context, Findings& findings);
void check_aggregate_together(const CheckContext& context, Findings& findings);
void check_colour(const CheckContext& context, Findings& findings);
void check_temperature(const CheckContext& context, Findings& findings);
void check_finish(const CheckContext& context, Findings& findings);
void check_alkali(const CheckContext& context, Findings& findings);
void check_water_reduction(const CheckContext& context, Findings& findings);
void check_water_of_slump(const CheckContext& context, Findings& findings);

} // namespace boardmark::core
