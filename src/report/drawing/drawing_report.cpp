#include <boardmark/report/drawing/drawing_report.hpp>
#include <boardmark/text/utf8.hpp>

#include "drawing_page.hpp"
#include "svg.hpp"

#include <fmt/format.h>

namespace boardmark::report {
namespace {

constexpr double between_sheets_mm = 6;

std::string title_of(const DrawingResult& result, std::size_t number, std::size_t count) {
    return fmt::format("{}: sheet {} of {}", text::printable(result.wall.title), number, count);
}

} // namespace

std::vector<std::string> sheets_svg(const DrawingResult& result, const SheetWishes& wishes,
                                    core::UnitSystem system) {
    const auto sheets = sheets_of(result, wishes, system);
    std::vector<std::string> documents;
    for (const Sheet& sheet : sheets) {
        documents.push_back(svg_document(sheet.size,
                                         title_of(result, documents.size() + 1, sheets.size()),
                                         svg_group(sheet, 0)));
    }
    return documents;
}

std::string drawing_svg(const DrawingResult& result, const SheetWishes& wishes,
                        core::UnitSystem system) {
    const SheetSize size = size_of(wishes.paper);
    std::string groups;
    double top_mm = 0;
    for (const Sheet& sheet : sheets_of(result, wishes, system)) {
        top_mm += groups.empty() ? 0 : between_sheets_mm;
        groups += svg_group(sheet, top_mm);
        top_mm += size.height_mm;
    }
    return svg_document({size.width_mm, top_mm}, text::printable(result.wall.title), groups);
}

std::string drawing_html(const DrawingResult& result, const SheetWishes& wishes,
                         core::UnitSystem system) {
    std::string body;
    for (const std::string& sheet : sheets_svg(result, wishes, system)) {
        body += sheet;
    }
    return fmt::format(drawing_page, fmt::arg("hash", drawing_style_hash),
                       fmt::arg("title", svg_escaped(text::printable(result.wall.title))),
                       fmt::arg("style", drawing_style), fmt::arg("sheets", body));
}

} // namespace boardmark::report
