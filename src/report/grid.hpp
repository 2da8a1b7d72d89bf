#pragma once

#include <string>
#include <vector>

namespace boardmark::report {

enum class Align { left, right };

/// Columns of text that line up; the last column breaks over lines so that the grid fits the page.
class Grid {
public:
    explicit Grid(std::vector<Align> columns);

    void add(std::vector<std::string> cells);
    std::string text() const;

private:
    std::vector<std::size_t> widths() const;

    std::vector<Align> columns_;
    std::vector<std::vector<std::string>> rows_;
};

} // namespace boardmark::report
