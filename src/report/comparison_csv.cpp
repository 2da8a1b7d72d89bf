#include <boardmark/report/comparison_report.hpp>

#include "comparison_rows.hpp"
#include "csv_parts.hpp"

namespace boardmark::report {

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
        std::vector<std::string> cells{csv_cell(row.name), csv_cell(row.unit)};
        for (const ComparisonCell& cell : row.cells) {
            cells.push_back(cell.text == "-" ? "" : cell.text);
        }
        text += csv_row(cells);
    }
    return text;
}

} // namespace boardmark::report
