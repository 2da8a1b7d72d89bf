#pragma once

#include "sheet.hpp"

#include <string>

namespace boardmark::report {

/// A view as a group of an SVG: `data-part` and `data-face`, or `data-section`; a mark that stands
/// for an entry of the geometry has its name as class.
std::string svg_group(const View& view, PaperPoint corner);

/// A sheet as a group.
std::string svg_group(const Sheet& sheet, double top_mm);

/// An SVG document in mm round some groups.
std::string svg_document(const SheetSize& size, const std::string& title,
                         const std::string& groups);

/// Text as SVG holds it; braces too are written as numbers, so that it can stand in any template.
std::string svg_escaped(const std::string& text);

/// A length on paper, to a thousandth of a millimetre.
std::string svg_mm(double mm);

} // namespace boardmark::report
