#pragma once

#include <boardmark/core/checks/check.hpp>
#include <boardmark/report/writing/text_style.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::report {

enum class Align { left, right };

/// Columns of text that line up; the last column breaks over lines so that the grid fits the page.
/// Where that is not enough, columns go on in a block below, names repeated, and a last column of
/// words stands under its row.
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

    /// Gives the ratios of a column one precision: zeros that `shown` left off come back.
    void even_out(std::size_t column);

    std::string text(std::size_t width = page_width, bool colour = false) const;

    /// Columns that the grid takes where nothing is broken.
    std::size_t natural_width() const;

    const std::vector<Align>& columns() const { return columns_; }
    const std::vector<Row>& rows() const { return rows_; }
    std::size_t head_rows() const { return head_rows_; }

private:
    /// Columns that stand beside each other under the first one, `begin` to before `end`.
    struct Block {
        std::size_t begin;
        std::size_t end;
    };

    std::vector<std::size_t> widths() const;
    bool has_words_last() const { return columns_.back() == Align::left; }
    std::vector<Block> blocks(const std::vector<std::size_t>& widest, std::size_t width) const;
    std::string beside(const Row& row, Block block, const std::vector<std::size_t>& widest,
                       bool colour) const;
    std::string one_block(const std::vector<std::size_t>& widest, std::size_t width,
                          bool colour) const;
    static std::string with_words(const std::string& others, const std::string& words,
                                  std::size_t widest_words, std::size_t width);
    std::vector<std::size_t> with_room_beside_first(std::vector<std::size_t> widest,
                                                    std::size_t width) const;
    static std::string lines_before(Row& row, std::size_t first_width);
    std::string several_blocks(const std::vector<std::size_t>& natural, std::size_t width,
                               bool colour) const;

    std::vector<Align> columns_;
    std::vector<Row> rows_;
    std::size_t head_rows_ = 0; ///< how many of the first rows name the columns
};

} // namespace boardmark::report
