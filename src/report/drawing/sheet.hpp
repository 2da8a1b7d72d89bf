#pragma once

#include <boardmark/report/drawing/drawing_report.hpp>

#include "view.hpp"

#include <vector>

namespace boardmark::report {

/// What a sheet of paper holds, mm.
struct SheetSize {
    double width_mm;
    double height_mm;
};
SheetSize size_of(Paper paper);

/// A view and where its upper left corner stands on the sheet.
struct PlacedView {
    View view;
    PaperPoint corner;
};

/// One sheet: views of one part, what explains them, the title block.
struct Sheet {
    SheetSize size;
    std::vector<PlacedView> views;
    View lettering; ///< frame, notes, title block
};

/// Every part on sheets of its own.
std::vector<Sheet> sheets_of(const DrawingResult& result, const SheetWishes& wishes,
                             core::UnitSystem system);

/// The views of a part at the scales that fit a size, the sections last.
std::vector<View> views_of(const core::WallLayout& layout, const std::string& part,
                           const SheetSize& room, std::optional<double> scale,
                           core::UnitSystem system);

/// The parts of a layout, in its order.
std::vector<std::string> parts_of(const core::WallLayout& layout);

} // namespace boardmark::report
