#include "csv_reader.hpp"

#include <boardmark/input/csv/read_rows.hpp>

#include "../gate/encoding.hpp"
#include "../gate/tree_builder.hpp"

#include <csv.h>

#include <new>

namespace boardmark::input {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

/// The cells of one line, while the library goes through it byte by byte.
struct Line {
    const SourceText& source;
    std::size_t number;
    std::size_t start; ///< byte at which the cell begins
    std::size_t at;    ///< byte that the library is given
    std::vector<Node> cells = {};
};

void take_cell(void* text, std::size_t length, void* line_under_way) {
    Line& line = *static_cast<Line*>(line_under_way);
    Node cell;
    cell.kind = Node::Kind::scalar;
    cell.source = &line.source;
    cell.spot = {line.number, line.start};
    cell.length = line.at - line.start;
    cell.quoted = cell.length > 0 && line.source.line(line.number)[line.start] == '"';
    cell.scalar.assign(static_cast<const char*>(text), length);
    line.cells.push_back(std::move(cell));
    line.start = line.at + 1;
}

void take_row(int, void*) {}

/// The library, set so that it neither drops blanks nor ends a row by itself.
class Parser {
public:
    Parser() {
        if (csv_init(&parser_, CSV_STRICT | CSV_STRICT_FINI) != 0) {
            throw std::bad_alloc{};
        }
        const auto none = [](unsigned char) { return 0; };
        csv_set_space_func(&parser_, none);
        csv_set_term_func(&parser_, none);
    }
    ~Parser() { csv_free(&parser_); }
    Parser(const Parser&) = delete;
    Parser& operator=(const Parser&) = delete;

    bool take(char byte, Line& line) {
        return csv_parse(&parser_, &byte, 1, take_cell, take_row, &line) == 1;
    }
    bool end(Line& line) { return csv_fini(&parser_, take_cell, take_row, &line) == 0; }

private:
    csv_parser parser_;
};

bool is_blank(std::string_view line) {
    return line.find_first_not_of(" \t") == std::string_view::npos;
}

} // namespace

std::vector<Node> cells_of(const SourceText& source, std::size_t number) {
    const std::string_view text = source.line(number);
    const bool marked = number == 0 && text.starts_with(byte_order_mark);
    const std::size_t first = marked ? byte_order_mark.size() : 0;
    Line line{.source = source, .number = number, .start = first, .at = first};
    Parser parser;
    for (; line.at < text.size(); ++line.at) {
        if (text[line.at] == '\r') {
            throw Refused{{{number, line.at}}, "there is a lone carriage return here", "delete it"};
        }
        if (!parser.take(text[line.at], line)) {
            throw Refused{{{number, line.start}, line.at + 1 - line.start, line.at - line.start},
                          "there is a quote inside a cell",
                          "put the cell between quotes and double the quotes inside"};
        }
    }
    const std::size_t last = line.start;
    if (!parser.end(line)) {
        throw Refused{{{number, last}, text.size() - last},
                      "the quote is not closed on its line",
                      "write each row on one line"};
    }
    return std::move(line.cells);
}

std::vector<Node> without_blanks(std::vector<Node> row) {
    for (Node& cell : row) {
        if (cell.quoted) {
            continue;
        }
        const std::size_t first = cell.scalar.find_first_not_of(" \t");
        if (first == std::string::npos) {
            cell.kind = Node::Kind::empty;
            cell.scalar.clear();
            continue;
        }
        const std::size_t last = cell.scalar.find_last_not_of(" \t");
        cell.scalar = cell.scalar.substr(first, last - first + 1);
        cell.spot.byte += first;
        cell.length = cell.scalar.size();
    }
    return row;
}

CsvReader::CsvReader(const SourceText& source, Diagnostics& diagnostics)
    : source_(source)
    , diagnostics_(diagnostics) {
    try {
        if (source.text().size() > largest_csv_file) {
            throw Refused{{}, "the file is larger than 8 MiB", "cut it into several files"};
        }
        demand_text(source);
    } catch (const Refused& refused) {
        Diagnostic told = source.diagnostic(refused.where, refused.message, refused.advice);
        if (source.text().size() > largest_csv_file) {
            told.line = 0;
            told.excerpt.clear();
        }
        diagnostics_.push_back(std::move(told));
        line_ = source.line_count();
    }
}

std::optional<std::vector<Node>> CsvReader::next() {
    while (line_ < source_.line_count()) {
        const std::size_t number = line_++;
        if (is_blank(source_.line(number))) {
            continue;
        }
        try {
            return cells_of(source_, number);
        } catch (const Refused& refused) {
            diagnostics_.push_back(
                source_.diagnostic(refused.where, refused.message, refused.advice));
        }
    }
    return std::nullopt;
}

} // namespace boardmark::input
