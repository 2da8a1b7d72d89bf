#pragma once

#include <boardmark/core/strength/strength_findings.hpp>
#include <boardmark/core/strength/strength_tables.hpp>

#include <vector>

namespace boardmark::core {

// Checks of strength results, one function for each subject.

/// Single tests and running means against the rules of acceptance.
std::vector<Check> check_acceptance(const StrengthRecord& record, const StrengthFindings& findings,
                                    const StrengthTables& tables);

/// Whether cylinders are too short to show the strength as it is.
bool is_short(const SpecimenSize& specimen, const CoreRules& cores);

/// Batches whose results are no test in the sense of the code, or none until somebody knows why.
struct DoubtfulTests {
    std::vector<std::string> few;  ///< fewer specimens than make a test
    std::vector<std::string> wide; ///< specimens that differ by more than they may
};

DoubtfulTests doubtful_tests(const StrengthRecord& record, const StrengthFindings& findings,
                             const StrengthTables& tables);

/// A check that holds by such tests is a watch.
void watch_doubtful(const DoubtfulTests& doubtful, Check& check);

/// Production tested at another age than that of the strength, and batches whose test is due.
std::vector<Check> check_ages(const StrengthRecord& record, const StrengthFindings& findings,
                              int today);

/// Whether the specimens make tests in the sense of the code.
std::vector<Check> check_specimens(const StrengthRecord& record, const StrengthFindings& findings,
                                   const StrengthTables& tables);

/// What the record says of the next concrete.
std::vector<Check> check_record(const StrengthRecord& record, const StrengthFindings& findings,
                                const Tables& tables);

/// Whether the line can be used, and which points stand out from it.
std::vector<Check> check_line(const StrengthRecord& record, const StrengthFindings& findings);

/// Cores of low tests against the rules for concrete in place.
std::vector<Check> check_cores(const StrengthRecord& record, const StrengthFindings& findings,
                               const CoreRules& rules);

/// The names of batches as a list; of many, the first and how many more.
std::string named(const std::vector<std::string>& names);

} // namespace boardmark::core
