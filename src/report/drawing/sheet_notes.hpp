#pragma once

#include <boardmark/report/drawing/drawing_report.hpp>

#include "view.hpp"

#include <string>
#include <vector>

namespace boardmark::report {

/// What stands in words below the views of a part: what they take for granted, what to watch.
std::vector<std::string> notes_on(const DrawingResult& result, const std::string& part,
                                  core::UnitSystem system);

/// Text broken into lines of a width.
std::vector<std::string> wrapped_note(const std::string& text, double width_mm);

/// Draws what the lines and symbols of some views mean. Returns the height that it takes, mm.
double draw_key(const std::vector<View>& views, PaperPoint corner, double width_mm, View& sheet);

} // namespace boardmark::report
