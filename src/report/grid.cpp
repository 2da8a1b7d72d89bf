#include "grid.hpp"

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

void Grid::add(std::vector<std::string> cells) {
    rows_.push_back(std::move(cells));
}

std::vector<std::size_t> Grid::widths() const {
    std::vector<std::size_t> widest(columns_.size(), 0);
    for (const auto& row : rows_) {
        for (std::size_t i = 0; i < row.size(); ++i) {
            widest[i] = std::max(widest[i], shown_width(row[i]));
        }
    }
    return widest;
}

std::string Grid::text() const {
    const auto widest = widths();
    std::size_t last_at = margin;
    for (std::size_t i = 0; i + 1 < widest.size(); ++i) {
        last_at += widest[i] + gap;
    }
    const std::size_t room =
        last_at + narrowest_last_column < page_width ? page_width - last_at : narrowest_last_column;
    std::string result;
    for (const auto& row : rows_) {
        std::string line(margin, ' ');
        for (std::size_t i = 0; i + 1 < row.size(); ++i) {
            line += columns_[i] == Align::left ? padded_right(row[i], widest[i])
                                               : padded_left(row[i], widest[i]);
            line += std::string(gap, ' ');
        }
        const auto last = lines_of(row.back(), room);
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
