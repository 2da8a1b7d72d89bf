#pragma once

#include <boardmark/core/strength/strength_line.hpp>
#include <boardmark/core/strength/strength_record.hpp>
#include <boardmark/core/strength/strength_tables.hpp>

#include <string>
#include <vector>

namespace boardmark::core {

bool is_large(const SpecimenSize& specimen, const AciAcceptance& rules);

/// The fewest specimens of this size that the code of the record makes a test of; 1 where one is
/// enough.
int least_specimens(const StrengthRecord& record, const StrengthTables& tables);

/// Whether the test is of fewer.
bool is_of_few(const StrengthTest& test, int least);

/// The batches whose test is of fewer.
std::vector<std::string> batches_of_few(const std::vector<StrengthTest>& tests, int least);

/// @param tests of a record; those of its line at that age count
LineEvidence evidence_of_line(const std::vector<StrengthTest>& tests, double age_d, int least);

} // namespace boardmark::core
