#pragma once

#include <boardmark/report/paper/specification_report.hpp>

#include "../writing/flow.hpp"
#include "../writing/json_values.hpp"

#include <string>
#include <vector>

namespace boardmark::report {

/// Title, files, what the paper is and its day, the verdict of what it was made from.
Flow heading_of(const PaperHeading& heading, const std::string& paper, const TextStyle& style);

/// The checks of walls and mix, at the end.
Flow checks_of(const PaperHeading& heading, core::UnitSystem system);

core::VerdictSummary verdicts_of(const PaperHeading& heading);

/// The members that begin the JSON of every paper.
Json json_heading(const std::string& command, const PaperHeading& heading);

/// The members that end it.
void add_checks(const PaperHeading& heading, Json& object);

/// Phrases as items of a list.
Flow listed(const std::vector<core::Phrase>& phrases, core::UnitSystem system);

/// "ASTM C94 time of discharge (from memory, not read again)"
std::string source_words(const core::Source& source);

} // namespace boardmark::report
