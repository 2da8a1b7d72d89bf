#pragma once

#include <boardmark/core/mix/mix.hpp>
#include <boardmark/core/strength/recorded.hpp>
#include <boardmark/input/gate/diagnostic.hpp>

#include <cstddef>
#include <string>
#include <vector>

namespace boardmark::input {

/// The most bytes that a CSV file may have.
constexpr std::size_t largest_csv_file = std::size_t{8} * 1024 * 1024;

/// Rows of a record from a CSV file: trials, or specimens.
struct RowsReading {
    bool sound = false; ///< whether every row could be read; else there are none
    core::UnitSystem system = core::UnitSystem::si; ///< us where any column is in such units
    std::vector<core::RecordedTrial> trials;
    std::vector<core::RecordedSpecimen> specimens;
    std::vector<Diagnostic> places; ///< for each row, its name underlined; the message is empty
    Diagnostics diagnostics;
};

/// Reads a CSV file such as a record exports: a header that names columns and their units, then one
/// row for each trial, or for each specimen. A file with a column `specimen` holds specimens.
/// Columns may stand in any order, in any unit of the right dimension; those that are not required
/// may be left out. Every error of the file is found in one run.
RowsReading read_rows(std::string text, std::string file);

} // namespace boardmark::input
