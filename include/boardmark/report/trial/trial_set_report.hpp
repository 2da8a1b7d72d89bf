#pragma once

#include <boardmark/core/trial/trial_set.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include <optional>
#include <string>

namespace boardmark::report {

/// What `proportion --w-cm` found, ready to be written.
struct TrialSetResult {
    std::string title;
    const core::Requirements& requirements;
    const core::TrialSet& set;
    std::optional<double> batch_m3; ///< where batches are asked for
    InputFiles inputs = {};
};

/// The mixes side by side, at most 100 columns wide.
std::string text(const TrialSetResult& result, const TextStyle& style);
std::string html(const TrialSetResult& result, const TextStyle& style);

/// The object of the contract.
std::string json(const TrialSetResult& result);

/// A row for each ingredient of each mix (RFC 4180), units in the header.
std::string csv(const TrialSetResult& result, core::UnitSystem system);

} // namespace boardmark::report
