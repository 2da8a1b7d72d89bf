#pragma once

#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/trial/next_trial.hpp>
#include <boardmark/core/trial/yield.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::report {

/// What `yield` found, ready to be written.
struct YieldResult {
    std::string title; ///< of the mix
    std::string mix_file;
    std::string name;        ///< of the trial; may be empty
    std::optional<int> date; ///< of the trial, days since 1970-01-01
    const core::Trial& trial;
    const core::Proportions& designed;
    const core::Yield& yield;
    const std::vector<core::Check>& checks;
    const std::optional<core::NextTrial>& next;
    const std::optional<core::Unresolved>& no_next; ///< why there is no next trial
    InputFiles inputs = {};
};

/// What the trial was, what to change on the batch sheet; at most 100 columns wide.
std::string text(const YieldResult& result, const TextStyle& style);

/// The same as one page for a browser, that needs no network.
std::string html(const YieldResult& result, const TextStyle& style);

/// The object of the contract.
std::string json(const YieldResult& result);

/// The batch sheet of the next trial beside this one's, as rows for a spreadsheet (RFC 4180).
std::string csv(const YieldResult& result, core::UnitSystem system);

} // namespace boardmark::report
