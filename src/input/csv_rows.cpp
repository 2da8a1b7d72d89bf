#include "csv_rows.hpp"

#include <boardmark/text/utf8.hpp>

#include "gate.hpp"

#include <algorithm>
#include <string_view>

namespace boardmark::input {
namespace {

constexpr std::size_t most_rows = 5000;

void refuse(const SourceText& source, Underline where, std::string what, std::string advice,
            Diagnostics& diagnostics) {
    diagnostics.push_back(source.diagnostic(where, std::move(what), std::move(advice)));
}

/// A cell and where the next one begins.
struct Cell {
    std::string text;
    std::size_t begin;
    std::size_t end; ///< behind its last byte, at a comma or the end of the line
    bool closed = true;
};

Cell quoted_cell(std::string_view line, std::size_t begin) {
    Cell cell{.text = {}, .begin = begin, .end = begin + 1, .closed = false};
    while (cell.end < line.size()) {
        const char character = line[cell.end++];
        if (character != '"') {
            cell.text += character;
        } else if (cell.end < line.size() && line[cell.end] == '"') {
            cell.text += '"';
            ++cell.end;
        } else {
            const std::size_t next = line.find_first_not_of(' ', cell.end);
            cell.end = next == std::string_view::npos ? line.size() : next;
            cell.closed = cell.end == line.size() || line[cell.end] == ',';
            return cell;
        }
    }
    return cell;
}

Cell plain_cell(std::string_view line, std::size_t begin) {
    const std::size_t end = std::min(line.find(',', begin), line.size());
    std::string_view text = line.substr(begin, end - begin);
    text.remove_suffix(text.size() - (text.find_last_not_of(" \t") + 1));
    return {.text = std::string{text}, .begin = begin, .end = end};
}

std::optional<CsvRow> read_row(const SourceText& source, std::size_t number,
                               Diagnostics& diagnostics) {
    std::string_view line = source.line(number);
    if (line.ends_with('\r')) {
        line.remove_suffix(1);
    }
    CsvRow row;
    for (std::size_t at = 0; at <= line.size();) {
        const std::size_t begin = std::min(line.find_first_not_of(" \t", at), line.size());
        const bool quoted = begin < line.size() && line[begin] == '"';
        const Cell cell = quoted ? quoted_cell(line, begin) : plain_cell(line, begin);
        if (!cell.closed) {
            refuse(source, {{number, begin}, 1, 0}, "a quoted cell does not end on its line",
                   "close it with '\"' before the comma", diagnostics);
            return std::nullopt;
        }
        Node node;
        node.kind = cell.text.empty() ? Node::Kind::empty : Node::Kind::scalar;
        node.source = &source;
        node.spot = {number, cell.begin};
        node.length = std::max<std::size_t>(cell.end - cell.begin, 1);
        node.quoted = quoted;
        node.scalar = cell.text;
        row.push_back(std::move(node));
        at = cell.end + 1;
    }
    return row;
}

/// What no table has: more bytes than are read, a control character, broken UTF-8.
bool refuse_foreign_bytes(const SourceText& source, Diagnostics& diagnostics) {
    const std::string& text = source.text();
    if (text.size() > largest_file) {
        refuse(source, {}, "the file is larger than 1 MiB", "split it", diagnostics);
        return true;
    }
    auto byte = text::first_invalid_byte(text);
    if (!byte) {
        byte = text::first_control_character(text);
    }
    if (byte) {
        refuse(source, {source.spot_of(*byte), 1, 0},
               "a byte stands here that is no part of a table in UTF-8",
               "save the table as CSV in UTF-8", diagnostics);
    }
    return byte.has_value();
}

} // namespace

std::optional<std::vector<CsvRow>> read_csv(const SourceText& source, Diagnostics& diagnostics) {
    if (refuse_foreign_bytes(source, diagnostics)) {
        return std::nullopt;
    }
    std::vector<CsvRow> rows;
    for (std::size_t number = 0; number < source.line_count(); ++number) {
        if (source.line(number).find_first_not_of(" \t\r") == std::string_view::npos) {
            continue;
        }
        if (rows.size() > most_rows) {
            refuse(source, {{number, 0}, 1, 0}, "the table has more than 5000 rows", "split it",
                   diagnostics);
            return std::nullopt;
        }
        auto row = read_row(source, number, diagnostics);
        if (!row) {
            return std::nullopt;
        }
        rows.push_back(std::move(*row));
    }
    return rows;
}

} // namespace boardmark::input
