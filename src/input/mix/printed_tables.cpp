#include "printed_tables.hpp"

#include <boardmark/text/closest.hpp>
#include <boardmark/text/utf8.hpp>
#include <boardmark/units/number.hpp>
#include <boardmark/units/quantity.hpp>
#include <boardmark/units/unit.hpp>

#include "../reading/refuse.hpp"
#include "table_form.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace boardmark::input {
namespace {

constexpr double gap = std::numeric_limits<double>::quiet_NaN();

struct PrintedSource {
    std::string citation;
    bool from_memory = false;
};

/// Reads one code file; what is wrong is told and reading goes on.
class PrintedReader {
public:
    PrintedReader(std::string name, Diagnostics& diagnostics)
        : name_{std::move(name)}
        , diagnostics_{diagnostics} {}

    bool sound() const { return sound_; }

    void wrong(const Node& node, std::string message, std::string advice) {
        refuse(node, std::move(message), std::move(advice), diagnostics_);
        sound_ = false;
    }

    /// A text without what a terminal or a page would trip over; empty where none stands there.
    std::string text_of(const Node& node, const std::string& key) {
        if (node.kind != Node::Kind::scalar || node.scalar.empty()) {
            wrong(node, fmt::format("{}: expected a text, found {}", key, describe(node.kind)),
                  "write words");
            return "";
        }
        if (text::printable(node.scalar) != node.scalar) {
            wrong(node, key + ": the text holds characters that cannot be printed",
                  "write plain words");
            return "";
        }
        return node.scalar;
    }

    std::string demanded_text(const Node& parent, const Node& at, const std::string& key) {
        const Entry* entry = parent.find(key);
        if (!entry) {
            wrong(at, fmt::format("'{}' is missing", key), "add it");
            return "";
        }
        return text_of(entry->value, key);
    }

    core::PrintedTable table_of(const Entry& entry, const TableForm& form) {
        core::PrintedTable table{.subject = entry.key.scalar,
                                 .citation = {},
                                 .from_memory = false,
                                 .columns = {},
                                 .rows = {}};
        if (entry.value.kind != Node::Kind::mapping) {
            wrong(entry.value, fmt::format("{}: expected a table, found {}", table.subject,
                                           describe(entry.value.kind)),
                  "write source, columns and rows");
            return table;
        }
        refuse_unknown_keys(entry.value, {"title", "source", "unit", "columns", "rows"},
                            table.subject);
        if (const Entry* source = entry.value.find("source")) {
            const PrintedSource read = source_of(source->value, source->key);
            table.citation = read.citation;
            table.from_memory = read.from_memory;
        } else {
            wrong(entry.key, table.subject + " has no 'source'",
                  "say where its figures come from: source: {place, confidence, how}");
        }
        const Entry* unit = entry.value.find("unit");
        read_columns(entry, unit ? unit->value.scalar : "", form, table);
        read_rows(entry, form, table);
        return table;
    }

    void refuse_unknown_keys(const Node& node, std::initializer_list<std::string_view> known,
                             const std::string& where) {
        for (const Entry& entry : node.entries) {
            if (node.find(entry.key.scalar) != &entry) {
                wrong(entry.key, fmt::format("'{}' is given a second time", entry.key.scalar),
                      "keep one");
            } else if (std::ranges::count(known, std::string_view{entry.key.scalar}) == 0) {
                const std::vector<std::string_view> words(known);
                unknown(entry.key, fmt::format("{} has no key '{}'", where, entry.key.scalar),
                        words);
            }
        }
    }

    void unknown(const Node& node, std::string message,
                 const std::vector<std::string_view>& words) {
        const auto near = text::closest(node.scalar, words);
        wrong(node, std::move(message),
              near ? fmt::format("did you mean '{}'?", *near)
                   : fmt::format("known here: {}", fmt::join(words, ", ")));
    }

private:
    PrintedSource source_of(const Node& node, const Node& key) {
        if (node.kind != Node::Kind::mapping) {
            wrong(node, "source: expected keys and values",
                  "write {place: Table 1, confidence: read, how: from the print}");
            return {};
        }
        refuse_unknown_keys(node, {"work", "place", "confidence", "how"}, "source");
        const std::string place = demanded_text(node, key, "place");
        const std::string confidence = demanded_text(node, key, "confidence");
        demanded_text(node, key, "how");
        const Entry* work = node.find("work");
        if (!confidence.empty() && confidence != "read" && confidence != "from memory") {
            wrong(node.find("confidence")->value,
                  fmt::format("confidence: '{}' is neither 'read' nor 'from memory'", confidence),
                  "'read' where somebody saw the print; else no limit of it makes a mix hold");
        }
        return {(work ? text_of(work->value, "work") : name_) + " " + place,
                confidence == "from memory"};
    }

