#include "svg.hpp"

#include <boardmark/text/utf8.hpp>

#include "../writing/finite.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>

namespace boardmark::report {
namespace {

/// How an ink looks; lettering is filled.
struct Look {
    Ink ink;
    std::string_view attributes;
};

constexpr Look looks[] = {
    {Ink::frame, R"(fill="none" stroke="#1c1f22" stroke-width="0.3")"},
    {Ink::concrete, R"(fill="#f4f2ec" stroke="none")"},
    {Ink::footing, R"(fill="#e6e3da" stroke="none")"},
    {Ink::board, R"(fill="none" stroke="#8a7f6a" stroke-width="0.12")"},
    {Ink::piece_number, R"(fill="#6b6354")"},
    {Ink::sliver, R"(fill="#c62f3f" stroke="#c62f3f" stroke-width="0.25")"},
    {Ink::chamfer, R"(fill="none" stroke="#565c62" stroke-width="0.12")"},
    {Ink::mitre, R"(fill="none" stroke="#1c1f22" stroke-width="0.25")"},
    {Ink::opening, R"(fill="#ffffff" stroke="#1c1f22" stroke-width="0.2")"},
    {Ink::contraction_joint,
     R"(fill="none" stroke="#1c1f22" stroke-width="0.35" stroke-dasharray="3 0.8 0.7 0.8")"},
    {Ink::lift, R"(fill="none" stroke="#1f5f99" stroke-width="0.25" stroke-dasharray="1.8 1.2")"},
    {Ink::tie, R"(fill="#ffffff" stroke="#1c1f22" stroke-width="0.18")"},
    {Ink::hardest_tie, R"(fill="#9c1b2e" stroke="#9c1b2e" stroke-width="0.18")"},
    {Ink::bar, R"(fill="#28495c" stroke="none")"},
    {Ink::standing_bar, R"(fill="none" stroke="#28495c" stroke-width="0.35")"},
    {Ink::pressure, R"(fill="#dde5ea" stroke="#28495c" stroke-width="0.25")"},
    {Ink::form_rating,
     R"(fill="none" stroke="#9c1b2e" stroke-width="0.3" stroke-dasharray="1.2 0.8")"},
    {Ink::match_line,
     R"(fill="none" stroke="#565c62" stroke-width="0.4" stroke-dasharray="4 1.5")"},
    {Ink::dimension, R"(fill="none" stroke="#565c62" stroke-width="0.13")"},
    {Ink::lettering, R"(fill="#1c1f22")"},
    {Ink::warning, R"(fill="#9c1b2e")"},
};

std::string_view attributes_of(Ink ink) {
    return std::ranges::find(looks, ink, &Look::ink)->attributes;
}

std::string points_of(const std::vector<PaperPoint>& points) {
    std::string text;
    for (const PaperPoint& point : points) {
        text += (text.empty() ? "" : " ") + svg_mm(point.x_mm) + "," + svg_mm(point.y_mm);
    }
    return text;
}

std::string_view anchor_word(Anchor anchor) {
    switch (anchor) {
    case Anchor::start:
        return "start";
    case Anchor::middle:
        return "middle";
    case Anchor::end:
        break;
    }
    return "end";
}

std::string words_of(const Mark& mark) {
    const std::string x = svg_mm(mark.points.front().x_mm);
    const std::string y = svg_mm(mark.points.front().y_mm);
    const std::string turned = mark.upright ? " transform=\"rotate(-90 " + x + " " + y + ")\"" : "";
    const std::string anchored =
        mark.anchor == Anchor::start
            ? ""
            : fmt::format(R"( text-anchor="{}")", anchor_word(mark.anchor));
    return fmt::format(R"(<text x="{}" y="{}" font-size="{}"{}{}>{}</text>)", x, y,
                       svg_mm(mark.size_mm), anchored, turned, svg_escaped(mark.words));
}

std::string element_of(const Mark& mark) {
    const std::string counted =
        mark.counted.empty() ? "" : fmt::format(R"( class="{}")", mark.counted);
    switch (mark.shape) {
    case Mark::Shape::line:
        return fmt::format(R"(<polyline{} points="{}"/>)", counted, points_of(mark.points));
    case Mark::Shape::area:
        return fmt::format(R"(<polygon{} points="{}"/>)", counted, points_of(mark.points));
    case Mark::Shape::circle:
        return fmt::format(R"(<circle{} cx="{}" cy="{}" r="{}"/>)", counted,
                           svg_mm(mark.points.front().x_mm), svg_mm(mark.points.front().y_mm),
                           svg_mm(mark.size_mm));
    case Mark::Shape::words:
        break;
    }
    return words_of(mark);
}

/// Marks of one ink after another share what it looks like.
std::string elements_of(const std::vector<Mark>& marks) {
    std::string text;
    for (std::size_t i = 0; i < marks.size(); ++i) {
        const bool opens = i == 0 || marks[i - 1].ink != marks[i].ink;
        const bool closes = i + 1 == marks.size() || marks[i + 1].ink != marks[i].ink;
        if (opens) {
            text += fmt::format("<g {}>\n", attributes_of(marks[i].ink));
        }
        text += element_of(marks[i]) + "\n";
        text += closes ? "</g>\n" : "";
    }
    return text;
}

} // namespace

std::string svg_mm(double mm) {
    std::string text = fmt::format("{:.3f}", finite(mm));
    text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.')) {
        text.pop_back();
    }
    return text == "-0" ? "0" : text;
}

std::string svg_escaped(const std::string& text) {
    std::string written;
    for (const char letter : text) {
        switch (letter) {
        case '&':
        case '<':
        case '>':
        case '"':
        case '\'':
        case '{':
        case '}':
            written += fmt::format("&#{};", static_cast<int>(letter));
            break;
        default:
            written += letter;
        }
    }
    return written;
}

std::string svg_group(const View& view, PaperPoint corner) {
    const std::string part = svg_escaped(text::printable(view.part));
    const std::string what = view.face.empty() ? fmt::format(R"(data-section="{}")", part)
                                               : fmt::format(R"(data-part="{}" data-face="{}")",
                                                             part, svg_escaped(view.face));
    return fmt::format("<g {} data-scale=\"{:g}\" transform=\"translate({} {})\">\n{}</g>\n", what,
                       view.scale, svg_mm(corner.x_mm), svg_mm(corner.y_mm),
                       elements_of(view.marks));
}

std::string svg_group(const Sheet& sheet, double top_mm) {
    std::string text = fmt::format("<g transform=\"translate(0 {})\">\n", svg_mm(top_mm));
    text += fmt::format("<rect width=\"{}\" height=\"{}\" fill=\"#ffffff\"/>\n",
                        svg_mm(sheet.size.width_mm), svg_mm(sheet.size.height_mm));
    for (const PlacedView& placed : sheet.views) {
        text += svg_group(placed.view, placed.corner);
    }
    return text + elements_of(sheet.lettering.marks) + "</g>\n";
}

std::string svg_document(const SheetSize& size, const std::string& title,
                         const std::string& groups) {
    const std::string width = svg_mm(size.width_mm);
    const std::string height = svg_mm(size.height_mm);
    return fmt::format(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drawing\" width=\"{0}mm\" "
        "height=\"{1}mm\" viewBox=\"0 0 {0} {1}\" role=\"img\" "
        "font-family=\"'Liberation Sans',Arial,Helvetica,sans-serif\">\n"
        "<title>{2}</title>\n{3}</svg>\n",
        width, height, svg_escaped(title), groups);
}

} // namespace boardmark::report
