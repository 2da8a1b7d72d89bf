#include <boardmark/report/study/comparison_report.hpp>
#include <boardmark/report/writing/words.hpp>
#include <boardmark/text/utf8.hpp>

#include "../writing/check_merger.hpp"
#include "../writing/flow.hpp"
#include "../writing/grid.hpp"
#include "../writing/html.hpp"
#include "../writing/quantity_format.hpp"
#include "../writing/text_sections.hpp"
#include "../writing/trace.hpp"
#include "../writing/verdicts.hpp"
#include "../writing/wrap.hpp"
#include "comparison_reasons.hpp"
#include "comparison_rows.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::report {
namespace {

constexpr std::size_t most_columns_of_a_block = 4;
constexpr std::size_t widest_label = 16;

/// A label that fits its column; its end is kept, where files of one project differ.
std::string column_label(const std::string& label) {
    const std::string harmless = text::printable(label);
    const std::size_t width = text::display_width(harmless);
    if (width <= widest_label) {
        return harmless;
    }
    const std::size_t cut = text::beginning(harmless, width - widest_label + 2).size();
    return ".." + harmless.substr(cut);
}

Flow heading(const ComparisonResult& result, const TextStyle& style) {
    const std::string what = result.is_study
                                 ? "What the high-range water reducer buys"
                                 : fmt::format("{} mixes side by side", result.columns.size());
    const Flow text =
        paragraph(text::printable(result.title), {}) + file_line(result.inputs) +
        paragraph(what + (style.system == core::UnitSystem::us ? ", for 1 yd3" : ", for 1 m3"), {});
    return result.is_study ? text + "\n" + paragraph("The mix as written:", {}) +
                                 verdict_line(result.checks, style.system)
                           : text + "\n" + verdict_line(verdicts_of(result), style.system);
}

/// The best cell of a row carries the word where whole mixes compete.
std::vector<std::string> cells_of(const ComparisonRow& row, const ComparisonResult& result) {
    std::vector<std::string> cells;
    for (const ComparisonCell& cell : row.cells) {
        cells.push_back(cell.text);
    }
    if (!result.is_study) {
        for (const std::size_t best : row.best(result.columns)) {
            cells[best] = "best " + cells[best];
        }
    }
    return cells;
}

/// The columns from `first` up to, not including, `end`.
Grid block(const ComparisonResult& result, const std::vector<ComparisonRow>& rows,
           std::size_t first, std::size_t end) {
    std::vector<Align> alignment(end - first + 1, Align::right);
    alignment.front() = Align::left;
    Grid grid{alignment};
    std::vector<std::string> labels{""};
    for (std::size_t i = first; i < end; ++i) {
        labels.push_back(column_label(result.columns[i].label));
    }
    grid.head(labels);
    for (const ComparisonRow& row : rows) {
        const auto cells = cells_of(row, result);
        std::vector<std::string> line{row.unit.empty() ? row.name : row.name + ", " + row.unit};
        line.insert(line.end(), cells.begin() + static_cast<std::ptrdiff_t>(first),
                    cells.begin() + static_cast<std::ptrdiff_t>(end));
        grid.add(line);
    }
    return grid;
}

std::vector<Grid> blocks(const ComparisonResult& result, const std::vector<ComparisonRow>& rows,
                         std::size_t in_a_block) {
    std::vector<Grid> grids;
    for (std::size_t first = 0; first < result.columns.size(); first += in_a_block) {
        const std::size_t end = std::min(first + in_a_block, result.columns.size());
        grids.push_back(block(result, rows, first, end));
    }
    return grids;
}

/// As many columns beside each other as fit, at least one.
std::vector<Grid> fitting_blocks(const ComparisonResult& result,
                                 const std::vector<ComparisonRow>& rows, std::size_t width) {
    const auto fits = [&](const Grid& grid) { return grid.natural_width() <= width; };
    std::size_t in_a_block = most_columns_of_a_block;
    auto grids = blocks(result, rows, in_a_block);
    while (in_a_block > 1 && !std::ranges::all_of(grids, fits)) {
        grids = blocks(result, rows, --in_a_block);
    }
    return grids;
}

Flow text_of_figures(const ComparisonResult& result, const TextStyle& style) {
    auto rows = comparison_rows(result, style.system);
    if (result.only_different) {
        std::erase_if(rows, [](const ComparisonRow& row) { return row.is_equal(); });
        if (rows.empty()) {
            return "  no figure differs\n";
        }
    }
    Flow text;
    for (const Grid& grid : fitting_blocks(result, rows, style.width)) {
        text += text.blocks().empty() ? Flow{grid} : Flow{"\n"} + grid;
    }
    return text;
}

/// Sentences about columns. One that is true of several columns stands once, after their names.
class Remarks {
public:
    void add(const std::string& label, std::string words) {
        const auto told = std::ranges::find(remarks_, words, &Remark::words);
        Remark& remark =
            told == remarks_.end() ? remarks_.emplace_back(Remark{std::move(words), {}}) : *told;
        const std::string name = text::printable(label);
        if (std::ranges::count(remark.labels, name) == 0) {
            remark.labels.push_back(name);
        }
    }

