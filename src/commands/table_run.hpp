#pragma once

#include <boardmark/input/mix/read_mix.hpp>

#include "arguments.hpp"
#include "exit_code.hpp"

namespace boardmark::commands {

/// `--table`: reads, works out and writes a table of mixes row by row, in memory that does not grow
/// with it. Throws Failure where the command line, the base mix or the header is wrong; the errors
/// of rows stand in their last column.
ExitCode run_table(input::Purpose purpose, const Arguments& arguments);

} // namespace boardmark::commands
