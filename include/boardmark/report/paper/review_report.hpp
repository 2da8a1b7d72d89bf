#pragma once

#include <boardmark/core/paper/submittal_review.hpp>
#include <boardmark/report/paper/specification_report.hpp>

#include <vector>

namespace boardmark::report {

/// Submittals held against a designer's file, ready to be written.
struct ReviewResult {
    std::string title;   ///< of the designer's file
    std::string against; ///< that file, as it was named
    std::optional<core::Day> date = {};
    const std::vector<core::SubmittalReview>& reviews;
    InputFiles inputs = {};
};

/// The answers; of several submittals a table side by side first. At most 100 columns wide.
std::string text(const ReviewResult& result, const TextStyle& style);
std::string html(const ReviewResult& result, const TextStyle& style);
std::string json(const ReviewResult& result);

/// A row for each check of each submittal (RFC 4180).
std::string csv(const ReviewResult& result, core::UnitSystem system);

} // namespace boardmark::report
