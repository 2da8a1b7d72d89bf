#pragma once

#include <boardmark/core/pour/pour_card.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include <optional>
#include <string>

namespace boardmark::report {

/// The card of a day of placing, ready to be written.
struct PourResult {
    std::string title;
    std::string mix_file; ///< as the wall file names it
    const core::PourCard& card;
    std::optional<int> start_min =
        {}; ///< clock time of the first load; absent: times count from it
    InputFiles inputs = {};
};

/// The card as text, at most 100 columns wide.
std::string text(const PourResult& result, const TextStyle& style);

/// The same on one sheet of paper, Letter or A4.
std::string html(const PourResult& result, const TextStyle& style);

/// Every figure of the card in SI, unrounded; every load and lift by itself.
std::string json(const PourResult& result);

/// The figures as rows for a spreadsheet (RFC 4180), every load and lift by itself; the caution
/// about formwork in the row of every pressure, tie and rise.
std::string csv(const PourResult& result, core::UnitSystem system);

} // namespace boardmark::report
