#include "target.hpp"

#include <boardmark/input/csv/read_rows.hpp>
#include <boardmark/text/utf8.hpp>

#include <csv.h>
#include <nlohmann/json.hpp>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>

namespace boardmark::fuzz {
namespace {

[[noreturn]] void stop(const char* why, const std::string& output) {
    std::fprintf(stderr, "%s:\n%s\n", why, output.c_str());
    std::abort();
}

std::map<std::string, std::string> read_examples() {
    std::map<std::string, std::string> files;
    for (const auto& entry : std::filesystem::directory_iterator{BOARDMARK_SOURCE "/examples"}) {
        std::ifstream file{entry.path(), std::ios::binary};
        files[entry.path().filename().string()] = {std::istreambuf_iterator<char>{file}, {}};
    }
    return files;
}

void count_cell(void*, std::size_t, void* count) {
    ++static_cast<std::pair<std::size_t, std::size_t>*>(count)->first;
}

/// Compares the cells of a row with those of the header.
void end_row(int, void* count) {
    auto& [cells, of_header] = *static_cast<std::pair<std::size_t, std::size_t>*>(count);
    if (of_header != 0 && cells != of_header) {
        std::fputs("rows of several widths\n", stderr);
        std::abort();
    }
    of_header = cells;
    cells = 0;
}

} // namespace

input::Loader example_files() {
    static const std::map<std::string, std::string> files = read_examples();
    return [](const std::string& name) -> std::variant<std::string, input::LoadFailure> {
        const auto found = files.find(name);
        if (found == files.end()) {
            return input::LoadFailure{"there is no such file"};
        }
        return found->second;
    };
}

void demand_text(const std::string& text) {
    if (text::first_invalid_byte(text)) {
        stop("not UTF-8", text);
    }
    if (text::printable_lines(text) != text || text.find_first_of("\r\t") != std::string::npos) {
        stop("it steers the terminal", text);
    }
}

void demand_json(const std::string& json) {
    if (!nlohmann::json::accept(json)) {
        stop("no JSON", json);
    }
}

void demand_csv(const std::string& csv) {
    std::pair<std::size_t, std::size_t> counts{0, 0};
    csv_parser parser{};
    csv_init(&parser, CSV_STRICT | CSV_STRICT_FINI);
    const bool whole = csv_parse(&parser, csv.data(), csv.size(), count_cell, end_row, &counts) ==
                           csv.size() &&
                       csv_fini(&parser, count_cell, end_row, &counts) == 0;
    csv_free(&parser);
    if (!whole) {
        stop("no CSV", csv);
    }
}

void demand_html(const std::string& page) {
    if (!page.starts_with("<!DOCTYPE html>") || page.find("<script") != std::string::npos) {
        stop("no page, or one with a script", page);
    }
}

} // namespace boardmark::fuzz
