#pragma once

#include <boardmark/core/checks/check.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::report {

enum class Align { left, right };

/// Columns of text that line up; the last column breaks over lines so that the grid fits the page.
class Grid {
public:
    struct Row {
        std::vector<std::string> cells;
        std::optional<core::Verdict> verdict = {}; ///< that the first cell names
    };

    explicit Grid(std::vector<Align> columns);

    /// The names of the columns.
    void head(std::vector<std::string> cells);
    void add(std::vector<std::string> cells);
    /// A row whose first cell is a verdict.
    void add(core::Verdict verdict, std::vector<std::string> cells);

    std::string text(bool colour = false) const;

    const std::vector<Align>& columns() const { return columns_; }
    const std::vector<Row>& rows() const { return rows_; }
    std::size_t head_rows() const { return head_rows_; }

private:
    std::vector<std::size_t> widths() const;

    std::vector<Align> columns_;
    std::vector<Row> rows_;
    std::size_t head_rows_ = 0; ///< how many of the first rows name the columns
};

} // namespace boardmark::report
