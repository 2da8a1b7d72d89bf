#pragma once

#include <boardmark/core/basis/deferred.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/checks/code_judgement.hpp>
#include <boardmark/core/mix/aggregate_together.hpp>
#include <boardmark/core/mix/grading_rules.hpp>
#include <boardmark/core/mix/mix.hpp>
#include <boardmark/core/mix/proportions.hpp>
#include <boardmark/core/strength/expected_strength.hpp>
#include <boardmark/report/writing/input_file.hpp>
#include <boardmark/report/writing/text_style.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::report {

/// What `proportion` and `check` found, ready to be written.
struct MixResult {
    std::string command; ///< "proportion" or "check"
    std::string title;
    const core::Requirements& requirements;
    const core::Proportions& proportions;
    const std::vector<core::Check>& checks;
    core::StrengthOverRatio strength = {}; ///< drawn where it has points
    /// Draws the gradings that are stated, and is read where there are some.
    const core::Deferred<core::GradingRules>* grading = nullptr;
    std::optional<core::AggregateTogether> aggregate = {}; ///< where all of them are stated
    InputFiles inputs = {};
    std::vector<core::CodeJudgement> codes = {}; ///< side by side, the file's own first
};

/// A worksheet that a concrete technician can follow from the top.
std::string text(const MixResult& result, const TextStyle& style);

/// The same as one page for a browser, that needs no network: what holds and the steps
/// are folded.
std::string html(const MixResult& result, const TextStyle& style);

/// The object of the contract: SI, unrounded, keys in fixed order. The same for both systems.
std::string json(const MixResult& result);

/// Whether every figure that a report may show is finite; `json` throws and names the place where
/// one is not. A figure that is not finite is a fault of the program.
bool all_finite(const MixResult& result);

/// The ingredients as rows for a spreadsheet (RFC 4180), units in the header.
std::string csv(const MixResult& result, core::UnitSystem system);

} // namespace boardmark::report
