#pragma once

#include <boardmark/core/strength/strength_findings.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include <string>

namespace boardmark::report {

/// What `strength` found, ready to be written.
struct StrengthResult {
    const core::StrengthRecord& record;
    const core::StrengthFindings& findings;
    int today; ///< days since 1970-01-01
    InputFiles inputs = {};
};

/// Tests with running averages and verdicts, scatter, early ages, the line; at most 100 columns.
std::string text(const StrengthResult& result, const TextStyle& style);
std::string html(const StrengthResult& result, const TextStyle& style);

/// The object of the contract: SI, unrounded.
std::string json(const StrengthResult& result);

/// The production tests as rows for a spreadsheet (RFC 4180), units in the header.
std::string csv(const StrengthResult& result, core::UnitSystem system);

} // namespace boardmark::report
