#pragma once

#include "grid.hpp"

#include <string>
#include <vector>

namespace boardmark::report {

/// A table of many columns under one column of names: where it is wider than the page, the columns
/// go on in a further block below.
class SideBySide {
public:
    /// The heads of the columns; the name stands above the names.
    SideBySide(std::string name, std::vector<std::string> heads);

    /// A row has a cell for each column.
    void add(std::string name, std::vector<std::string> cells);

    /// A line that heads the rows below it, after an empty one.
    void add_heading(std::string name);

    std::string text(std::size_t width = page_width) const;

    /// All columns beside each other, for a page that scrolls.
    Grid grid() const;

private:
    struct Row {
        std::string name;
        std::vector<std::string> cells; ///< none: a heading
    };

    std::size_t widest_name() const;
    std::size_t widest_cell() const;
    std::string block(std::size_t first, std::size_t count) const;

    std::vector<Row> rows_;
    std::size_t columns_;
};

} // namespace boardmark::report