    void read_columns(const Entry& entry, const std::string& table_unit, const TableForm& form,
                      core::PrintedTable& table) {
        const Entry* columns = entry.value.find("columns");
        if (!columns) {
            wrong(entry.key, table.subject + " has no 'columns'",
                  "write for example 'columns: " + std::string{form.example_of_columns} + "'");
            return;
        }
        if (form.by_size) {
            read_sizes(*columns, table_unit, table);
            return;
        }
        if (columns->value.kind != Node::Kind::list) {
            wrong(columns->value, table.subject + ": 'columns' is not a list",
                  "write for example 'columns: " + std::string{form.example_of_columns} + "'");
            return;
        }
        for (const Node& column : columns->value.items) {
            refuse_unknown_keys(column, {"name", "unit"}, "a column");
            const std::string name = demanded_text(column, column, "name");
            if (!name.empty() && std::ranges::count(form.columns, name) == 0) {
                unknown(column.find("name")->value,
                        fmt::format("{} has no column '{}'", table.subject, name),
                        {form.columns.begin(), form.columns.end()});
            }
            const Entry* unit = column.find("unit");
            units_.push_back(unit ? unit->value.scalar : table_unit);
            demand_unit(unit ? unit->value : column, units_.back());
            table.columns.push_back({name, gap});
        }
        demand_columns(*columns, form, table);
    }

    void demand_columns(const Entry& columns, const TableForm& form,
                        const core::PrintedTable& table) {
        for (const std::string_view needed : form.needed_columns) {
            if (std::ranges::count(table.columns, needed, &core::PrintedColumn::name) == 0) {
                wrong(columns.key, fmt::format("{} has no column '{}'", table.subject, needed),
                      "add it");
            }
        }
    }

    /// `columns: {what: nominal maximum size, both: [10 mm, 20 mm]}`
    void read_sizes(const Entry& columns, const std::string& table_unit,
                    core::PrintedTable& table) {
        const Entry* both = columns.value.find("both");
        if (!both || both->value.kind != Node::Kind::list) {
            wrong(columns.value, table.subject + ": its columns are sizes of stone",
                  "write 'columns: {what: nominal maximum size, both: [10 mm, 20 mm]}'");
            return;
        }
        for (const Node& size : both->value.items) {
            const double at_mm = number_of(size, "");
            const bool rises = table.columns.empty() || at_mm > table.columns.back().at_mm;
            if (!std::isnan(at_mm) && !rises) {
                wrong(size, table.subject + ": the sizes do not increase",
                      "write them from the smallest to the largest");
            }
            units_.push_back(table_unit);
            table.columns.push_back({"", at_mm});
        }
        demand_unit(columns.value, table_unit);
    }

    void demand_unit(const Node& node, const std::string& unit) {
        if (!unit.empty() && !units::find_unit(unit)) {
            wrong(node, fmt::format("'{}' is not a unit known here", unit),
                  "write for example 'MPa', 'kg/m3' or '%'");
        }
    }

    void read_rows(const Entry& entry, const TableForm& form, core::PrintedTable& table) {
        const Entry* rows = entry.value.find("rows");
        if (!rows || rows->value.kind != Node::Kind::list || rows->value.items.empty()) {
            wrong(rows ? rows->value : entry.key, table.subject + " has no rows",
                  "write a row for each line of the print");
        } else {
            for (const Node& row : rows->value.items) {
                read_row(row, form, table);
            }
        }
        units_.clear();
    }

    void read_row(const Node& node, const TableForm& form, core::PrintedTable& table) {
        if (node.kind != Node::Kind::mapping) {
            wrong(node, table.subject + ": a row is " + std::string{describe(node.kind)},
                  "write {name: …, cells: […]}");
            return;
        }
        core::PrintedRow row{.name = demanded_text(node, node, "name"),
                             .group = {},
                             .cells = {},
                             .citation = table.citation,
                             .from_memory = table.from_memory,
                             .notes = {}};
        for (const Entry& entry : node.entries) {
            read_row_key(entry, node, form, row);
        }
        read_cells(node, table, row);
        table.rows.push_back(std::move(row));
    }

    void read_row_key(const Entry& entry, const Node& node, const TableForm& form,
                      core::PrintedRow& row) {
        const std::string& key = entry.key.scalar;
        if (node.find(key) != &entry) {
            wrong(entry.key, fmt::format("'{}' is given a second time", key), "keep one");
        } else if (key == "source") {
            const PrintedSource own = source_of(entry.value, entry.key);
            row.citation = own.citation;
            row.from_memory = own.from_memory;
        } else if (key == "group") {
            row.group = text_of(entry.value, key);
        } else if (std::ranges::count(form.notes, key) > 0) {
            row.notes.emplace_back(key, text_of(entry.value, key));
        } else if (key != "name" && key != "cells") {
            unknown(entry.key, fmt::format("a row has no key '{}'", key),
                    {form.notes.begin(), form.notes.end()});
        }
    }

