#pragma once

#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/checks/finding.hpp>
#include <boardmark/core/mix/any_mix.hpp>
#include <boardmark/core/mix/proportions.hpp>
#include <boardmark/core/mix/requirements.hpp>

#include <string>
#include <string_view>
#include <vector>

namespace boardmark::report {

/// A mix as one row for a spreadsheet or a script: figures and verdicts, no sentences.
struct RowResult {
    const std::string& title;
    const core::Requirements& requirements;
    const core::Proportions& proportions;
    const std::vector<core::Finding>& findings;
};

/// What a column of a row holds.
struct DescribedColumn {
    std::string_view name;
    std::string_view us_unit; ///< empty: none
    std::string_view si_unit;
    std::string_view meaning;
};

/// The columns, the same for every mix; `mass.*` stands for one of each ingredient.
std::vector<DescribedColumn> row_columns();

/// The ingredients of a mix that have a mass, in the order of a result.
std::vector<std::string> row_ingredients(const core::AnyCompleteMix& mix);

/// Writes rows with the masses of the same ingredients in the same units (RFC 4180).
class RowWriter {
public:
    RowWriter(std::vector<std::string> ingredients, core::UnitSystem system);

    /// The names of the columns with their units.
    std::string header() const;

    /// Throws where a figure is not finite: a fault of the program.
    std::string row(const RowResult& result) const;

    /// The row of a mix that does not follow.
    std::string row(const std::string& title, const core::Requirements& requirements,
                    const core::Unresolved& unresolved) const;

    /// A row that holds nothing but why there is no mix.
    std::string row_of_error(const std::string& error) const;

private:
    std::string empty_cells(std::size_t count) const;

    std::vector<std::string> ingredients_;
    core::UnitSystem system_;
};

} // namespace boardmark::report
