#pragma once

#include <boardmark/core/paper/specification.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::report {

/// What every paper of a job stands on.
struct PaperHeading {
    std::string title;
    std::string mix_file = {};          ///< as the wall file names it; empty of a mix
    std::optional<core::Day> date = {}; ///< of the paper
    const std::vector<core::Check>& mix_checks;
    const std::vector<core::Check>& checks; ///< of the walls and of the papers
    const core::WallPlan* plan = nullptr;   ///< of the walls, where the paper has some
    InputFiles inputs = {};
};

/// A specification, ready to be written.
struct SpecificationResult {
    PaperHeading heading;
    const core::Specification& specification;
};

/// The clauses as a document; at most 100 columns wide. `explain` adds reason and source of each.
std::string text(const SpecificationResult& result, const TextStyle& style);
std::string html(const SpecificationResult& result, const TextStyle& style);

/// Every clause with its figures in SI: the text holds none that stands not here.
std::string json(const SpecificationResult& result);

/// A row for each clause (RFC 4180).
std::string csv(const SpecificationResult& result, core::UnitSystem system);

} // namespace boardmark::report
