#pragma once

#include <boardmark/report/study/comparison_report.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::report {

/// Whether less of a figure is better.
enum class Better { lower, neither };

/// A figure of a column: the number in the units shown, unrounded, and as text.
struct ComparisonCell {
    std::optional<double> value;
    std::string text;      ///< "-" where there is none
    bool at_least = false; ///< the value is only a lower bound
};

/// One figure of every column.
struct ComparisonRow {
    std::string name;
    std::string unit; ///< may be empty
    Better better = Better::neither;
    std::vector<ComparisonCell> cells;
    std::string key = {}; ///< in JSON; empty where no column can be best

    bool is_equal() const;
    /// The columns that show the best value of those that may be chosen; none where a value of
    /// those is missing, where they are asked different things and where all of them are equal.
    std::vector<std::size_t> best(const std::vector<core::ComparedMix>& columns) const;
};

std::vector<ComparisonRow> comparison_rows(const ComparisonResult& result, core::UnitSystem system);

/// The currency of the cost row, that of the first column with a cost; empty where none has.
std::string currency_of(const std::vector<core::ComparedMix>& columns);

/// An amount of 1 m3 as that of the volume shown: 1 yd3 or 1 m3.
double per_unit(double per_m3, core::UnitSystem system);

/// "7.0": the amount alone, or "at least 7.0".
std::string sum_text(double amount, const core::PartialSum& sum, int decimals);

} // namespace boardmark::report