    Flow text() const {
        Flow text;
        for (const Remark& remark : remarks_) {
            text += paragraph(fmt::format("{}: {}", fmt::join(remark.labels, ", "), remark.words),
                              list_item);
        }
        return text;
    }

private:
    struct Remark {
        std::string words;
        std::vector<std::string> labels;
    };
    std::vector<Remark> remarks_;
};

/// The materials of a sum that have no figure, or those whose dose alone is not known.
std::string missing_text(const core::PartialSum& sum, bool undosed) {
    std::string names;
    for (const std::string& name : sum.missing) {
        if ((std::ranges::count(sum.undosed, name) > 0) == undosed) {
            names += (names.empty() ? "" : ", ") + text::printable(name);
        }
    }
    return names;
}

/// What is missing in a sum, "cost": the figure of a material, or the dose alone.
void add_missing(const std::string& label, const core::PartialSum& sum, const char* no_figure,
                 const char* what, Remarks& remarks) {
    if (const std::string names = missing_text(sum, false); !names.empty()) {
        remarks.add(label, fmt::format(fmt::runtime(no_figure), names));
    }
    if (const std::string names = missing_text(sum, true); !names.empty()) {
        remarks.add(label, fmt::format("{} dosed as needed, so not in its {}", names, what));
    }
}

/// What is missing in the sums of a column.
void add_missing(const core::ComparedMix& column, const std::string& currency, Remarks& remarks) {
    if (column.cost && column.cost->currency != currency) {
        remarks.add(column.label, fmt::format("its cost is in {}, not set beside the {} of others",
                                              column.cost->currency, currency));
    }
    if (column.cost && !column.cost->sum.is_whole()) {
        add_missing(column.label, column.cost->sum, "no price of {} that can be counted", "cost",
                    remarks);
    }
    if (column.carbon && !column.carbon->is_whole()) {
        add_missing(column.label, *column.carbon, "no carbon figure of {}", "carbon", remarks);
    }
}

Flow text_of_remarks(const ComparisonResult& result, core::UnitSystem system) {
    Remarks remarks;
    for (const core::ComparedMix& column : result.columns) {
        if (column.unresolved) {
            remarks.add(column.label, "cannot be made: " + words(column.unresolved->what, system) +
                                          ". " +
                                          words(column.unresolved->ways_out.front(), system));
        }
        // Of several mixes the checks stand in a section of their own.
        for (const core::Check& check :
             result.is_study ? column.checks : std::vector<core::Check>{}) {
            if (check.verdict == core::Verdict::fails) {
                const CheckRow row = row_of(check, system);
                remarks.add(column.label,
                            "FAILS " + row.title + " (" + row.id + "): " + row.told());
            }
        }
        for (const core::Phrase& remark : column.remarks) {
            remarks.add(column.label, words(remark, system));
        }
        add_missing(column, currency_of(result.columns), remarks);
    }
    return remarks.text();
}

/// Of the mix as written; of several mixes those of all.
Flow text_of_compared_checks(const ComparisonResult& result, core::UnitSystem system) {
    if (result.is_study) {
        return section("CHECKS of the mix as written") + text_of_checks(result.checks, system);
    }
    CheckMerger checks;
    for (const core::ComparedMix& column : result.columns) {
        checks.add(column.label, column.checks, system);
    }
    return section("CHECKS") + checks_of(checks.rows());
}

const std::string how_to_read =
    "Strengths are estimates until they are tested. Heat is the rise in the middle of a thick "
    "section; a thin wall stays below it. Drying shrinkage follows the water: the column with less "
    "water shrinks less. Cost and carbon are of the materials alone, waste included, by the "
    "figures of the file; differences are to the first column.";

} // namespace

Flow flow_of(const ComparisonResult& result, const TextStyle& style) {
    Flow page = heading(result, style);
    page += section("SIDE BY SIDE") + text_of_figures(result, style);
    page += section("WHAT DECIDES") + text_of_cautions(result.summary, style);
    page += text_of_compared_checks(result, style.system);
    if (const Flow remarks = text_of_remarks(result, style.system); !remarks.blocks().empty()) {
        page += section("TO KNOW") + remarks;
    }
    page += section("HOW TO READ IT") + paragraph(how_to_read, {"  ", "  "});
    if (style.explain) {
        page += comparison_reasons(result, style);
        if (result.is_study) {
            page += folded_section("LIMITS, where they come from") + text_of_limits(result.checks);
        }
    }
    return page + section("CAUTIONS") + text_of_cautions(result.cautions, style);
}

std::string text(const ComparisonResult& result, const TextStyle& style) {
    return written(flow_of(result, style), style);
}

std::string html(const ComparisonResult& result, const TextStyle& style) {
    return html_of(flow_of(result, style),
                   {.title = result.title, .command = "compare", .inputs = result.inputs});
}

} // namespace boardmark::report
