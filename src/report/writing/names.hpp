#pragma once

#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/checks/verdict_summary.hpp>
#include <boardmark/core/mix/proportions.hpp>

#include <string>
#include <vector>

namespace boardmark::report {

// The words that results use for the values of the computation, in text and in JSON.

std::string name_of(core::Verdict verdict);
std::string name_of(core::VerdictState state);
std::string name_of(core::Mark mark);
std::string name_of(core::Provenance provenance);
std::string name_of(core::Governor governor);

/// The marks of a check: a figure of its limit that was not read again.
core::Marks marks_of(const core::Check& check);

/// The ids of the requirements that are not met.
std::vector<std::string> failed_ids(const std::vector<core::Check>& checks);

/// A key or name of the computation as words: "w_cm" is "w cm".
std::string in_words(std::string key);

/// A material's name for a column of a text report: harmless on a terminal and not too wide.
std::string column_name(const std::string& name);

} // namespace boardmark::report
