#include "html.hpp"

#include <boardmark/text/utf8.hpp>

#include "anchors.hpp"
#include "blank.hpp"
#include "one_sheet_style.hpp"
#include "page_template.hpp"
#include "trace.hpp"

#include <kainjow/mustache.hpp>

#include <algorithm>
#include <map>
#include <string_view>
#include <utility>

namespace boardmark::report {
namespace {

using kainjow::mustache::data;
using kainjow::mustache::list;
using kainjow::mustache::mustache;
using kainjow::mustache::object;

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

std::string role_of(core::VerdictState state) {
    switch (state) {
    case core::VerdictState::fails:
        return "fails";
    case core::VerdictState::watch:
        return "watch";
    case core::VerdictState::open:
        return "open";
    case core::VerdictState::holds:
        break;
    }
    return "holds";
}

bool is_blank(const std::string& text) {
    return text.find_first_not_of(" \n") == std::string::npos;
}

/// "  3. ": a step of an order that is kept.
bool is_numbered(std::string_view indent) {
    const std::size_t digit = indent.find_first_of("0123456789");
    return digit != std::string_view::npos && indent.ends_with(". ");
}

/// The names of a column in all rows of the head, as one label.
std::string label_of(const Grid& grid, std::size_t column) {
    std::string label;
    for (std::size_t row = 0; row < grid.head_rows(); ++row) {
        const std::string& name = grid.rows()[row].cells[column];
        if (!is_blank(name)) {
            label += (label.empty() ? "" : " ") + name;
        }
    }
    return label;
}

std::string class_of_cell(const Grid& grid, const Grid::Row& row, std::size_t column) {
    const std::string& text = row.cells[column];
    return is_blank_to_fill(text)                   ? "blank"
           : text == tick_box                       ? "box"
           : row.verdict && column == 0             ? "v " + role_of(*row.verdict)
           : grid.columns()[column] == Align::right ? "r"
                                                    : "";
}

/// What stands in a cell; nothing where a person writes or ticks.
std::string text_of_cell(const std::string& text) {
    return is_blank(text) || is_blank_to_fill(text) || text == tick_box ? "" : text;
}

bool means_markup(char letter) {
    return letter == '&' || letter == '<' || letter == '>' || letter == '"' || letter == '\'';
}

/// The library's escapes; it goes letter by letter, and most texts need none.
std::string escaped(const std::string& text) {
    return std::ranges::none_of(text, means_markup) ? text : kainjow::mustache::html_escape(text);
}

/// A form whose fields are escaped.
mustache form_of(const char* written) {
    mustache form{written};
    form.set_custom_escape(escaped);
    return form;
}

/// The forms, taken apart once for all pages.
struct Forms {
    mustache page = form_of(page_template);
    std::map<std::string_view, mustache> blocks;
    mustache cell = form_of(cell_template);
    mustache head_cell = form_of(head_cell_template);
    mustache check = form_of(check_template);
    mustache spot = form_of(spot_template);

