#include "sheet.hpp"

#include <boardmark/text/utf8.hpp>

#include "elevation_view.hpp"
#include "section_view.hpp"
#include "sheet_notes.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::report {
namespace {

using core::UnitSystem;

constexpr double usual_scales[] = {10, 20, 25, 50, 100};
constexpr double small_scales[] = {200, 500}; // where a part is higher than a sheet at 1:100
constexpr double inner_margin_mm = 0.9;       // between the frame and what is drawn
constexpr double between_mm = 5;              // views
constexpr double block_row_mm = 5;            // of the title block
constexpr int block_rows = 4;
constexpr double note_row_mm = 3.3;
constexpr double least_room_for_views = 0.6; // of a sheet's height, beside notes

double highest_mm(const std::vector<View>& views) {
    const auto highest = std::ranges::max_element(views, {}, &View::height_mm);
    return highest == views.end() ? 0 : highest->height_mm;
}

std::vector<const core::Elevation*> faces_of(const core::WallLayout& layout,
                                             const std::string& part) {
    std::vector<const core::Elevation*> faces;
    for (const core::Elevation& elevation : layout.elevations) {
        if (elevation.part == part) {
            faces.push_back(&elevation);
        }
    }
    return faces;
}

std::vector<View> faces_at(const core::WallLayout& layout, const std::string& part, double scale,
                           const SheetSize& room, UnitSystem system) {
    const auto faces = faces_of(layout, part);
    // A planter shows faces all round.
    const bool turns_at_ends = std::ranges::any_of(
        faces, [](const core::Elevation* face) { return face->face == core::Face::right; });
    std::vector<View> views;
    for (const core::Elevation* face : faces) {
        std::ranges::move(elevation_views(*face, {scale, room.width_mm, turns_at_ends, system}),
                          std::back_inserter(views));
    }
    return views;
}

bool is_split(const core::WallLayout& layout, const std::string& part, double scale,
              const SheetSize& room) {
    return std::ranges::any_of(faces_of(layout, part), [&](const core::Elevation* face) {
        return views_needed(*face, scale, room.width_mm) > 1;
    });
}

struct ScaledFaces {
    double scale;
    std::vector<View> views;
};

/// At the largest usual scale at which no face is split or too high; else at the largest at which
/// none is too high.
ScaledFaces fitting_faces(const core::WallLayout& layout, const std::string& part,
                          const SheetSize& room, UnitSystem system) {
    ScaledFaces faces;
    const auto fit = [&](double scale) {
        faces = {scale, faces_at(layout, part, scale, room, system)};
        return highest_mm(faces.views) <= room.height_mm;
    };
    for (const double scale : usual_scales) {
        if (!is_split(layout, part, scale, room) && fit(scale)) {
            return faces;
        }
    }
    if (fit(std::end(usual_scales)[-1])) {
        return faces;
    }
    for (const double scale : small_scales) {
        if (fit(scale)) {
            return faces;
        }
    }
    return faces;
}

/// The section at the scale asked for, or the largest that fits.
View section_at(const core::WallSection& section, std::optional<double> asked,
                const SheetSize& room, UnitSystem system) {
    std::vector<double> scales(std::begin(usual_scales), std::end(usual_scales));
    scales.insert(scales.end(), std::begin(small_scales), std::end(small_scales));
    if (asked) {
        scales.insert(scales.begin(), *asked);
    }
    for (const double scale : scales) {
        View view = section_view(section, scale, system);
        const bool fits = view.width_mm <= room.width_mm && view.height_mm <= room.height_mm;
        if (fits || scale == scales.back()) {
            return view;
        }
    }
    return section_view(section, scales.back(), system);
}

/// What is left of a sheet for views.
SheetSize room_beside(double notes_mm, const SheetSize& sheet) {
    return {sheet.width_mm - 2 * inner_margin_mm,
            sheet.height_mm - 2 * inner_margin_mm - block_rows * block_row_mm - notes_mm};
}

/// Views side by side while they find room, then below.
std::vector<std::vector<PlacedView>> placed(std::vector<View> views, const SheetSize& room) {
    std::vector<std::vector<PlacedView>> sheets(1);
    PaperPoint next{inner_margin_mm, inner_margin_mm};
    double shelf_mm = 0;
    for (View& view : views) {
        const bool beside = next.x_mm + view.width_mm <= inner_margin_mm + room.width_mm + 1e-6;
        if (!beside) {
            next = {inner_margin_mm, next.y_mm + shelf_mm + between_mm};
            shelf_mm = 0;
        }
        if (!sheets.back().empty() &&
            next.y_mm + view.height_mm > inner_margin_mm + room.height_mm + 1e-6) {
            sheets.emplace_back();
            next = {inner_margin_mm, inner_margin_mm};
            shelf_mm = 0;
        }
        const PaperPoint corner = next;
        next.x_mm += view.width_mm + between_mm;
        shelf_mm = std::max(shelf_mm, view.height_mm);
        sheets.back().push_back({std::move(view), corner});
    }
    return sheets;
}

/// "1:100, 1:20": of a sheet's views.
std::string scales_of(const std::vector<PlacedView>& views) {
    std::vector<std::string> scales;
    for (const PlacedView& placed_view : views) {
        const std::string scale = fmt::format("1:{:g}", placed_view.view.scale);
        if (std::ranges::find(scales, scale) == scales.end()) {
            scales.push_back(scale);
        }
    }
    return fmt::format("{}", fmt::join(scales, ", "));
}

struct TitleBlock {
    const DrawingResult& result;
    const SheetWishes& wishes;
    std::string part;
    std::size_t number;
    std::size_t of;
};

void rectangle(double left, double top, const SheetSize& size, View& view) {
    view.line(Ink::frame, {{left, top},
                           {left + size.width_mm, top},
                           {left + size.width_mm, top + size.height_mm},
                           {left, top + size.height_mm},
                           {left, top}});
}

void draw_title_block(const TitleBlock& block, Sheet& sheet) {
    constexpr double line_mm = 0.2; // half of the frame's line stays on the sheet
    View& view = sheet.lettering;
    const double width_mm = sheet.size.width_mm;
    const double top_mm = sheet.size.height_mm - block_rows * block_row_mm;
    const double split_mm = width_mm - 66;
    rectangle(line_mm, line_mm, {width_mm - 2 * line_mm, sheet.size.height_mm - 2 * line_mm}, view);
    for (int row = 0; row < block_rows; ++row) {
        const double y_mm = top_mm + row * block_row_mm;
        view.line(Ink::frame, {{line_mm, y_mm}, {width_mm - line_mm, y_mm}});
    }
    view.line(Ink::frame, {{split_mm, top_mm}, {split_mm, top_mm + 3 * block_row_mm}});
    const auto write = [&](double x_mm, int row, const std::string& text, double room_mm) {
        view.words(Ink::lettering, {x_mm + 1.5, top_mm + block_row_mm * row + 3.5},
                   fitted(text, room_mm - 3, letter_mm));
    };
    const double left_room_mm = split_mm;
    const double right_room_mm = width_mm - split_mm;
    write(0, 0, "Project: " + text::printable(block.result.wall.title), left_room_mm);
    write(0, 1, "Part: " + text::printable(block.part), left_room_mm);
    write(0, 2, "for coordination; the formwork's designer decides", left_room_mm);
    write(split_mm, 0,
          fmt::format("Sheet {} of {}, {}", block.number, block.of, name_of(block.wishes.paper)),
          right_room_mm);
    write(split_mm, 1, "Scale " + scales_of(sheet.views), right_room_mm);
    write(split_mm, 2,
          "Date: " + (block.wishes.date.empty() ? std::string{"not stated"} : block.wishes.date),
          right_room_mm);
    const std::string hash = ", SHA-256 " + block.result.sha256;
    const double hash_mm = width_of_words_mm(hash, letter_mm);
    write(0, 3,
          fitted("File: " + text::printable(block.result.file), width_mm - 3 - hash_mm, letter_mm) +
              hash,
          width_mm);
}

std::vector<std::string> note_lines(const DrawingResult& result, const std::string& part,
                                    double width_mm, UnitSystem system) {
    std::vector<std::string> lines;
    for (const std::string& note : notes_on(result, part, system)) {
        std::ranges::move(wrapped_note(note, width_mm), std::back_inserter(lines));
    }
    return lines;
}

/// The sheets of one part, without their title blocks.
std::vector<Sheet> sheets_of_part(const DrawingResult& result, const SheetWishes& wishes,
                                  const std::string& part, UnitSystem system) {
    const SheetSize size = size_of(wishes.paper);
    const SheetSize whole = room_beside(0, size);
    auto lines = note_lines(result, part, whole.width_mm, system);
    View key{.part = part, .scale = 1, .width_mm = size.width_mm, .height_mm = size.height_mm};
    const core::WallLayout& layout = result.plan.layout;
    const double key_mm = draw_key(views_of(layout, part, whole, wishes.scale, system),
                                   {inner_margin_mm + 0.5, 0}, whole.width_mm - 1, key);
    const double most_notes_mm = (1 - least_room_for_views) * whole.height_mm - key_mm;
    const auto most_lines = static_cast<std::size_t>(most_notes_mm / note_row_mm);
    if (lines.size() > most_lines) {
        lines.resize(most_lines);
        lines.back() = "'boardmark wall' tells the rest.";
    }
    const double notes_mm = key_mm + note_row_mm * static_cast<double>(lines.size()) + 2;
    const SheetSize room = room_beside(notes_mm, size);
    std::vector<Sheet> sheets;
    for (auto& views : placed(views_of(layout, part, room, wishes.scale, system), room)) {
        Sheet sheet{size, std::move(views), key};
        const double top_mm = size.height_mm - block_rows * block_row_mm - notes_mm;
        for (Mark& mark : sheet.lettering.marks) {
            for (PaperPoint& point : mark.points) {
                point.y_mm += top_mm;
            }
        }
        double y_mm = top_mm + key_mm;
        for (const std::string& line : lines) {
            y_mm += note_row_mm;
            sheet.lettering.words(Ink::lettering, {inner_margin_mm + 0.5, y_mm - 0.6}, line);
        }
        sheets.push_back(std::move(sheet));
    }
    return sheets;
}

} // namespace

