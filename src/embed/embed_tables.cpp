// Build tool: data/*.yaml → one C++ source for the room `reference`.
//
// A table without a source, with a work that data/sources.yaml does not list, with a ragged row or
// with an axis that does not increase stops the build and is named.

#include <boardmark/units/number.hpp>
#include <boardmark/units/quantity.hpp>

#include <yaml-cpp/yaml.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <limits>
#include <map>
#include <set>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

namespace {

using boardmark::units::Misreading;
using boardmark::units::Quantity;

constexpr double nothing = std::numeric_limits<double>::quiet_NaN();

struct Fault : std::runtime_error {
    using std::runtime_error::runtime_error;
};

struct Source {
    std::string work;
    std::string place;
    std::string confidence;
    std::string how;
};

struct Column {
    std::string name;
    std::string unit;
    double at_us = nothing;
    double at_si = nothing;
};

struct Row {
    std::string name;
    std::string group;
    double from_us = nothing;
    double to_us = nothing;
    double from_si = nothing;
    double to_si = nothing;
    std::vector<double> cells;
    Source source;
    std::map<std::string, std::string> notes;
};

struct Table {
    std::string name;
    std::string title;
    Source source;
    std::vector<Column> columns;
    std::vector<Row> rows;
};

std::string text_of(const YAML::Node& node, const std::string& key) {
    if (!node[key] || !node[key].IsScalar() || node[key].Scalar().empty()) {
        throw Fault("'" + key + "' is missing");
    }
    return node[key].Scalar();
}

std::string text_or_nothing(const YAML::Node& node, const std::string& key) {
    return node[key] ? node[key].Scalar() : "";
}

/// A bare number in a unit of the table, or a quantity with its own unit, as an inside value.
double value_of(const std::string& text, const std::string& unit) {
    const auto bare = boardmark::units::read_number(text);
    if (const auto* number = std::get_if<double>(&bare)) {
        const auto* known = boardmark::units::find_unit(unit);
        if (!unit.empty() && !known) {
            throw Fault("'" + unit + "' is not a unit known here");
        }
        return known ? known->to_inside(*number) : *number;
    }
    const auto reading = boardmark::units::read_quantity(text);
    if (const auto* wrong = std::get_if<Misreading>(&reading)) {
        throw Fault("'" + text + "': " + wrong->what);
    }
    return std::get<Quantity>(reading).inside();
}

Source read_source(const YAML::Node& node, const std::set<std::string>& works) {
    if (!node) {
        throw Fault("'source' is missing");
    }
    Source source{text_of(node, "work"), text_of(node, "place"), text_of(node, "confidence"),
                  text_of(node, "how")};
    if (!works.contains(source.work)) {
        throw Fault("'" + source.work + "' is not among the works of sources.yaml");
    }
    if (source.confidence != "read" && source.confidence != "from memory" &&
        source.confidence != "common practice") {
        throw Fault("confidence is 'read', 'from memory' or 'common practice'");
    }
    return source;
}

std::vector<Column> read_axis(const YAML::Node& node) {
    std::vector<Column> columns;
    const auto add = [&](const std::string& system, double Column::*at) {
        const YAML::Node values = node[system];
        if (!values) {
            return;
        }
        columns.resize(values.size());
        for (std::size_t i = 0; i < values.size(); ++i) {
            columns[i].*at = value_of(values[i].Scalar(), "");
        }
    };
    add("us", &Column::at_us);
    add("si", &Column::at_si);
    add("both", &Column::at_us);
    add("both", &Column::at_si);
    return columns;
}

std::vector<Column> read_columns(const YAML::Node& node, const std::string& table_unit) {
    if (!node) {
        throw Fault("'columns' is missing");
    }
    std::vector<Column> columns;
    if (node.IsMap()) {
        columns = read_axis(node);
    } else {
        for (const auto& column : node) {
            columns.push_back({text_of(column, "name"), text_or_nothing(column, "unit")});
        }
    }
    for (Column& column : columns) {
        if (column.unit.empty()) {
            column.unit = table_unit;
        }
    }
    return columns;
}

void read_place_on_axis(const YAML::Node& node, Row& row) {
    const auto read = [&](const char* key, double Row::*us, double Row::*si) {
        const YAML::Node at = node[key];
        if (!at) {
            return;
        }
        row.*us = value_of(at.IsMap() ? at["us"].Scalar() : at.Scalar(), "");
        row.*si = value_of(at.IsMap() ? at["si"].Scalar() : at.Scalar(), "");
    };
    read("at", &Row::from_us, &Row::from_si);
    read("at", &Row::to_us, &Row::to_si);
    read("from", &Row::from_us, &Row::from_si);
    read("to", &Row::to_us, &Row::to_si);
}

Row read_row(const YAML::Node& node, const Table& table, const std::set<std::string>& works) {
    static const std::set<std::string> known{"name", "group", "at",    "from",
                                             "to",   "cells", "source"};
    Row row;
    row.name = text_or_nothing(node, "name");
    row.group = text_or_nothing(node, "group");
    row.source = node["source"] ? read_source(node["source"], works) : table.source;
    read_place_on_axis(node, row);
    const YAML::Node cells = node["cells"];
    if (!cells || cells.size() != table.columns.size()) {
        throw Fault("row '" + row.name + "' has not one cell for each column");
    }
    for (std::size_t i = 0; i < cells.size(); ++i) {
        row.cells.push_back(cells[i].IsNull() ? nothing
                                              : value_of(cells[i].Scalar(), table.columns[i].unit));
    }
    for (const auto& field : node) {
        if (!known.contains(field.first.Scalar())) {
            row.notes[field.first.Scalar()] = field.second.Scalar();
        }
    }
    return row;
}

void demand_increasing(const std::vector<double>& axis) {
    for (std::size_t i = 1; i < axis.size(); ++i) {
        if (axis[i] <= axis[i - 1]) {
            throw Fault("an axis does not increase");
        }
    }
}

/// A range that begins where it ends is one point of the axis; any other adds its end to the axis,
/// so that ranges can neither run backwards nor overlap.
struct RowRange {
    double from;
    double to;
};
void demand_range_after(RowRange range, std::vector<double>& axis) {
    if (range.to != range.from && !std::isnan(range.to)) {
        axis.push_back(range.to);
    }
}

void demand_increasing_axes(const Table& table) {
    std::vector<double> columns_us;
    std::vector<double> columns_si;
    for (const Column& column : table.columns) {
        columns_us.push_back(column.at_us);
        columns_si.push_back(column.at_si);
    }
    demand_increasing(columns_us);
    demand_increasing(columns_si);
    std::map<std::string, std::vector<double>> rows;
    for (const Row& row : table.rows) {
        rows[row.group + " us"].push_back(row.from_us);
        rows[row.group + " si"].push_back(row.from_si);
        demand_range_after({row.from_us, row.to_us}, rows[row.group + " us"]);
        demand_range_after({row.from_si, row.to_si}, rows[row.group + " si"]);
    }
    for (const auto& [group, axis] : rows) {
        demand_increasing(axis);
    }
}

Table read_table(const std::filesystem::path& path, const std::set<std::string>& works) {
    const YAML::Node root = YAML::LoadFile(path.string());
    Table table;
    table.name = path.stem().string();
    table.title = text_of(root, "title");
    table.source = read_source(root["source"], works);
    table.columns = read_columns(root["columns"], text_or_nothing(root, "unit"));
    if (!root["rows"] || root["rows"].size() == 0) {
        throw Fault("'rows' is missing");
    }
    for (const auto& row : root["rows"]) {
        table.rows.push_back(read_row(row, table, works));
    }
    demand_increasing_axes(table);
    return table;
}

std::set<std::string> read_works(const std::filesystem::path& path) {
    std::set<std::string> works;
    for (const auto& work : YAML::LoadFile(path.string())["works"]) {
        works.insert(text_of(work, "name"));
    }
    return works;
}

std::string number(double value) {
    if (std::isnan(value)) {
        return "nothing";
    }
    std::ostringstream stream;
    stream.precision(17);
    stream << value;
    return stream.str();
}

std::string quoted(const std::string& text) {
    std::string result = "\"";
    for (const char character : text) {
        if (character == '"' || character == '\\') {
            result += '\\';
        }
        result += character == '\n' ? ' ' : character;
    }
    return result + "\"";
}

std::string written(const Source& source) {
    const std::string confidence = source.confidence == "read"          ? "read"
                                   : source.confidence == "from memory" ? "from_memory"
                                                                        : "common_practice";
    const std::string citation = source.confidence == "common practice"
                                     ? "common practice, no source"
                                     : source.work + " " + source.place;
    return "{" + quoted(source.work) + ", " + quoted(citation) +
           ", core::Confidence::" + confidence + "}";
}

void write_table(std::ostream& out, const Table& table, std::size_t index) {
    const std::string id = std::to_string(index);
    out << "// " << table.name << "\nconstexpr EmbeddedColumn columns_" << id << "[] = {\n";
    for (const Column& column : table.columns) {
        out << "    {" << quoted(column.name) << ", " << number(column.at_us) << ", "
            << number(column.at_si) << "},\n";
    }
    out << "};\n";
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        const Row& row = table.rows[i];
        out << "constexpr double cells_" << id << "_" << i << "[] = {";
        for (const double cell : row.cells) {
            out << number(cell) << ", ";
        }
        out << "};\n";
        if (!row.notes.empty()) {
            out << "constexpr EmbeddedNote notes_" << id << "_" << i << "[] = {";
            for (const auto& [name, text] : row.notes) {
                out << "{" << quoted(name) << ", " << quoted(text) << "}, ";
            }
            out << "};\n";
        }
    }
    out << "constexpr EmbeddedRow rows_" << id << "[] = {\n";
    for (std::size_t i = 0; i < table.rows.size(); ++i) {
        const Row& row = table.rows[i];
        out << "    {" << quoted(row.name) << ", " << quoted(row.group) << ", "
            << number(row.from_us) << ", " << number(row.to_us) << ", " << number(row.from_si)
            << ", " << number(row.to_si) << ", cells_" << id << "_" << i << ", "
            << written(row.source) << ", "
            << (row.notes.empty() ? "{}" : "notes_" + id + "_" + std::to_string(i)) << "},\n";
    }
    out << "};\n\n";
}

