#include "view.hpp"

#include <boardmark/text/utf8.hpp>

#include <algorithm>
#include <utility>

namespace boardmark::report {
namespace {

constexpr double wide_letter = 0.6; // of its height: digits of a wide face

} // namespace

void View::line(Ink ink, std::vector<PaperPoint> points, std::string_view counted) {
    marks.push_back(
        {.shape = Mark::Shape::line, .ink = ink, .points = std::move(points), .counted = counted});
}

void View::area(Ink ink, std::vector<PaperPoint> points, std::string_view counted) {
    marks.push_back(
        {.shape = Mark::Shape::area, .ink = ink, .points = std::move(points), .counted = counted});
}

void View::circle(Ink ink, PaperPoint centre, double radius_mm, std::string_view counted) {
    marks.push_back({.shape = Mark::Shape::circle,
                     .ink = ink,
                     .points = {centre},
                     .size_mm = radius_mm,
                     .counted = counted});
}

void View::words(Ink ink, PaperPoint place, std::string text, Anchor anchor, double letters_mm) {
    marks.push_back({.shape = Mark::Shape::words,
                     .ink = ink,
                     .points = {place},
                     .size_mm = letters_mm,
                     .words = std::move(text),
                     .anchor = anchor});
}

double width_of_words_mm(std::string_view text, double letters_mm) {
    return static_cast<double>(text::display_width(text)) * wide_letter * letters_mm;
}

std::string fitted(const std::string& text, double width_mm, double letters_mm) {
    if (width_of_words_mm(text, letters_mm) <= width_mm) {
        return text;
    }
    const double columns = width_mm / (wide_letter * letters_mm) - 1;
    return columns < 1 ? "" : text::beginning(text, static_cast<std::size_t>(columns)) + "…";
}

int WordRows::row_for(double from_mm, double to_mm) {
    const auto free =
        std::ranges::find_if(ends_mm_, [&](double end_mm) { return end_mm <= from_mm; });
    if (free != ends_mm_.end()) {
        *free = to_mm;
        return static_cast<int>(free - ends_mm_.begin());
    }
    ends_mm_.push_back(to_mm);
    return rows() - 1;
}

} // namespace boardmark::report
