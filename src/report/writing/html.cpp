#include "html.hpp"

#include <boardmark/text/utf8.hpp>

#include "blank.hpp"
#include "one_sheet_style.hpp"
#include "page_template.hpp"

#include <kainjow/mustache.hpp>

#include <algorithm>

namespace boardmark::report {
namespace {

using kainjow::mustache::data;
using kainjow::mustache::list;
using kainjow::mustache::mustache;
using kainjow::mustache::object;
using kainjow::mustache::partial;

constexpr std::string_view item_indent = "  - ";

std::string role_of(core::Verdict verdict) {
    switch (verdict) {
    case core::Verdict::holds:
        return "holds";
    case core::Verdict::fails:
        return "fails";
    case core::Verdict::watch:
        return "watch";
    case core::Verdict::not_checked:
        break;
    }
    return "open";
}

bool is_blank(const std::string& text) {
    return text.find_first_not_of(" \n") == std::string::npos;
}

/// "  3. ": a step of an order that is kept.
bool is_numbered(std::string_view indent) {
    const std::size_t digit = indent.find_first_of("0123456789");
    return digit != std::string_view::npos && indent.ends_with(". ");
}

object cell_of(const Grid& grid, const Grid::Row& row, std::size_t column) {
    const std::string& text = row.cells[column];
    std::string role = grid.columns()[column] == Align::right ? "r" : "";
    if (row.verdict && column == 0) {
        role = "v " + role_of(*row.verdict);
    }
    if (is_blank_to_fill(text)) {
        return {{"text", ""}, {"class", "blank"}, {"is_name", false}};
    }
    if (text == tick_box) {
        return {{"text", ""}, {"class", "box"}, {"is_name", false}};
    }
    const bool names_row = column == 0 && !row.verdict && !is_blank(text);
    return {{"text", text}, {"class", role}, {"is_name", names_row}};
}

object row_of(const Grid& grid, const Grid::Row& row) {
    list cells;
    for (std::size_t column = 0; column < row.cells.size(); ++column) {
        cells.push_back(cell_of(grid, row, column));
    }
    return {{"cells", cells}};
}

object head_row_of(const Grid& grid, const Grid::Row& row) {
    list cells;
    for (std::size_t column = 0; column < row.cells.size(); ++column) {
        object cell = cell_of(grid, row, column);
        cell["is_name"] = !is_blank(row.cells[column]);
        cells.push_back(cell);
    }
    return {{"cells", cells}};
}

object table_of(const Grid& grid, const std::string& name) {
    list head;
    list body;
    for (std::size_t i = 0; i < grid.rows().size(); ++i) {
        const bool in_head = i < grid.head_rows();
        const Grid::Row& row = grid.rows()[i];
        (in_head ? head : body).push_back(in_head ? head_row_of(grid, row) : row_of(grid, row));
    }
    object table{{"name", name}, {"body", body}};
    if (!head.empty()) {
        table["head"] = object{{"rows", head}};
    }
    return table;
}

object figure_of(const Figure& figure) {
    list areas;
    list lines;
    for (const Stroke& stroke : figure.strokes) {
        (stroke.is_area ? areas : lines)
            .push_back(object{{"role", stroke.role}, {"points", stroke.points}});
    }
    list spots;
    for (const Spot& spot : figure.spots) {
        spots.push_back(
            object{{"x", spot.x}, {"y", spot.y}, {"role", spot.role}, {"meaning", spot.meaning}});
    }
    list labels;
    for (const Label& label : figure.labels) {
        labels.push_back(
            object{{"x", label.x}, {"y", label.y}, {"text", label.text}, {"anchor", label.anchor}});
    }
    return {{"caption", figure.caption},
            {"width", std::to_string(figure.width)},
            {"height", std::to_string(figure.height)},
            {"areas", areas},
            {"lines", lines},
            {"spots", spots},
            {"labels", labels}};
}

/// A part of the page that is put in as it stands.
data part(std::string text) {
    return partial{[text = std::move(text)] { return text; }};
}

/// The blocks of one section, paragraphs that are items of a list gathered into lists.
class Blocks {
public:
    explicit Blocks(std::string name)
        : name_(std::move(name)) {}

