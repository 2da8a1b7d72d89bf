#pragma once

#include <boardmark/core/wall/wall_plan.hpp>

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace boardmark::report {

/// Paper that sheets are printed on. A sheet is what fits both of a pair: 190 by 259 mm upright, or
/// 398 by 259 mm.
enum class Paper { letter, a4, tabloid, a3 };

/// "letter", "a4", "tabloid", "a3".
std::string_view name_of(Paper paper);

/// How sheets are asked for.
struct SheetWishes {
    Paper paper;
    std::optional<double> scale = {}; ///< 20: 1:20; absent: the largest usual one that fits
    std::string part = {};            ///< the only one that is drawn; empty: all
    std::string date = {};            ///< as it shall stand there; empty: left open
};

/// What is drawn, and which file it follows.
struct DrawingResult {
    const core::Wall& wall;
    const core::WallPlan& plan;
    std::string file;
    std::string sha256; ///< of that file
};

/// A face that is higher than a sheet at the scale asked for.
struct TooHigh {
    std::string part;
    double scale;
    double fits; ///< the largest usual scale at which it is not
};
std::optional<TooHigh> too_high(const DrawingResult& result, const SheetWishes& wishes);

/// The sheets as one SVG document each, in mm; nothing may be too high.
std::vector<std::string> sheets_svg(const DrawingResult& result, const SheetWishes& wishes,
                                    core::UnitSystem system);

/// All sheets below each other in one document.
std::string drawing_svg(const DrawingResult& result, const SheetWishes& wishes,
                        core::UnitSystem system);

/// All sheets as one page for a browser, that prints each on its own paper.
std::string drawing_html(const DrawingResult& result, const SheetWishes& wishes,
                         core::UnitSystem system);

/// The views in their real size, as DXF of release 12: in inches or mm, as the system shown has it.
std::string drawing_dxf(const DrawingResult& result, const SheetWishes& wishes,
                        core::UnitSystem system);

} // namespace boardmark::report
