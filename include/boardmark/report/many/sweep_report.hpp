#pragma once

#include <boardmark/core/many/sweep.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include <string>
#include <vector>

namespace boardmark::report {

/// What `sweep` found, ready to be written.
struct SweepResult {
    std::string title;
    const core::Sweep& sweep;
    const std::vector<core::Check>& checks; ///< of the mix as written
    const std::vector<core::Phrase>& cautions;
    InputFiles inputs = {};
};

/// A row for each point, what fails or why there is no mix beside it; at most 100 columns wide.
std::string text(const SweepResult& result, const TextStyle& style);

/// The same with lines over one variable, or lines of one value over two.
std::string html(const SweepResult& result, const TextStyle& style);

/// SI, unrounded: `points`.
std::string json(const SweepResult& result);

/// One row for each point (RFC 4180), units in the header.
std::string csv(const SweepResult& result, core::UnitSystem system);

} // namespace boardmark::report
