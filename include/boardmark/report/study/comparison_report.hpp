#pragma once

#include <boardmark/core/study/comparison.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include <string>
#include <vector>

namespace boardmark::report {

/// What `compare` found, ready to be written.
struct ComparisonResult {
    std::string title;
    std::vector<std::string> files; ///< of each column
    const std::vector<core::ComparedMix>& columns;
    std::vector<core::Phrase> summary;
    const std::vector<core::Check>&
        checks; ///< of the mix as written; empty where there are several
    std::vector<core::Phrase> cautions;
    bool is_study = false;       ///< the uses of one mix's reducer: differences to the first column
    bool each_owes_a_mix = true; ///< not where other methods than the file's are tried
    bool only_different = false; ///< leaves rows out that are equal in all columns
    InputFiles inputs = {};
};

/// The columns side by side, four to a block, at most 100 columns wide.
std::string text(const ComparisonResult& result, const TextStyle& style);
std::string html(const ComparisonResult& result, const TextStyle& style);

/// The object of the contract.
std::string json(const ComparisonResult& result);

/// One row for each figure, one column for each mix (RFC 4180).
std::string csv(const ComparisonResult& result, core::UnitSystem system);

} // namespace boardmark::report
