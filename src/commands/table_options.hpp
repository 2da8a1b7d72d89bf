#pragma once

#include "arguments.hpp"

#include <cstddef>
#include <optional>

namespace boardmark::commands {

constexpr std::string_view formats_with_row[] = {"text", "json", "csv", "html", "row"};

// The options of the commands that take a table of mixes in place of a file.
constexpr Option row_format_option{"format", "text|json|csv|html|row",
                                   "format of the result (default text); row: one line of CSV",
                                   formats_with_row};
constexpr Option table_option{"table", "FILE",
                              "in place of MIX: a CSV table, whose rows change a base mix"};
constexpr Option base_option{"base", "FILE", "with --table: the mix file that its rows change"};
constexpr Option rows_option{"rows", "A..B", "with --table: these rows alone; the first is 1"};
constexpr Option table_threads_option{
    "threads", "N", "with --table: threads at work (default: those of the machine)"};

/// What help and manual say of tables, behind a command's own notes.
constexpr std::string_view table_notes =
    "A table's header names keys of the mix file with their units, 'requirements.strength [psi]'; "
    "an\nempty cell leaves the value of the base mix. Each row becomes the line that '--format "
    "row' "
    "gives\nof that mix alone; its last column says what is wrong. 'boardmark help row' lists the "
    "columns.";

/// Rows of a table by their numbers, both ends included.
struct RowRange {
    std::size_t first = 1;
    std::size_t last;
};

/// What `--rows` asks, or all of them. Throws Failure where it is wrong.
RowRange rows_asked(const Arguments& arguments);

/// Throws Failure where an option that goes with a table stands without one, or one that does not
/// go with it beside it.
void demand_fitting_table_options(const Arguments& arguments);

/// Threads that `--threads` asks for, or those of the machine. Throws Failure where it is wrong.
unsigned threads_asked(const Arguments& arguments);

} // namespace boardmark::commands
