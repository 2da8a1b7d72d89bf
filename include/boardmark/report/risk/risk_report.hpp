#pragma once

#include <boardmark/core/risk/risk.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include <string>
#include <vector>

namespace boardmark::report {

/// What `risk` found, ready to be written.
struct RiskResult {
    std::string title;
    const core::Risk& risk;
    const std::vector<core::Check>& checks; ///< of the mix as written
    const std::vector<core::Phrase>& cautions;
    InputFiles inputs = {};
};

/// Where the batches end, how often a limit is broken, what drives it; at most 100 columns wide. A
/// page has a histogram of each quantity besides.
std::string text(const RiskResult& result, const TextStyle& style);
std::string html(const RiskResult& result, const TextStyle& style);

/// SI, unrounded.
std::string json(const RiskResult& result);

/// One row for each figure (RFC 4180).
std::string csv(const RiskResult& result, core::UnitSystem system);

} // namespace boardmark::report