    Forms() {
        for (const BlockTemplate& one : block_templates) {
            blocks.emplace(one.kind, form_of(one.form));
        }
    }
};

Forms& forms() {
    thread_local Forms all;
    return all;
}

/// An object of one field. The library copies what stands in braces over and over; this moves it.
object holding(const std::string& name, data value) {
    object one;
    one.emplace(name, std::move(value));
    return one;
}

/// Writes by a form behind what stands there already.
void write(mustache& form, const data& told, std::string& written) {
    form.render(told, [&](const std::string& part) { written += part; });
}

/// What a form of a cell says, field by field: the library copies objects in objects over and over.
data told_of_cell(const Grid& grid, const Grid::Row& row, std::size_t column) {
    data told;
    told.set("text", text_of_cell(row.cells[column]));
    told.set("class", class_of_cell(grid, row, column));
    return told;
}

void write_row(const Grid& grid, const Grid::Row& row, const std::vector<std::string>& labels,
               std::string& written) {
    written += "<tr>";
    for (std::size_t column = 0; column < row.cells.size(); ++column) {
        data told = told_of_cell(grid, row, column);
        const bool names_row =
            column == 0 && !row.verdict && !text_of_cell(row.cells[column]).empty();
        told.set("is_name", names_row);
        told.set("label", labels[column]);
        write(forms().cell, told, written);
    }
    written += "</tr>\n";
}

/// The rows below the head as they stand on the page.
std::string body_of(const Grid& grid) {
    std::vector<std::string> labels;
    for (std::size_t column = 0; column < grid.columns().size(); ++column) {
        labels.push_back(label_of(grid, column));
    }
    std::string written;
    for (std::size_t i = grid.head_rows(); i < grid.rows().size(); ++i) {
        write_row(grid, grid.rows()[i], labels, written);
    }
    return written;
}

std::string head_of(const Grid& grid) {
    std::string written;
    for (std::size_t i = 0; i < grid.head_rows(); ++i) {
        const Grid::Row& row = grid.rows()[i];
        written += "<tr>";
        for (std::size_t column = 0; column < row.cells.size(); ++column) {
            data told = told_of_cell(grid, row, column);
            told.set("is_name", !is_blank(row.cells[column]));
            write(forms().head_cell, told, written);
        }
        written += "</tr>";
    }
    return written;
}

object table_of(const Grid& grid, const std::string& name) {
    // On a narrow screen two columns have room; rows of more cells go below each other.
    object table{{"name", name}, {"body", body_of(grid)}, {"stack", grid.columns().size() > 2}};
    if (grid.head_rows() > 0) {
        table.emplace("head", holding("rows", head_of(grid)));
    }
    return table;
}

/// The names of one verdict, each a link where the page shows its check.
object named_of(const core::NamedVerdict& verdict, const std::string& scope,
                const Anchors& anchors) {
    list names;
    for (const core::NamedCheck& check : verdict.checks) {
        object name{{"title", text::printable(check.title)},
                    {"is_last", &check == &verdict.checks.back()}};
        if (const auto anchor = anchors.of(scope, verdict.verdict, check.id)) {
            name["link"] = object{{"anchor", *anchor}};
        }
        names.push_back(name);
    }
    return {{"heading", verdict.heading}, {"names", names}};
}

object headline_of(const Headline& headline, const Anchors& anchors) {
    list named;
    for (const core::NamedVerdict& verdict : headline.named) {
        named.push_back(named_of(verdict, headline.scope, anchors));
    }
    return {{"counts", headline.counts}, {"role", role_of(headline.state)}, {"named", named}};
}

object checks_of(const CheckList& checks, const Anchors& anchors) {
    std::string rows;
    for (const CheckRow& row : checks.rows) {
        data told;
        told.set("anchor", anchors.of(row));
        told.set("role", role_of(row.verdict));
        told.set("verdict", printed_verdict(row.verdict));
        told.set("title", row.title);
        told.set("id", row.id);
        told.set("told", row.told());
        write(forms().check, told, rows);
    }
    object table = holding("rows", rows);
    if (checks.folded) {
        table.emplace("fold", holding("count", held_text(checks)));
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
    std::string spots;
    for (const Spot& spot : figure.spots) {
        data told;
        told.set("x", spot.x);
        told.set("y", spot.y);
        told.set("role", spot.role);
        told.set("meaning", spot.meaning);
        write(forms().spot, told, spots);
    }
    list labels;
    for (const Label& label : figure.labels) {
        labels.push_back(
            object{{"x", label.x}, {"y", label.y}, {"text", label.text}, {"anchor", label.anchor}});
    }
    list key;
    for (const KeyEntry& entry : figure.key) {
        key.push_back(
            object{{"role", entry.role}, {"spot", entry.is_spot}, {"text", entry.meaning}});
    }
    return {{"caption", figure.caption},
            {"has_key", !figure.key.empty()},
            {"key", key},
            {"width", std::to_string(figure.width)},
            {"height", std::to_string(figure.height)},
            {"areas", areas},
            {"lines", lines},
            {"spots", spots},
            {"labels", labels}};
}

/// The blocks of one section as they are written, paragraphs that are items of a list gathered into
/// lists.
class Blocks {
public:
    Blocks(std::string name, const Anchors& anchors)
        : name_(std::move(name))
        , anchors_(&anchors) {}

    void add(const Block& block) { std::visit(*this, block); }

