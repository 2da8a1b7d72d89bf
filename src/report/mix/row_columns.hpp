#pragma once

#include <boardmark/core/checks/verdict_summary.hpp>
#include <boardmark/core/mix/footprint.hpp>
#include <boardmark/report/mix/row_report.hpp>

#include <optional>
#include <span>
#include <string>

namespace boardmark::report {

/// What the cells of one row are made from.
struct RowSource {
    const RowResult& result;
    core::VerdictSummary verdict;
    std::optional<core::Cost> cost;
    std::optional<core::PartialSum> carbon;
};

/// A column: its words, and either its text or its figure in the inside unit.
struct RowColumn {
    DescribedColumn described;
    std::string (*text)(const RowSource&) = nullptr;
    std::optional<double> (*figure)(const RowSource&) = nullptr;
};

/// The columns before those of the ingredients.
std::span<const RowColumn> columns_of_figures();

} // namespace boardmark::report
