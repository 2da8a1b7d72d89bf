#pragma once

#include <boardmark/core/paper/submittal_list.hpp>
#include <boardmark/report/paper/specification_report.hpp>

namespace boardmark::report {

/// What is handed in, ready to be written.
struct SubmittalListResult {
    PaperHeading heading;
    const core::SubmittalList& list;
};

/// The list with its days; at most 100 columns wide.
std::string text(const SubmittalListResult& result, const TextStyle& style);
std::string html(const SubmittalListResult& result, const TextStyle& style);
std::string json(const SubmittalListResult& result);

/// A row for each paper (RFC 4180).
std::string csv(const SubmittalListResult& result, core::UnitSystem system);

} // namespace boardmark::report
