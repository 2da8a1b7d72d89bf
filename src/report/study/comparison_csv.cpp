#include <boardmark/report/study/comparison_report.hpp>
#include <boardmark/report/writing/words.hpp>

#include "../writing/csv_cells.hpp"
#include "comparison_rows.hpp"

#include <algorithm>

namespace boardmark::report {
namespace {

std::string yes_or_no(bool yes) {
    return yes ? "yes" : "no";
}

/// One row: a name, a unit, a cell for each of a list.
template <class List, class CellOf>
void add_row(std::string& text, const std::string& name, const std::string& unit, const List& list,
             CellOf cell_of) {
    std::vector<std::string> cells{csv_cell(name), csv_cell(unit)};
    for (const auto& one : list) {
        cells.push_back(cell_of(one));
    }
    text += csv_row(cells);
}

} // namespace

std::string csv(const ComparisonResult& result, core::UnitSystem system) {
    std::vector<std::string> header{"figure", "unit"};
    for (const core::ComparedMix& column : result.columns) {
        header.push_back(csv_cell(column.label));
    }
    std::string text = csv_row(header);
    for (const ComparisonRow& row : comparison_rows(result, system)) {
        if (result.only_different && row.is_equal()) {
            continue;
        }
        add_row(text, row.name, row.unit, row.cells,
                [](const ComparisonCell& cell) { return csv_cell(cell.value); });
        const bool any_bound = std::ranges::any_of(row.cells, &ComparisonCell::at_least);
        if (any_bound) {
            add_row(text, row.name + " is at least that", "", row.cells,
                    [](const ComparisonCell& cell) {
                        return cell.value ? yes_or_no(cell.at_least) : std::string{};
                    });
        }
    }
    add_row(text, "cost is not known because", "", result.columns,
            [&](const core::ComparedMix& column) {
                return column.no_cost ? csv_cell(words(*column.no_cost, system)) : std::string{};
            });
    add_row(text, "slump is an estimate", "", result.columns, [](const core::ComparedMix& column) {
        return column.proportions && column.slump.mm ? yes_or_no(column.slump.estimate)
                                                     : std::string{};
    });
    add_row(text, "may be chosen", "", result.columns,
            [](const core::ComparedMix& column) { return yes_or_no(column.may_be_chosen()); });
    add_row(text, "cannot be made", "", result.columns, [&](const core::ComparedMix& column) {
        return column.unresolved ? csv_cell(words(column.unresolved->what, system)) : std::string{};
    });
    return text;
}

} // namespace boardmark::report
