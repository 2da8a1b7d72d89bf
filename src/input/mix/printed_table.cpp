#include "printed_table.hpp"

#include "note_words.hpp"
#include "row_note.hpp"
#include "table_figure.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace boardmark::input {
namespace {

constexpr double gap = std::numeric_limits<double>::quiet_NaN();

struct PrintedSource {
    std::string citation;
    bool from_memory = false;
};

constexpr FigureForm size_of_stone{units::Dimension::length, 1, 200};

/// A column as it is read: what its figures are, and the unit of those that write none.
struct ReadColumn {
    std::optional<FigureForm> figure; ///< nothing where the column is wrong, which is told already
    std::string unit;
};

/// The names that the forms of columns, notes or rows have.
template <class Form>
std::vector<std::string_view> names_of(std::span<const Form> forms) {
    std::vector<std::string_view> names;
    for (const Form& form : forms) {
        names.push_back(form.name);
    }
    return names;
}

template <class Form>
const Form* form_named(std::string_view name, std::span<const Form> forms) {
    const auto found = std::ranges::find(forms, name, &Form::name);
    return found == forms.end() ? nullptr : &*found;
}

/// Reads one table of a code.
class TableReader {
public:
    TableReader(const TableOfCode& of, PrintedWords& words)
        : code_name_{of.code_name}
        , by_concrete_{of.by_concrete}
        , words_{words} {}

    core::PrintedTable read(const Entry& entry, const TableForm& form) {
        core::PrintedTable table{.subject = entry.key.scalar,
                                 .citation = {},
                                 .from_memory = false,
                                 .columns = {},
                                 .rows = {}};
        if (entry.value.kind != Node::Kind::mapping) {
            words_.wrong(entry.value,
                         fmt::format("{}: expected a table, found {}", table.subject,
                                     describe(entry.value.kind)),
                         "write source, columns and rows");
            return table;
        }
        words_.refuse_unknown_keys(entry.value, {"title", "source", "unit", "columns", "rows"},
                                   table.subject);
        if (const Entry* source = entry.value.find("source")) {
            const PrintedSource read = source_of(source->value, source->key);
            table.citation = read.citation;
            table.from_memory = read.from_memory;
        } else {
            words_.wrong(entry.key, table.subject + " has no 'source'",
                         "say where its figures come from: source: {place, confidence, how}");
        }
        const Entry* unit = entry.value.find("unit");
        read_columns(entry, unit ? unit->value.scalar : "", form, table);
        read_rows(entry, form, table);
        return table;
    }

private:
    PrintedSource source_of(const Node& node, const Node& key) {
        if (node.kind != Node::Kind::mapping) {
            words_.wrong(node, "source: expected keys and values",
                         "write {place: Table 1, confidence: read, how: from the print}");
            return {};
        }
        words_.refuse_unknown_keys(node, {"work", "place", "confidence", "how"}, "source");
        const std::string place = words_.demanded_text(node, key, "place");
        const std::string confidence = words_.demanded_text(node, key, "confidence");
        words_.demanded_text(node, key, "how");
        const Entry* work = node.find("work");
        if (!confidence.empty() && confidence != "read" && confidence != "from memory") {
            words_.wrong(
                node.find("confidence")->value,
                fmt::format("confidence: '{}' is neither 'read' nor 'from memory'", confidence),
                "'read' where somebody saw the print; else no limit of it makes a mix hold");
        }
        return {(work ? words_.text_of(work->value, "work") : code_name_) + " " + place,
                confidence == "from memory"};
    }

    void read_columns(const Entry& entry, const std::string& table_unit, const TableForm& form,
                      core::PrintedTable& table) {
        const Entry* columns = entry.value.find("columns");
        if (!columns) {
            words_.wrong(entry.key, table.subject + " has no 'columns'",
                         "write for example 'columns: " + std::string{form.example_of_columns} +
                             "'");
            return;
        }
        if (form.by_size) {
            read_sizes(*columns, table_unit, *form.by_size, table);
            return;
        }
        if (columns->value.kind != Node::Kind::list) {
            words_.wrong(columns->value, table.subject + ": 'columns' is not a list",
                         "write for example 'columns: " + std::string{form.example_of_columns} +
                             "'");
            return;
        }
        for (const Node& column : columns->value.items) {
            read_column(column, table_unit, form, table);
        }
        demand_columns(*columns, form, table);
    }

