#include "table_options.hpp"

#include "failure.hpp"
#include "option_values.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <limits>
#include <thread>

namespace boardmark::commands {
namespace {

constexpr const char* example = "write for example --rows 1..50000";

std::size_t row_number(const std::string& written) {
    constexpr double most_rows = 1e12;
    return static_cast<std::size_t>(read_whole_option({"rows", written}, {1, most_rows}));
}

} // namespace

RowRange rows_asked(const Arguments& arguments) {
    const auto written = arguments.value("rows");
    if (!written) {
        return {.last = std::numeric_limits<std::size_t>::max()};
    }
    const std::size_t dots = written->find("..");
    if (dots == std::string::npos) {
        throw wrong_command_line(fmt::format("--rows: '{}' is not A..B", *written), example);
    }
    const RowRange range{row_number(written->substr(0, dots)),
                         row_number(written->substr(dots + 2))};
    if (range.last < range.first) {
        throw wrong_command_line(fmt::format("--rows: '{}' ends before it begins", *written),
                                 example);
    }
    return range;
}

void demand_fitting_table_options(const Arguments& arguments) {
    if (!arguments.has("table")) {
        for (const char* option : {"base", "rows", "threads"}) {
            if (arguments.has(option)) {
                throw wrong_command_line(
                    fmt::format("--{} goes with --table, a table of mixes", option),
                    "name one with --table FILE, or leave it out");
            }
        }
        return;
    }
    if (!arguments.has("base")) {
        throw wrong_command_line("--table: which mix do its rows change? '--base FILE' is missing",
                                 "name a mix file that is sound by itself");
    }
    for (const char* option : {"w-cm", "volume", "moisture", "resolution", "explain", "all"}) {
        if (arguments.has(option)) {
            throw wrong_command_line(fmt::format("--{} does not go with --table", option),
                                     "leave one of them out");
        }
    }
    const std::string format = arguments.value("format").value_or("row");
    if (format != "row" && format != "csv") {
        throw wrong_command_line("--format: a table becomes rows of CSV, nothing else",
                                 "leave '--format' out");
    }
    if (arguments.value("table") == "-" && arguments.value("base") == "-") {
        throw wrong_command_line("--table and --base cannot both be standard input",
                                 "name a file for one of them");
    }
}

unsigned threads_asked(const Arguments& arguments) {
    constexpr double most_threads = 256;
    const auto written = arguments.value("threads");
    return written
               ? static_cast<unsigned>(read_whole_option({"threads", *written}, {1, most_threads}))
               : std::max(1U, std::thread::hardware_concurrency());
}

} // namespace boardmark::commands