std::string_view name_of(Paper paper) {
    switch (paper) {
    case Paper::letter:
        return "letter";
    case Paper::a4:
        return "a4";
    case Paper::tabloid:
        return "tabloid";
    case Paper::a3:
        break;
    }
    return "a3";
}

SheetSize size_of(Paper paper) {
    const bool large = paper == Paper::tabloid || paper == Paper::a3;
    return {large ? 398.0 : 190.0, 259};
}

std::vector<std::string> parts_of(const core::WallLayout& layout) {
    std::vector<std::string> parts;
    for (const core::WallSection& section : layout.sections) {
        parts.push_back(section.part);
    }
    return parts;
}

std::vector<View> views_of(const core::WallLayout& layout, const std::string& part,
                           const SheetSize& room, std::optional<double> scale, UnitSystem system) {
    std::vector<View> views = scale ? faces_at(layout, part, *scale, room, system)
                                    : fitting_faces(layout, part, room, system).views;
    const auto section = std::ranges::find(layout.sections, part, &core::WallSection::part);
    views.push_back(section_at(*section, scale, room, system));
    return views;
}

std::optional<TooHigh> too_high(const DrawingResult& result, const SheetWishes& wishes) {
    if (!wishes.scale) {
        return std::nullopt;
    }
    const SheetSize whole = room_beside(0, size_of(wishes.paper));
    const SheetSize room{whole.width_mm, least_room_for_views * whole.height_mm};
    const core::WallLayout& layout = result.plan.layout;
    for (const std::string& part : parts_of(layout)) {
        const bool asked = wishes.part.empty() || part == wishes.part;
        const auto views = faces_at(layout, part, *wishes.scale, room, UnitSystem::us);
        if (asked && highest_mm(views) > room.height_mm) {
            return TooHigh{part, *wishes.scale,
                           fitting_faces(layout, part, room, UnitSystem::us).scale};
        }
    }
    return std::nullopt;
}

std::vector<Sheet> sheets_of(const DrawingResult& result, const SheetWishes& wishes,
                             UnitSystem system) {
    struct OfPart {
        std::string part;
        Sheet sheet;
    };
    std::vector<OfPart> all;
    for (const std::string& part : parts_of(result.plan.layout)) {
        if (!wishes.part.empty() && part != wishes.part) {
            continue;
        }
        for (Sheet& sheet : sheets_of_part(result, wishes, part, system)) {
            all.push_back({part, std::move(sheet)});
        }
    }
    std::vector<Sheet> sheets;
    for (std::size_t i = 0; i < all.size(); ++i) {
        draw_title_block({result, wishes, all[i].part, i + 1, all.size()}, all[i].sheet);
        sheets.push_back(std::move(all[i].sheet));
    }
    return sheets;
}

} // namespace boardmark::report
