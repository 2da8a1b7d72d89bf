#pragma once

#include <boardmark/report/comparison_report.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::report {

/// Which end of a row is the better one.
enum class Better { lower, higher, neither };

/// A figure of a column in the units shown; text where it is no plain number.
struct ComparisonCell {
    std::optional<double> value;
    std::string text; ///< "-" where there is none
};

/// One figure of every column.
struct ComparisonRow {
    std::string name;
    std::string unit; ///< may be empty
    Better better = Better::neither;
    std::vector<ComparisonCell> cells;

    bool is_equal() const;
    /// The columns that share the best value where not all do; none where one is missing.
    std::vector<std::size_t> best() const;
};

std::vector<ComparisonRow> comparison_rows(const ComparisonResult& result, core::UnitSystem system);

/// "7.0": the amount alone, or "at least 7.0".
std::string sum_text(double amount, const core::PartialSum& sum, int decimals);

} // namespace boardmark::report
