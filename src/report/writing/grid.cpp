#include "grid.hpp"

#include "colour.hpp"
#include "wrap.hpp"

#include <algorithm>

namespace boardmark::report {
namespace {

constexpr std::size_t margin = 2;
constexpr std::size_t gap = 2;
constexpr std::size_t narrowest_last_column = 24;

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

std::vector<std::size_t> Grid::widths() const {
    std::vector<std::size_t> widest(columns_.size(), 0);
    for (const Row& row : rows_) {
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            widest[i] = std::max(widest[i], shown_width(row.cells[i]));
        }
    }
    return widest;
}

std::string Grid::text(bool colour) const {
    const auto widest = widths();
    std::size_t last_at = margin;
    for (std::size_t i = 0; i + 1 < widest.size(); ++i) {
        last_at += widest[i] + gap;
    }
    const std::size_t room =
        last_at + narrowest_last_column < page_width ? page_width - last_at : narrowest_last_column;
    std::string result;
    for (const Row& row : rows_) {
        std::string line(margin, ' ');
        for (std::size_t i = 0; i + 1 < row.cells.size(); ++i) {
            const bool is_coloured = colour && row.verdict && i == 0;
            const std::string cell =
                is_coloured ? coloured(row.cells[i], *row.verdict) : row.cells[i];
            line += columns_[i] == Align::left ? padded_right(cell, widest[i])
                                               : padded_left(cell, widest[i]);
            line += std::string(gap, ' ');
        }
        const auto last = lines_of(row.cells.back(), room);
        const std::string first = columns_.back() == Align::right
                                      ? padded_left(last.front(), widest.back())
                                      : last.front();
        result += without_trailing_spaces(line + first) + "\n";
        for (std::size_t i = 1; i < last.size(); ++i) {
            result += std::string(last_at, ' ') + last[i] + "\n";
        }
    }
    return result;
}

} // namespace boardmark::report