    void read_cells(const Node& node, const core::PrintedTable& table, core::PrintedRow& row) {
        const Entry* cells = node.find("cells");
        if (!cells || cells->value.kind != Node::Kind::list) {
            wrong(cells ? cells->value : node, fmt::format("row '{}' has no cells", row.name),
                  "write a list with a figure for each column, ~ for a gap");
            return;
        }
        const auto& written = cells->value.items;
        if (table.columns.empty()) {
            return; // told already
        }
        if (written.size() != table.columns.size()) {
            wrong(cells->value,
                  fmt::format("row '{}' has not one cell for each of the {} columns", row.name,
                              table.columns.size()),
                  "write one for each column, ~ for a gap");
            return;
        }
        for (std::size_t i = 0; i < written.size(); ++i) {
            row.cells.push_back(number_of(written[i], units_[i]));
        }
    }

    /// A bare number in a unit of the table, or a quantity with its own, as an inside value.
    double number_of(const Node& node, const std::string& unit) {
        if (node.kind == Node::Kind::empty || node.scalar == "~") {
            return gap;
        }
        const auto bare = units::read_number(node.scalar);
        if (const auto* number = std::get_if<double>(&bare)) {
            const units::Unit* known = units::find_unit(unit);
            return in_range(node, known ? known->to_inside(*number) : *number);
        }
        const auto reading = units::read_quantity(node.scalar);
        if (const auto* quantity = std::get_if<units::Quantity>(&reading)) {
            return in_range(node, quantity->inside());
        }
        wrong(node, fmt::format("'{}' is not a figure", node.scalar),
              "write a number, a quantity with its unit, or ~ for a gap");
        return gap;
    }

    double in_range(const Node& node, double value) {
        constexpr double largest = 1e5; // no limit of a code is larger in its inside unit
        if (!(std::abs(value) <= largest)) {
            wrong(node, fmt::format("'{}' is no limit that a code has", node.scalar),
                  "check the figure and its unit");
            return gap;
        }
        return value;
    }

    std::string name_;
    Diagnostics& diagnostics_;
    bool sound_ = true;
    std::vector<std::string> units_; ///< of the columns of the table that is read
};

const Entry* table_named(const Node& tables, std::string_view subject) {
    return tables.find(subject);
}

std::vector<std::string_view> subjects() {
    std::vector<std::string_view> names;
    for (const TableForm& form : table_forms()) {
        names.push_back(form.subject);
    }
    return names;
}

} // namespace

std::optional<core::PrintedCode> read_printed_code(const Node& root, const core::Vocabulary& words,
                                                   Diagnostics& diagnostics) {
    core::PrintedCode code;
    Node top;
    top.source = root.source;
    const Entry* name = root.find("code");
    PrintedReader reader{name ? name->value.scalar : "", diagnostics};
    reader.refuse_unknown_keys(root, {"boardmark", "code", "tables"}, "the file of a code");
    code.name = reader.demanded_text(root, top, "code");
    if (std::ranges::count(words.codes, code.name) > 0) {
        reader.wrong(name->value,
                     "code: '" + code.name + "' is the name of a code that is known here",
                     "give it a name of its own, with its edition");
    }
    const Entry* tables = root.find("tables");
    if (!tables || tables->value.kind != Node::Kind::mapping) {
        reader.wrong(tables ? tables->value : top, "'tables' is missing: it holds the code's tables",
                     "write 'tables:' and below it 'exposure:'");
        return std::nullopt;
    }
    for (const Entry& entry : tables->value.entries) {
        const TableForm* form = find_table_form(entry.key.scalar);
        if (tables->value.find(entry.key.scalar) != &entry) {
            reader.wrong(entry.key, "'" + entry.key.scalar + "' is given a second time", "keep one");
        } else if (!form) {
            reader.unknown(entry.key, "'" + entry.key.scalar + "' is not a table of a code",
                           subjects());
        } else {
            code.tables.push_back(reader.table_of(entry, *form));
        }
    }
    if (!table_named(tables->value, "exposure")) {
        reader.wrong(tables->key, "the code has no table 'exposure'", "add it");
    }
    if (reader.sound()) {
        tell_loose_words(code, words, tables->value,
                         [&](const Node& node, std::string message, std::string advice) {
                             reader.wrong(node, std::move(message), std::move(advice));
                         });
    }
    return reader.sound() ? std::optional{std::move(code)} : std::nullopt;
}

} // namespace boardmark::input