    void operator()(const Heading&) {}
    void operator()(const Headline& headline) {
        push("headline", headline_of(headline, *anchors_));
    }
    void operator()(const CheckList& checks) { push("checks", checks_of(checks, *anchors_)); }
    void operator()(const Paragraph& paragraph) {
        if (paragraph.text_only) {
            return;
        }
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
        if (!verbatim.text_only && !is_blank(verbatim.text)) {
            push("verbatim", object{{"text", verbatim.text}});
        }
    }
    void operator()(const Grid& grid) { push("table", table_of(grid, table_name())); }
    void operator()(const PageTable& table) { (*this)(table.grid); }
    void operator()(const SideBySide& table) { (*this)(table.grid()); }
    void operator()(const Figure& figure) { push("figure", figure_of(figure)); }
    void operator()(const Figures& figures) {
        const Flow made = figures.made();
        for (const Block& figure : made.blocks()) {
            std::visit(*this, figure);
        }
    }
    void operator()(const Drawings& drawings) {
        for (const Drawing& drawing : drawings.drawn()) {
            push("drawing", object{{"svg", drawing.svg}, {"caption", drawing.caption}});
        }
    }

    std::string all() {
        end_list();
        return written_;
    }

private:
    void push(const std::string& kind, const object& block) {
        end_list();
        write(kind, block);
    }
    void write(const std::string& kind, const object& block) {
        report::write(forms().blocks.at(kind), block, written_);
    }
    /// A reader who hears the page tells one table of a section from the other.
    std::string table_name() {
        ++tables_;
        return tables_ == 1 ? name_ : name_ + ", part " + std::to_string(tables_);
    }
    void end_list() {
        end_items();
        end_steps();
    }
    void end_items() {
        if (!items_.empty()) {
            write("items", holding("item", std::exchange(items_, {})));
        }
    }
    void end_steps() {
        if (!steps_.empty()) {
            write("steps", holding("step", std::exchange(steps_, {})));
        }
    }

    std::string name_;
    const Anchors* anchors_;
    int tables_ = 0;
    std::string written_;
    list items_;
    list steps_;
};

/// Whether a block says the title again, which the page has as its heading.
bool is_title(const Block& block, const std::string& title) {
    const auto* said = std::get_if<Paragraph>(&block);
    return said && said->text == title;
}

/// A heading with what stands below it.
struct PageSection {
    Heading heading;
    std::string blocks; ///< as they are written
};

std::vector<PageSection> sections_of(const Flow& flow, const std::string& title) {
    const Anchors anchors{flow};
    std::vector<PageSection> sections;
    Heading current{title};
    Blocks blocks{title, anchors};
    for (const Block& block : flow.blocks()) {
        if (const auto* heading = std::get_if<Heading>(&block)) {
            sections.push_back({current, blocks.all()});
            current = *heading;
            blocks = Blocks{current.text, anchors};
        } else if (!sections.empty() || !is_title(block, title)) {
            blocks.add(block);
        }
    }
    sections.push_back({current, blocks.all()});
    return sections;
}

list inputs_of(const InputFiles& inputs) {
    list files;
    for (const InputFile& input : inputs) {
        files.push_back(object{{"file", shown_name(input)}, {"sha256", input.sha256}});
    }
    return files;
}

} // namespace

std::string html_of(const Flow& flow, const PageWords& words) {
    const std::string title = text::printable(words.title);
    const auto sections = sections_of(flow, title);
    list below;
    for (auto section = sections.begin() + 1; section != sections.end(); ++section) {
        below.push_back(object{{"name", section->heading.text},
                               {"folded", section->heading.folded},
                               {"wide", section->heading.whole_width},
                               {"screen", section->heading.screen_only},
                               {"blocks", section->blocks}});
    }
    data all;
    all.set("title", title);
    all.set("command", words.command);
    all.set("program", program_text());
    all.set("inputs", inputs_of(words.inputs));
    all.set("hash", style_hash);
    all.set("opening", sections.front().blocks);
    all.set("sections", below);
    all.set("style", page_style);
    if (words.one_sheet) {
        all.set("one_sheet",
                object{{"sheet_hash", one_sheet_style_hash}, {"sheet_style", one_sheet_style}});
    }
    std::string page;
    write(forms().page, all, page);
    return page;
}

} // namespace boardmark::report
