#pragma once

#include <boardmark/core/wall/wall_plan.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include <string>

namespace boardmark::report {

/// What `wall` found, ready to be written.
struct WallResult {
    const core::Wall& wall;
    const core::WallPlan& plan;
    std::string mix_file; ///< as the wall file names it
    InputFiles inputs = {};
};

/// Quantities, boards, forces on the forms, placing, joints and steel; at most 100 columns wide.
std::string text(const WallResult& result, const TextStyle& style);

/// The same as one page for a browser, that needs no network.
std::string html(const WallResult& result, const TextStyle& style);

/// The object of the contract: SI, unrounded. The same for both systems.
std::string json(const WallResult& result);

/// Whether every figure is one: what `json` looks for, without the boards of each face as text.
/// Throws where one that is no board's is not.
bool all_finite(const WallResult& result);

/// Every figure as a row of one table for a spreadsheet (RFC 4180), its unit beside it; the caution
/// about formwork in every row of a pressure or a tie.
std::string csv(const WallResult& result, core::UnitSystem system);

} // namespace boardmark::report
