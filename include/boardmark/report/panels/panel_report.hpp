#pragma once

#include <boardmark/core/panels/panel_programme.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include <string>

namespace boardmark::report {

/// A programme of sample panels, ready to be written.
struct PanelResult {
    std::string title;
    std::string mix_file; ///< of the wall, as the wall file names it
    const core::PanelWishes& wishes;
    const core::PanelProgramme& programme;
    InputFiles inputs = {};
};

/// The programme as text, at most 100 columns wide, with a sheet to score on.
std::string text(const PanelResult& result, const TextStyle& style);

/// The same as a page that prints on Letter and A4.
std::string html(const PanelResult& result, const TextStyle& style);

/// Panels, batches, effects with their weights, room and rules in SI, unrounded.
std::string json(const PanelResult& result);

/// The same figures as rows for a spreadsheet (RFC 4180).
std::string csv(const PanelResult& result, core::UnitSystem system);

} // namespace boardmark::report
