#pragma once

#include <boardmark/core/brief/brief.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include <string>

namespace boardmark::report {

/// A brief for contractor and supplier, ready to be written.
struct BriefResult {
    std::string title;
    std::string mix_file; ///< as the wall file names it
    const core::Brief& brief;
    const core::WallPlan& plan;
    InputFiles inputs = {};
};

/// The brief as a document; at most 100 columns wide.
std::string text(const BriefResult& result, const TextStyle& style);
std::string html(const BriefResult& result, const TextStyle& style);

/// Every sentence with its figures in SI, unrounded: the text holds none that stands not here.
std::string json(const BriefResult& result);

/// Section, item and sentence as rows for a spreadsheet (RFC 4180); the caution about formwork in
/// the row of every pressure and tie.
std::string csv(const BriefResult& result, core::UnitSystem system);

} // namespace boardmark::report
