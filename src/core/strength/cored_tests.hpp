#pragma once

#include <boardmark/core/strength/strength_findings.hpp>
#include <boardmark/core/strength/strength_tables.hpp>

#include <vector>

namespace boardmark::core {

/// Factor for a core's length over its diameter, and whether it was read: linear between the rows,
/// that of the lowest row below it, 1 above the highest.
struct LengthCorrection {
    double factor;
    Source source; ///< of the weaker of the rows; empty where the factor is 1
};
LengthCorrection length_correction(double ratio, const CoreRules& rules);

/// The cores of a record by the test that they were drilled for, in the order of the batches.
std::vector<CoredTest> cored_tests(const StrengthRecord& record, const CoreRules& rules);

/// What is done about a low test, step by step. Empty where none is low.
std::vector<WayStep> way_on(const StrengthRecord& record, const StrengthFindings& findings,
                            const StrengthTables& tables);

} // namespace boardmark::core
