#pragma once

#include <boardmark/core/basis/unit_system.hpp>
#include <boardmark/core/checks/code_judgement.hpp>

#include "../writing/flow.hpp"
#include "../writing/json_values.hpp"

#include <vector>

namespace boardmark::report {

/// One mix held against several codes: a row for each demand, a column for each code, then what is
/// not settled of each code but the first, whose checks stand before.
Flow code_matrix(const std::vector<core::CodeJudgement>& codes, core::UnitSystem system);

/// The same as an array of objects: code, edition, classes, checks, verdict.
Json json_of(const std::vector<core::CodeJudgement>& codes);

} // namespace boardmark::report