    void add(const Block& block) { std::visit(*this, block); }

    void operator()(const Heading&) {}
    void operator()(const Paragraph& paragraph) {
        if (paragraph.indent.first == item_indent) {
            end_steps();
            items_.push_back(object{{"text", paragraph.text}});
            return;
        }
        if (is_numbered(paragraph.indent.first)) {
            end_items();
            steps_.push_back(object{{"text", paragraph.text}});
            return;
        }
        object said{{"text", paragraph.text}};
        if (paragraph.verdict) {
            said["role"] = role_of(*paragraph.verdict);
        }
        push(paragraph.verdict ? "verdict" : "paragraph", said);
    }
    void operator()(const Verbatim& verbatim) {
        if (!is_blank(verbatim.text)) {
            push("verbatim", object{{"text", verbatim.text}, {"name", region_name()}});
        }
    }
    void operator()(const Grid& grid) { push("table", table_of(grid, region_name())); }
    void operator()(const SideBySide& table) { (*this)(table.grid()); }
    void operator()(const Figure& figure) { push("figure", figure_of(figure)); }
    void operator()(const Drawings& drawings) {
        for (const Drawing& drawing : drawings.drawn()) {
            push("drawing", object{{"svg", part(drawing.svg)}, {"caption", drawing.caption}});
        }
    }

    list all() {
        end_list();
        return blocks_;
    }

private:
    void push(const std::string& kind, const object& block) {
        end_list();
        blocks_.push_back(object{{kind, block}});
    }
    /// Of what scrolls by itself: a reader who hears the page tells one from the other.
    std::string region_name() {
        ++regions_;
        return regions_ == 1 ? name_ : name_ + ", part " + std::to_string(regions_);
    }
    void end_list() {
        end_items();
        end_steps();
    }
    void end_items() {
        if (!items_.empty()) {
            const object items{{"item", std::exchange(items_, {})}};
            blocks_.push_back(object{{"items", items}});
        }
    }
    void end_steps() {
        if (!steps_.empty()) {
            const object steps{{"step", std::exchange(steps_, {})}};
            blocks_.push_back(object{{"steps", steps}});
        }
    }

    std::string name_;
    int regions_ = 0;
    list blocks_;
    list items_;
    list steps_;
};

/// Whether a block says the title again, which the page has as its heading.
bool is_title(const Block& block, const std::string& title) {
    const auto* said = std::get_if<Paragraph>(&block);
    return said && said->text == title;
}

std::vector<std::pair<std::string, list>> sections_of(const Flow& flow, const std::string& title) {
    std::vector<std::pair<std::string, list>> sections;
    std::string name = title;
    Blocks blocks{name};
    for (const Block& block : flow.blocks()) {
        if (const auto* heading = std::get_if<Heading>(&block)) {
            sections.emplace_back(name, blocks.all());
            name = heading->text;
            blocks = Blocks{name};
        } else if (!sections.empty() || !is_title(block, title)) {
            blocks.add(block);
        }
    }
    sections.emplace_back(name, blocks.all());
    return sections;
}

bool is_wide(const std::string& name, const Flow& flow) {
    return std::ranges::any_of(flow.blocks(), [&](const Block& block) {
        const auto* heading = std::get_if<Heading>(&block);
        return heading && heading->text == name && heading->whole_width;
    });
}

} // namespace

std::string html_of(const Flow& flow, const PageWords& words) {
    const std::string title = text::printable(words.title);
    const auto sections = sections_of(flow, title);
    list below;
    for (auto section = sections.begin() + 1; section != sections.end(); ++section) {
        below.push_back(object{{"name", section->first},
                               {"blocks", section->second},
                               {"wide", is_wide(section->first, flow)}});
    }
    mustache page{page_template};
    data all;
    all.set("title", title);
    all.set("command", words.command);
    all.set("hash", style_hash);
    all.set("opening", sections.front().second);
    all.set("sections", below);
    all.set("style", part(page_style));
    if (words.one_sheet) {
        all.set("one_sheet", object{{"sheet_hash", one_sheet_style_hash},
                                    {"sheet_style", part(one_sheet_style)}});
    }
    all.set("block", part(block_template));
    return page.render(all);
}

} // namespace boardmark::report
