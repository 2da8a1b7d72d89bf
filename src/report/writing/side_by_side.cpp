#include "side_by_side.hpp"

#include "wrap.hpp"

#include <algorithm>

namespace boardmark::report {
namespace {

constexpr std::size_t margin = 2;
constexpr std::size_t gap = 2;

} // namespace

SideBySide::SideBySide(std::string name, std::vector<std::string> heads)
    : columns_(heads.size()) {
    rows_.push_back({std::move(name), std::move(heads)});
}

void SideBySide::add(std::string name, std::vector<std::string> cells) {
    rows_.push_back({std::move(name), std::move(cells)});
}

void SideBySide::add_heading(std::string name) {
    rows_.push_back({std::move(name), {}});
}

std::size_t SideBySide::widest_name() const {
    std::size_t widest = 0;
    for (const Row& row : rows_) {
        widest = std::max(widest, row.cells.empty() ? 0 : shown_width(row.name));
    }
    return widest;
}

std::size_t SideBySide::widest_cell() const {
    std::size_t widest = 0;
    for (const Row& row : rows_) {
        for (const std::string& cell : row.cells) {
            widest = std::max(widest, shown_width(cell));
        }
    }
    return widest;
}

std::string SideBySide::text(std::size_t width) const {
    const std::size_t room = width - std::min(margin + widest_name(), width);
    const std::size_t fitting = std::max<std::size_t>(room / (gap + widest_cell()), 1);
    std::string text;
    for (std::size_t first = 0; first < columns_; first += fitting) {
        text += (first == 0 ? "" : "\n") + block(first, std::min(fitting, columns_ - first));
    }
    return text;
}

Grid SideBySide::grid() const {
    std::vector<Align> columns(columns_ + 1, Align::right);
    columns.front() = Align::left;
    Grid grid{std::move(columns)};
    for (const Row& row : rows_) {
        std::vector<std::string> cells{row.name};
        cells.insert(cells.end(), row.cells.begin(), row.cells.end());
        cells.resize(columns_ + 1);
        if (&row == &rows_.front()) {
            grid.head(std::move(cells));
        } else {
            grid.add(std::move(cells));
        }
    }
    return grid;
}

std::string SideBySide::block(std::size_t first, std::size_t count) const {
    const std::size_t name_width = widest_name();
    const std::size_t cell_width = widest_cell();
    std::string text;
    for (const Row& row : rows_) {
        if (row.cells.empty()) {
            text += "\n" + std::string(margin, ' ') + row.name + "\n";
            continue;
        }
        std::string line = std::string(margin, ' ') + padded_right(row.name, name_width);
        for (std::size_t i = first; i < first + count; ++i) {
            line += std::string(gap, ' ') + padded_left(row.cells[i], cell_width);
        }
        line.erase(line.find_last_not_of(' ') + 1);
        text += line + "\n";
    }
    return text;
}

} // namespace boardmark::report
