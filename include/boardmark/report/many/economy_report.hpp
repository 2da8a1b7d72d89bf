#pragma once

#include <boardmark/core/many/economy.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include <string>
#include <vector>

namespace boardmark::report {

/// What `economy` found, ready to be written.
struct EconomyResult {
    std::string title;
    const core::Economy& economy;
    const std::vector<core::Check>& checks; ///< of the mix as written
    InputFiles inputs = {};
};

/// The mix beside the one as written, what keeps it from being better and what that is worth, what
/// could not be checked; at most 100 columns wide.
std::string text(const EconomyResult& result, const TextStyle& style);

/// The same with the front of cost against carbon as a figure.
std::string html(const EconomyResult& result, const TextStyle& style);

/// SI, unrounded, per m3.
std::string json(const EconomyResult& result);

/// A row for each figure (RFC 4180), its unit beside it.
std::string csv(const EconomyResult& result, core::UnitSystem system);

} // namespace boardmark::report
