#include "drawing_flow.hpp"

#include <boardmark/text/utf8.hpp>

#include "svg.hpp"

#include <fmt/format.h>

namespace boardmark::report {
namespace {

// Inside the margins of the page, Letter and A4; two sections find room below each other.
constexpr SheetSize room_of_faces{180, 240};
constexpr SheetSize room_of_sections{180, 96};

/// The views that are faces, or those that are sections.
std::vector<Drawing> drawn_views(const core::WallLayout& layout, core::UnitSystem system,
                                 bool sections) {
    std::vector<Drawing> drawings;
    for (const std::string& part : parts_of(layout)) {
        const SheetSize& room = sections ? room_of_sections : room_of_faces;
        for (const View& view : views_of(layout, part, room, std::nullopt, system)) {
            if (view.face.empty() != sections) {
                continue;
            }
            const std::string caption = fmt::format(
                "{}, {}, drawn at 1:{:g}", text::printable(part),
                sections ? "cut where it is highest, with the pressure of the fresh concrete and "
                           "the loads of the ties, for planning"
                         : view.face + " face",
                view.scale);
            drawings.push_back(
                {svg_document({view.width_mm, view.height_mm}, caption, svg_group(view, {0, 0})),
                 caption});
        }
    }
    return drawings;
}

} // namespace

Flow drawn_elevations(const core::WallLayout& layout, core::UnitSystem system) {
    return Block{Drawings{[&layout, system] { return drawn_views(layout, system, false); }}};
}

Flow drawn_sections(const core::WallLayout& layout, core::UnitSystem system) {
    return Block{Drawings{[&layout, system] { return drawn_views(layout, system, true); }}};
}

} // namespace boardmark::report
