#include "table_row.hpp"

#include <boardmark/units/number.hpp>

#include "../csv/csv_reader.hpp"
#include "../gate/encoding.hpp"
#include "../gate/gate.hpp"
#include "../gate/tree_builder.hpp"
#include "../reading/refuse.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>
#include <variant>

namespace boardmark::input {
namespace {

/// What stands in a cell stands at the cell, also the parts of what is in brackets.
void place_at(const Node& cell, Node& node) {
    node.source = cell.source;
    node.spot = cell.spot;
    node.length = cell.length;
    for (Node& item : node.items) {
        place_at(cell, item);
    }
    for (Entry& entry : node.entries) {
        place_at(cell, entry.key);
        place_at(cell, entry.value);
    }
}

/// A list or a mapping in brackets, as it would stand in the file. Nothing where it is wrong; then
/// a diagnostic tells why.
std::optional<Node> value_in_brackets(const Node& cell, Diagnostics& diagnostics) {
    const SourceText written{cell.source->file(), "value: " + cell.scalar};
    Diagnostics wrong;
    auto tree = pass_gate(written, wrong);
    if (!tree) {
        refuse(cell, wrong.front().message, wrong.front().advice, diagnostics);
        return std::nullopt;
    }
    Node value = std::move(tree->entries.front().value);
    place_at(cell, value);
    return value;
}

/// The value that a cell writes. Nothing where the cell is wrong.
std::optional<Node> value_of(Node cell, const TableColumn& column, Diagnostics& diagnostics) {
    cell.quoted = false; // quotes belong to the table, not to the value
    if (!column.unit.empty()) {
        const auto number = units::read_number(cell.scalar);
        if (const auto* wrong = std::get_if<units::Misreading>(&number)) {
            refuse(cell, wrong->what,
                   fmt::format("write a number; the column is in {}", column.unit), diagnostics);
            return std::nullopt;
        }
        cell.scalar += " " + column.unit;
        return cell;
    }
    const char first = cell.scalar.front();
    if (first == '[' || first == '{') {
        return value_in_brackets(cell, diagnostics);
    }
    if (first == '\'') {
        cell.scalar.erase(0, 1); // it only keeps a spreadsheet from calculating
    }
    return cell;
}

Node& entry_below(Node& section, const std::string& name, const Node& cell) {
    const auto found = std::ranges::find_if(
        section.entries, [&](const Entry& entry) { return entry.key.scalar == name; });
    if (found != section.entries.end()) {
        return found->value;
    }
    Node key = cell;
    key.scalar = name;
    Node value;
    value.kind = Node::Kind::mapping;
    value.source = cell.source;
    value.spot = cell.spot;
    return section.entries.emplace_back(Entry{std::move(key), std::move(value)}).value;
}

void without_blanks_around(Node& cell) {
    const std::size_t first = cell.scalar.find_first_not_of(" \t");
    cell.scalar = first == std::string::npos
                      ? ""
                      : cell.scalar.substr(first, cell.scalar.find_last_not_of(" \t") - first + 1);
}

} // namespace

std::string without_line_end(std::string line) {
    if (line.ends_with('\r')) {
        line.pop_back();
    }
    return line;
}

std::vector<Node> cells_of_row(const SourceText& line, std::size_t number) {
    if (line.text().size() > longest_table_row) {
        throw Refused{{{number, 0}}, "the row is longer than 64 KiB", "cut it"};
    }
    demand_text(line);
    return cells_of(line, number);
}

std::optional<std::vector<std::optional<Node>>> values_of_row(const SourceText& line,
                                                              std::size_t number,
                                                              std::span<const TableColumn> columns,
                                                              Diagnostics& told) {
    std::vector<Node> cells;
    try {
        cells = cells_of_row(line, number);
    } catch (const Refused& refused) {
        told.push_back(line.diagnostic(refused.where, refused.message, refused.advice));
        return std::nullopt;
    }
    if (cells.size() != columns.size()) {
        refuse(cells[std::min(cells.size(), columns.size()) - 1],
               fmt::format("the row has {} cells; the header names {} columns", cells.size(),
                           columns.size()),
               "", told);
        return std::nullopt;
    }
    std::vector<std::optional<Node>> values(cells.size());
    for (std::size_t i = 0; i < cells.size(); ++i) {
        without_blanks_around(cells[i]);
        if (cells[i].scalar.empty()) {
            continue;
        }
        const std::size_t before = told.size();
        values[i] = value_of(std::move(cells[i]), columns[i], told);
        for (std::size_t at = before; at < told.size(); ++at) {
            told[at].message = columns[i].heading + ": " + told[at].message;
        }
    }
    return values;
}

void write_value(Node& section, std::span<const std::string> names, Node value) {
    Node* at = &section;
    const Node place = value;
    for (const std::string& name : names) {
        at = &entry_below(*at, name, place);
    }
    *at = std::move(value);
}

} // namespace boardmark::input
