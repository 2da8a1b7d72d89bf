#include <boardmark/report/drawing/drawing_report.hpp>
#include <boardmark/text/utf8.hpp>

#include "dxf.hpp"
#include "sheet.hpp"
#include "sheet_notes.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::report {
namespace {

std::vector<std::string> heading_of(const DrawingResult& result, const SheetWishes& wishes,
                                    const std::vector<std::string>& parts,
                                    core::UnitSystem system) {
    std::string names;
    for (const std::string& part : parts) {
        names += (names.empty() ? "" : ", ") + text::printable(part);
    }
    std::vector<std::string> heading{
        "Project: " + text::printable(result.wall.title),
        "Part: " + names,
        fmt::format("Model units: {}, in real size; ties are drawn as symbols",
                    system == core::UnitSystem::us ? "inches" : "mm"),
        "Date: " + (wishes.date.empty() ? std::string{"not stated"} : wishes.date),
        fmt::format("File: {}, SHA-256 {}", text::printable(result.file), result.sha256),
        "for coordination; the formwork's designer decides"};
    for (const std::string& part : parts) {
        for (const std::string& note : notes_on(result, part, system)) {
            const std::string told = text::printable(part) + ": " + note;
            heading.push_back(told);
        }
    }
    return heading;
}

} // namespace

std::string drawing_dxf(const DrawingResult& result, const SheetWishes& wishes,
                        core::UnitSystem system) {
    constexpr SheetSize endless{1e9, 1e9}; // nothing is split in a model
    const core::WallLayout& layout = result.plan.layout;
    std::vector<std::string> parts = parts_of(layout);
    std::erase_if(parts, [&](const std::string& part) {
        return !wishes.part.empty() && part != wishes.part;
    });
    std::vector<View> views;
    for (const std::string& part : parts) {
        const double scale =
            views_of(layout, part, size_of(wishes.paper), wishes.scale, system).front().scale;
        std::ranges::move(views_of(layout, part, endless, scale, system),
                          std::back_inserter(views));
    }
    return dxf_of(views, heading_of(result, wishes, parts, system),
                  system == core::UnitSystem::us ? ModelUnit::inch : ModelUnit::mm);
}

} // namespace boardmark::report
