#pragma once

#include <boardmark/core/strength/strength_findings.hpp>
#include <boardmark/core/strength/strength_tables.hpp>

#include <vector>

namespace boardmark::core {

// The parts of find_strength, one file each.

/// A test of each batch of production, in order of casting.
struct ProductionTests {
    std::vector<StrengthTest> tests; ///< at the strength age, else the first later one
    std::vector<bool> after_gap;     ///< of each test: whether a batch without one stands before it
    std::vector<std::string> untested; ///< whose test at the strength age is due and missing
};

/// @param all the tests of the record in its order
ProductionTests production_of(const StrengthRecord& record, const std::vector<StrengthTest>& all,
                              int today);

/// Those at the strength age alone.
std::vector<StrengthTest> in_time(const std::vector<StrengthTest>& production,
                                  const StrengthRecord& record);

/// Which rules hold the tests of a record.
Acceptance acceptance_of(const StrengthRecord& record, const std::vector<StrengthTest>& production,
                         const StrengthTables& tables);

/// Production tests against the rules, each with its running mean. What was tested late is as weak
/// or weaker at the strength age: with it a mean may fail and never holds, nor does one across a
/// batch without a test.
std::vector<JudgedTest> judge(const ProductionTests& production, const Acceptance& acceptance,
                              const StrengthRecord& record);

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
