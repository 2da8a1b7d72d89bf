#pragma once

#include <string>
#include <utility>
#include <vector>

namespace boardmark::core {

/// A column of a table as a user's file prints it: named, or at a size of stone.
struct PrintedColumn {
    std::string name;
    double at_mm; ///< NaN where it is named
};

/// A row: figures in the library's inside units, NaN for a gap, and whatever else stands beside it.
struct PrintedRow {
    std::string name;
    std::string group;
    std::vector<double> cells;
    std::string citation;
    bool from_memory;
    std::vector<std::pair<std::string, std::string>> notes;
};

/// One table of a code, in the form that the tables of data/ have.
struct PrintedTable {
    std::string subject; ///< "exposure", "air"
    std::string citation;
    bool from_memory;
    std::vector<PrintedColumn> columns;
    std::vector<PrintedRow> rows;
};

/// A code that a file of the user's holds, table by table.
struct PrintedCode {
    std::string name;
    std::vector<PrintedTable> tables;
};

} // namespace boardmark::core
