#pragma once

#include <boardmark/core/strength/strength_findings.hpp>
#include <boardmark/core/strength/strength_tables.hpp>

#include <vector>

namespace boardmark::core {

// The parts of find_strength, one file each.

/// Which rules hold the tests of a record.
Acceptance acceptance_of(const StrengthRecord& record, const std::vector<StrengthTest>& production,
                         const StrengthTables& tables);

/// Production tests against the rules, each with its running mean.
std::vector<JudgedTest> judge(const std::vector<StrengthTest>& production,
                              const Acceptance& acceptance, UnitSystem system);

/// Mean and scatter of production tests. At least one.
StrengthStatistics statistics_of(const StrengthRecord& record,
                                 const std::vector<StrengthTest>& production, int today,
                                 const Tables& tables, Worksheet& worksheet);

/// The scatter between specimens; nothing where no test has two.
std::optional<WithinTest> within_test(const std::vector<StrengthTest>& tests,
                                      const StrengthTables& tables);

/// Every early age at which some batch was tested before the strength age.
std::vector<Projection> projections_of(const StrengthRecord& record,
                                       const std::vector<StrengthTest>& tests,
                                       const StrengthTables& tables);

/// Sample standard deviation. At least two values.
double standard_deviation(const std::vector<double>& values);

} // namespace boardmark::core