void write_source_file(std::ostream& out, const std::vector<Table>& tables,
                       const std::string& function) {
    out << "// Written by the build from data/*.yaml. Change the data, not this file.\n"
           "#include \"embedded_table.hpp\"\n\n#include <limits>\n\n"
           "namespace boardmark::reference {\nnamespace {\n\n"
           "constexpr double nothing = std::numeric_limits<double>::quiet_NaN();\n\n";
    for (std::size_t i = 0; i < tables.size(); ++i) {
        write_table(out, tables[i], i);
    }
    out << "constexpr EmbeddedTable all_tables[] = {\n";
    for (std::size_t i = 0; i < tables.size(); ++i) {
        out << "    {" << quoted(tables[i].name) << ", " << quoted(tables[i].title) << ", "
            << written(tables[i].source) << ", columns_" << i << ", rows_" << i << "},\n";
    }
    out << "};\n\n} // namespace\n\n"
           "std::span<const EmbeddedTable> "
        << function
        << "() { return all_tables; }\n\n"
           "} // namespace boardmark::reference\n";
}

} // namespace

int main(int argc, char** argv) {
    if (argc != 3 && argc != 4) {
        std::cerr << "usage: embed-tables DATA_FOLDER OUTPUT.cpp [FUNCTION]\n";
        return 2;
    }
    const std::filesystem::path folder{argv[1]};
    std::vector<std::filesystem::path> paths;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        if (entry.path().extension() == ".yaml" && entry.path().filename() != "sources.yaml") {
            paths.push_back(entry.path());
        }
    }
    std::ranges::sort(paths, {}, [](const auto& path) { return path.stem().string(); });

    std::filesystem::path current = folder / "sources.yaml";
    try {
        const auto works = read_works(current);
        std::vector<Table> tables;
        for (const auto& path : paths) {
            current = path;
            tables.push_back(read_table(path, works));
        }
        std::ofstream out{argv[2]};
        write_source_file(out, tables, argc == 4 ? argv[3] : "embedded_tables");
        out.flush();
        if (!out) {
            throw Fault(std::string{"cannot write "} + argv[2]);
        }
    } catch (const std::exception& fault) {
        std::cerr << current.string() << ": " << fault.what() << "\n";
        return 1;
    }
    return 0;
}
