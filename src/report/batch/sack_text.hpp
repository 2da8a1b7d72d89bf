#pragma once

#include <boardmark/report/batch/batch_report.hpp>

#include "../writing/flow.hpp"

#include <string>

namespace boardmark::report {

/// A count of sacks: "2 sacks", "0.58 sacks".
std::string sacks_text(double count);

/// What whole sacks do to the volume ordered, and what the ticket does instead.
Flow text_of_sacks(const BatchResult& result, const TextStyle& style);

} // namespace boardmark::report
