#pragma once

#include <boardmark/core/batch.hpp>
#include <boardmark/core/check.hpp>
#include <boardmark/report/mix_report.hpp>

#include <string>
#include <vector>

namespace boardmark::report {

/// What `batch` found, ready to be written.
struct BatchResult {
    std::string title;
    const core::Requirements& requirements;
    const core::Batch& batch;
    double net_volume_m3; ///< without the allowance
    double allowance_percent;
    const core::Proportions& proportions;
    const std::vector<core::Check>& checks;
};

/// A ticket to take to the scale.
std::string text(const BatchResult& result, const TextStyle& style);

/// The object of the contract.
std::string json(const BatchResult& result);

/// The items to weigh as rows for a spreadsheet (RFC 4180), units in the header.
std::string csv(const BatchResult& result, core::UnitSystem system);

} // namespace boardmark::report
