#pragma once

#include <boardmark/core/study/dose_response.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include <string>
#include <vector>

namespace boardmark::report {

/// What `dose` found, ready to be written.
struct DoseResult {
    std::string title;
    const core::DoseResponse& response;
    const std::vector<core::Check>& checks; ///< of the mix as written
    const std::vector<core::Phrase>& cautions;
    InputFiles inputs = {};
};

/// The response in steps, both uses side by side; at most 100 columns wide.
std::string text(const DoseResult& result, const TextStyle& style);
std::string html(const DoseResult& result, const TextStyle& style);

/// SI, unrounded: `points` with both uses at each dose.
std::string json(const DoseResult& result);

/// One row for each dose (RFC 4180), units in the header.
std::string csv(const DoseResult& result, core::UnitSystem system);

} // namespace boardmark::report