    void read_column(const Node& column, const std::string& table_unit, const TableForm& form,
                     core::PrintedTable& table) {
        words_.refuse_unknown_keys(column, {"name", "unit"}, "a column");
        const std::string name = words_.demanded_text(column, column, "name");
        const ColumnForm* known = form_named(name, form.columns);
        if (!known && !name.empty()) {
            words_.unknown(column.find("name")->value,
                           fmt::format("{} has no column '{}'", table.subject, name),
                           names_of(form.columns));
        }
        if (known && std::ranges::count(table.columns, name, &core::PrintedColumn::name) > 0) {
            words_.wrong(column, fmt::format("column '{}' stands twice", name), "keep one");
        }
        const Entry* unit = column.find("unit");
        ReadColumn read{std::nullopt, unit ? unit->value.scalar : table_unit};
        if (known) {
            read.figure = by_concrete_ && known->by_concrete ? *known->by_concrete : known->figure;
            demand_unit(unit ? unit->value : column, name, read);
        }
        columns_.push_back(std::move(read));
        table.columns.push_back({name, gap});
    }

    void demand_columns(const Entry& columns, const TableForm& form,
                        const core::PrintedTable& table) {
        for (const ColumnForm& known : form.columns) {
            if (known.needed &&
                std::ranges::count(table.columns, known.name, &core::PrintedColumn::name) == 0) {
                words_.wrong(columns.key,
                             fmt::format("{} has no column '{}'", table.subject, known.name),
                             "add it");
            }
        }
    }

    /// `columns: {what: nominal maximum size, both: [10 mm, 20 mm]}`
    void read_sizes(const Entry& columns, const std::string& table_unit, const FigureForm& figure,
                    core::PrintedTable& table) {
        const Entry* both = columns.value.find("both");
        if (!both || both->value.kind != Node::Kind::list) {
            words_.wrong(columns.value, table.subject + ": its columns are sizes of stone",
                         "write 'columns: {what: nominal maximum size, both: [10 mm, 20 mm]}'");
            return;
        }
        ReadColumn read{figure, table_unit};
        demand_unit(columns.value, table.subject, read);
        for (const Node& size : both->value.items) {
            const double at_mm = number_of(size, "", size_of_stone);
            if (std::isnan(at_mm) && words_.sound()) {
                words_.wrong(size, table.subject + ": a column has no size",
                             "write for example '20 mm'");
            }
            const bool rises = table.columns.empty() || at_mm > table.columns.back().at_mm;
            if (!std::isnan(at_mm) && !rises) {
                words_.wrong(size, table.subject + ": the sizes do not increase",
                             "write them from the smallest to the largest");
            }
            columns_.push_back(read);
            table.columns.push_back({"", at_mm});
        }
    }

    void demand_unit(const Node& node, const std::string& name, ReadColumn& column) {
        if (auto fault = fault_of_unit(column.unit, *column.figure)) {
            words_.wrong(node, name + ": " + fault->message, std::move(fault->advice));
            column.figure = std::nullopt;
        }
    }

    void read_rows(const Entry& entry, const TableForm& form, core::PrintedTable& table) {
        const Entry* rows = entry.value.find("rows");
        if (!rows || rows->value.kind != Node::Kind::list || rows->value.items.empty()) {
            words_.wrong(rows ? rows->value : entry.key, table.subject + " has no rows",
                         "write a row for each line of the print");
        } else {
            for (const Node& row : rows->value.items) {
                read_row(row, form, table);
            }
            demand_rows(entry.key, form, table);
        }
    }

    void demand_rows(const Node& node, const TableForm& form, const core::PrintedTable& table) {
        const auto has = [&](std::string_view name) {
            return std::ranges::count(table.rows, name, &core::PrintedRow::name) > 0;
        };
        for (const RowForm& known : form.rows) {
            if (known.needed && !has(known.name)) {
                words_.wrong(node, fmt::format("{} has no row '{}'", table.subject, known.name),
                             "add it");
            } else if (!known.beside.empty() && has(known.name) && !has(known.beside)) {
                words_.wrong(node,
                             fmt::format("{} has a row '{}' and no row '{}'", table.subject,
                                         known.name, known.beside),
                             "add it: one says nothing without the other");
            }
        }
    }

