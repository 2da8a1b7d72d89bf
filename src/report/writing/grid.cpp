#include "grid.hpp"

#include "colour.hpp"
#include "quantity_format.hpp"
#include "wrap.hpp"

#include <algorithm>

namespace boardmark::report {
namespace {

constexpr std::size_t margin = 2;
constexpr std::size_t column_gap = 2;
constexpr std::size_t narrowest_last_column = 24;
constexpr std::size_t narrowest_first_column = 12;
const std::string no_cell;

/// Of columns beside each other.
std::size_t width_of(const std::vector<std::size_t>& columns) {
    std::size_t all = margin - column_gap;
    for (const std::size_t width : columns) {
        all += column_gap + width;
    }
    return all;
}

std::string without_trailing_spaces(std::string line) {
    line.erase(line.find_last_not_of(' ') + 1);
    return line;
}

} // namespace

Grid::Grid(std::vector<Align> columns)
    : columns_(std::move(columns)) {}

void Grid::head(std::vector<std::string> cells) {
    add(std::move(cells));
    head_rows_ = rows_.size();
}

void Grid::add(std::vector<std::string> cells) {
    rows_.push_back({std::move(cells)});
}

void Grid::add(core::Verdict verdict, std::vector<std::string> cells) {
    rows_.push_back({std::move(cells), verdict});
}

void Grid::even_out(std::size_t column) {
    std::vector<std::string*> cells;
    for (Row& row : rows_) {
        cells.push_back(&row.cells[column]);
    }
    even_ratios(cells);
}

std::vector<std::size_t> Grid::widths() const {
    std::vector<std::size_t> widest(columns_.size(), 0);
    for (const Row& row : rows_) {
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            widest[i] = std::max(widest[i], shown_width(row.cells[i]));
        }
    }
    return widest;
}

std::size_t Grid::natural_width() const {
    return width_of(widths());
}

/// The cells of a block in one line, the first column before them, up to where they end.
std::string Grid::beside(const Row& row, Block block, const std::vector<std::size_t>& widest,
                         bool colour) const {
    std::string line(margin, ' ');
    for (std::size_t i = 0; i < block.end; i = i == 0 ? block.begin : i + 1) {
        const std::string& written = i < row.cells.size() ? row.cells[i] : no_cell;
        const bool is_coloured = colour && row.verdict && i == 0;
        const std::string in_colour = is_coloured ? coloured(written, *row.verdict) : "";
        const std::string& cell = is_coloured ? in_colour : written;
        line += columns_[i] == Align::left ? padded_right(cell, widest[i])
                                           : padded_left(cell, widest[i]);
        line.append(column_gap, ' ');
    }
    return line;
}

std::string Grid::one_block(const std::vector<std::size_t>& widest, std::size_t width,
                            bool colour) const {
    const std::size_t last = columns_.size() - 1;
    std::size_t last_at = margin;
    for (std::size_t i = 0; i < last; ++i) {
        last_at += widest[i] + column_gap;
    }
    std::string result;
    for (const Row& row : rows_) {
        const std::size_t before = row.cells.size() - 1;
        const std::string line =
            before == 0 ? std::string(margin, ' ') : beside(row, {1, before}, widest, colour);
        const auto words = lines_of(row.cells.back(), width - last_at);
        result += without_trailing_spaces(line + (has_words_last()
                                                      ? words.front()
                                                      : padded_left(words.front(), widest[last]))) +
                  "\n";
        for (std::size_t i = 1; i < words.size(); ++i) {
            result += std::string(last_at, ' ') + words[i] + "\n";
        }
    }
    return result;
}

/// The columns but a last one of words, as many in a block as fit.
std::vector<Grid::Block> Grid::blocks(const std::vector<std::size_t>& widest,
                                      std::size_t width) const {
    const std::size_t end = columns_.size() - (has_words_last() ? 1 : 0);
    std::vector<Block> found{{1, 1}};
    std::size_t taken = margin + widest[0];
    for (std::size_t i = 1; i < end; ++i) {
        if (taken + column_gap + widest[i] > width && found.back().begin < i) {
            found.push_back({i, i});
            taken = margin + widest[0];
        }
        found.back().end = i + 1;
        taken += column_gap + widest[i];
    }
    return found;
}

/// The last column of words, beside the others where it has room there, else below them.
std::string Grid::with_words(const std::string& others, const std::string& words,
                             std::size_t widest_words, std::size_t width) {
    const std::size_t taken = shown_width(others);
    const bool has_room = taken + std::min(widest_words, narrowest_last_column) <= width;
    if (has_room && !words.empty()) {
        return wrapped(words, {others, std::string(taken, ' ')}, width);
    }
    const std::string below(margin + 4, ' ');
    const std::string first = without_trailing_spaces(others);
    return (first.empty() ? "" : text::fitted(first, width)) +
           (words.empty() ? "" : wrapped(words, {below, below}, width));
}

/// The widths with a first column that leaves room for any other beside it.
std::vector<std::size_t> Grid::with_room_beside_first(std::vector<std::size_t> widest,
                                                      std::size_t width) const {
    const std::size_t end = columns_.size() - (has_words_last() ? 1 : 0);
    std::size_t beside_first = 0;
    for (std::size_t i = 1; i < end; ++i) {
        beside_first = std::max(beside_first, widest[i] + column_gap);
    }
    if (margin + widest[0] + beside_first > width) {
        const std::size_t left = width - std::min(width, margin + beside_first);
        widest[0] = std::max(left, narrowest_first_column);
    }
    return widest;
}

/// The lines of a first cell too wide for its column but the last, which stays in the row.
std::string Grid::lines_before(Row& row, std::size_t first_width) {
    std::string before;
    auto words = lines_of(row.cells.front(), first_width);
    row.cells.front() = std::move(words.back());
    words.pop_back();
    for (const std::string& line : words) {
        before += std::string(margin, ' ') + line + "\n";
    }
    return before;
}

std::string Grid::several_blocks(const std::vector<std::size_t>& natural, std::size_t width,
                                 bool colour) const {
    std::string result;
    const auto widest = with_room_beside_first(natural, width);
    for (const Block block : blocks(widest, width)) {
        const bool has_words = has_words_last() && block.end + 1 == columns_.size();
        result += result.empty() ? "" : "\n";
        for (Row row : rows_) {
            if (shown_width(row.cells.front()) > widest[0]) {
                result += lines_before(row, widest[0]);
            }
            const std::string others = beside(row, block, widest, colour);
            const bool is_whole = row.cells.size() == columns_.size();
            result += has_words ? with_words(others, is_whole ? row.cells.back() : "",
                                             widest.back(), width)
                                : text::fitted(without_trailing_spaces(others), width);
        }
    }
    return result;
}

std::string Grid::text(std::size_t width, bool colour) const {
    if (rows_.empty()) {
        return "";
    }
    const auto widest = widths();
    const std::size_t others = width_of(widest) - widest.back();
    const std::size_t room =
        has_words_last() ? std::min(widest.back(), narrowest_last_column) : widest.back();
    return others + room <= width || columns_.size() == 1 ? one_block(widest, width, colour)
                                                          : several_blocks(widest, width, colour);
}

} // namespace boardmark::report