    void read_row(const Node& node, const TableForm& form, core::PrintedTable& table) {
        if (node.kind != Node::Kind::mapping) {
            words_.wrong(node, table.subject + ": a row is " + std::string{describe(node.kind)},
                         "write {name: …, cells: […]}");
            return;
        }
        core::PrintedRow row{.name = words_.demanded_text(node, node, "name"),
                             .group = {},
                             .cells = {},
                             .citation = table.citation,
                             .from_memory = table.from_memory,
                             .notes = {}};
        for (const Entry& entry : node.entries) {
            read_row_key(entry, node, form, row);
        }
        read_cells(node, form, table, row);
        tell_second(node, form, table, row);
        table.rows.push_back(std::move(row));
    }

    void read_row_key(const Entry& entry, const Node& node, const TableForm& form,
                      core::PrintedRow& row) {
        const std::string& key = entry.key.scalar;
        if (node.find(key) != &entry) {
            words_.wrong(entry.key, fmt::format("'{}' is given a second time", key), "keep one");
        } else if (key == "source") {
            const PrintedSource own = source_of(entry.value, entry.key);
            row.citation = own.citation;
            row.from_memory = own.from_memory;
        } else if (key == "group" && form.has_groups) {
            row.group = words_.text_of(entry.value, key);
        } else if (const NoteForm* note = form_named(key, form.notes)) {
            row.notes.emplace_back(key, words_.text_of(entry.value, key));
            if (auto fault = fault_of_note(row.notes.back().second, *note)) {
                words_.wrong(entry.value, key + ": " + fault->message, std::move(fault->advice));
            }
        } else if (key == "name") {
            if (!form.rows.empty() && !row.name.empty() && !form_named(row.name, form.rows)) {
                words_.unknown(entry.value,
                               fmt::format("{} has no row '{}'", form.subject, row.name),
                               names_of(form.rows));
            }
        } else if (key != "cells") {
            words_.unknown(entry.key, fmt::format("a row has no key '{}'", key),
                           names_of(form.notes));
        }
    }

    /// Of two rows that say the same only one would be used.
    void tell_second(const Node& node, const TableForm& form, const core::PrintedTable& table,
                     const core::PrintedRow& row) {
        if (form.in_turn || (form.has_groups && row.group.empty())) {
            return; // rows of a site are tried in turn; classes are held against each other later
        }
        const bool code = row.group == "code";
        const bool second = std::ranges::any_of(table.rows, [&](const core::PrintedRow& other) {
            return other.group == row.group &&
                   (code ||
                    (other.name == row.name && note_of(other, "class") == note_of(row, "class")));
        });
        if (second) {
            words_.wrong(node,
                         code ? std::string{"the code has a second row of group code"}
                              : fmt::format("row '{}' stands twice", row.name),
                         "keep one");
        }
    }

    void read_cells(const Node& node, const TableForm& form, const core::PrintedTable& table,
                    core::PrintedRow& row) {
        const Entry* cells = node.find("cells");
        if (!cells || cells->value.kind != Node::Kind::list) {
            words_.wrong(cells ? cells->value : node,
                         fmt::format("row '{}' has no cells", row.name),
                         "write a list with a figure for each column, ~ for a gap");
            return;
        }
        const auto& written = cells->value.items;
        if (table.columns.empty()) {
            return; // told already
        }
        if (written.size() != table.columns.size()) {
            words_.wrong(cells->value,
                         fmt::format("row '{}' has not one cell for each of the {} columns",
                                     row.name, table.columns.size()),
                         "write one for each column, ~ for a gap");
            return;
        }
        const RowForm* known = form_named(row.name, form.rows);
        for (std::size_t i = 0; i < written.size(); ++i) {
            const auto& figure = known && known->figure ? known->figure : columns_[i].figure;
            row.cells.push_back(figure ? number_of(written[i], columns_[i].unit, *figure) : gap);
        }
    }

    double number_of(const Node& node, const std::string& unit, const FigureForm& form) {
        if (node.kind == Node::Kind::empty || node.scalar == "~") {
            return gap;
        }
        auto read = read_figure(node.scalar, unit, form);
        if (auto* fault = std::get_if<FigureFault>(&read)) {
            words_.wrong(node, std::move(fault->message), std::move(fault->advice));
            return gap;
        }
        return std::get<double>(read);
    }

    const std::string& code_name_;
    bool by_concrete_;
    PrintedWords& words_;
    std::vector<ReadColumn> columns_;
};

} // namespace

core::PrintedTable read_printed_table(const Entry& entry, const TableForm& form,
                                      const TableOfCode& of, PrintedWords& words) {
    return TableReader{of, words}.read(entry, form);
}

} // namespace boardmark::input
