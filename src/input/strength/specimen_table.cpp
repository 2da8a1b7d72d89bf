#include "specimen_table.hpp"

#include <boardmark/text/closest.hpp>
#include <boardmark/units/unit.hpp>

#include "../csv/csv_reader.hpp"
#include "../reading/refuse.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <map>

namespace boardmark::input {
namespace {

using units::Dimension;

using CsvRow = std::vector<Node>;

/// A column that a table may have, and the key that its cells stand under.
struct Column {
    std::string_view name;
    std::optional<Dimension> dimension; ///< its unit stands in the header
    bool required;
    bool of_batch;
    std::string_view example;
};

constexpr Column columns[] = {
    {"specimen", std::nullopt, true, false, "specimen"},
    {"batch", std::nullopt, true, false, "batch"},
    {"age", Dimension::time, true, false, "age (d)"},
    {"strength", Dimension::stress, true, false, "strength (psi)"},
    {"cast", std::nullopt, false, true, "cast"},
    {"purpose", std::nullopt, false, true, "purpose"},
    {"w_cm", std::nullopt, false, true, "w_cm"},
    {"air", Dimension::percentage, false, true, "air (%)"},
};

/// A column of the file.
struct Heading {
    const Column* column;
    std::string unit; ///< empty where it has none
};

std::optional<Heading> refuse_unit(const Node& cell, const Column& column,
                                   Diagnostics& diagnostics) {
    refuse(cell,
           column.dimension
               ? fmt::format("the column '{}' needs its unit in the header", column.name)
               : fmt::format("the column '{}' has no unit", column.name),
           fmt::format("write '{}'", column.example), diagnostics);
    return std::nullopt;
}

/// "strength (psi)": the column and its unit.
std::optional<Heading> read_heading(const Node& cell, Diagnostics& diagnostics) {
    const std::string& text = cell.scalar;
    const std::size_t open = text.find(" (");
    const bool has_unit = open != std::string::npos && text.ends_with(')');
    const std::string name = has_unit ? text.substr(0, open) : text;
    const auto column = std::ranges::find(columns, name, &Column::name);
    if (column == std::end(columns)) {
        std::vector<std::string_view> names;
        for (const Column& known : columns) {
            names.push_back(known.name);
        }
        const auto near = text::closest(name, names);
        refuse(
            cell, fmt::format("'{}' is not a column known here", text),
            near ? fmt::format("did you mean '{}'?", *near)
                 : "known: specimen, batch, age (d), strength (psi), cast, purpose, w_cm, air (%)",
            diagnostics);
        return std::nullopt;
    }
    if (has_unit != column->dimension.has_value()) {
        return refuse_unit(cell, *column, diagnostics);
    }
    const std::string unit = has_unit ? text.substr(open + 2, text.size() - open - 3) : "";
    const units::Unit* known = has_unit ? units::find_unit(unit) : nullptr;
    if (has_unit && (!known || known->dimension != *column->dimension)) {
        refuse(cell, fmt::format("'{}' is not a unit of {}", unit, column->name),
               fmt::format("write '{}'", column->example), diagnostics);
        return std::nullopt;
    }
    return Heading{&*column, unit};
}

/// The columns of the header; nothing where one is wrong or missing.
std::optional<std::vector<Heading>> read_header(const CsvRow& header, Diagnostics& diagnostics) {
    std::vector<Heading> headings;
    bool sound = true;
    for (const Node& cell : header) {
        const auto heading = read_heading(cell, diagnostics);
        if (!heading) {
            sound = false;
        } else if (std::ranges::count(headings, heading->column, &Heading::column) > 0) {
            refuse(cell, fmt::format("the column '{}' is given a second time", cell.scalar),
                   "keep one", diagnostics);
            sound = false;
        } else {
            headings.push_back(*heading);
        }
    }
    for (const Column& column : columns) {
        if (sound && column.required &&
            std::ranges::count(headings, &column, &Heading::column) == 0) {
            refuse(header.front(), fmt::format("the table has no column '{}'", column.example),
                   "the first line names the columns", diagnostics);
            sound = false;
        }
    }
    return sound ? std::optional{headings} : std::nullopt;
}

/// A word of the program at the place of a cell.
Node named(const Node& place, std::string text) {
    Node node = place;
    node.kind = Node::Kind::scalar;
    node.scalar = std::move(text);
    return node;
}

Node mapping_at(const Node& place) {
    Node node = place;
    node.kind = Node::Kind::mapping;
    node.scalar.clear();
    return node;
}

class Builder {
public:
    Builder(std::vector<Heading> headings, const CsvRow& header, Diagnostics& diagnostics)
        : headings_(std::move(headings))
        , specimens_(mapping_at(header.front()))
        , batches_(mapping_at(header.front()))
        , diagnostics_(diagnostics) {}

    void add(const CsvRow& row) {
        if (row.size() != headings_.size()) {
            refuse(row.front(),
                   fmt::format("this row has {} cells, the header has {}", row.size(),
                               headings_.size()),
                   "give every row one cell for each column; write decimals with a point",
                   diagnostics_);
            return;
        }
        Entry specimen{named(*cell(row, "specimen"), cell(row, "specimen")->scalar),
                       mapping_at(*cell(row, "specimen"))};
        for (std::size_t i = 0; i < row.size(); ++i) {
            const Column& column = *headings_[i].column;
            if (column.name != "specimen" && !column.of_batch) {
                specimen.value.entries.push_back(entry(row[i], headings_[i]));
            }
        }
        specimens_.entries.push_back(std::move(specimen));
        add_batch(row);
    }

    SpecimenTable table() && {
        const bool describes_batches = std::ranges::any_of(
            headings_, [](const Heading& heading) { return heading.column->of_batch; });
        return {std::move(specimens_),
                describes_batches ? std::optional{std::move(batches_)} : std::nullopt};
    }

private:
    const Node* cell(const CsvRow& row, std::string_view name) const {
        for (std::size_t i = 0; i < row.size(); ++i) {
            if (headings_[i].column->name == name) {
                return &row[i];
            }
        }
        return nullptr;
    }

    static Entry entry(const Node& cell, const Heading& heading) {
        Node value = cell;
        if (value.kind == Node::Kind::scalar && !heading.unit.empty()) {
            value.scalar += " " + heading.unit;
        }
        return {named(cell, std::string{heading.column->name}), std::move(value)};
    }

    /// What a row says of its batch; a cell left empty says nothing, two rows must not disagree.
    void add_batch(const CsvRow& row) {
        const Node& name = *cell(row, "batch");
        if (name.kind == Node::Kind::empty) {
            return; // told with the specimen
        }
        const auto [place, is_new] = places_.emplace(name.scalar, batches_.entries.size());
        if (is_new) {
            batches_.entries.push_back({named(name, name.scalar), mapping_at(name)});
        }
        Node& batch = batches_.entries[place->second].value;
        for (std::size_t i = 0; i < row.size(); ++i) {
            const Column& column = *headings_[i].column;
            if (!column.of_batch || row[i].kind == Node::Kind::empty) {
                continue;
            }
            const Entry* earlier = batch.find(column.name);
            Entry stated = entry(row[i], headings_[i]);
            if (!earlier) {
                batch.entries.push_back(std::move(stated));
            } else if (earlier->value.scalar != stated.value.scalar) {
                refuse(row[i],
                       fmt::format("'{}' of {} is '{}' here and '{}' on line {}", column.name,
                                   name.scalar, row[i].scalar, earlier->value.scalar,
                                   earlier->value.spot.line + 1),
                       "a batch has one; correct the wrong row", diagnostics_);
            }
        }
    }

    std::vector<Heading> headings_;
    Node specimens_;
    Node batches_;
    std::map<std::string, std::size_t> places_;
    Diagnostics& diagnostics_;
};

} // namespace

std::optional<SpecimenTable> read_specimen_table(const SourceText& source,
                                                 Diagnostics& diagnostics) {
    const std::size_t faults_before = diagnostics.size();
    CsvReader reader{source, diagnostics};
    std::vector<CsvRow> rows;
    while (auto row = reader.next()) {
        rows.push_back(without_blanks(std::move(*row)));
    }
    if (diagnostics.size() > faults_before) {
        return std::nullopt; // a row that could not be read may be any of them
    }
    if (rows.size() < 2) {
        diagnostics.push_back(source.diagnostic({}, "the table has no rows",
                                                "a header and a line for each specimen"));
        return std::nullopt;
    }
    auto headings = read_header(rows.front(), diagnostics);
    if (!headings) {
        return std::nullopt;
    }
    Builder builder{std::move(*headings), rows.front(), diagnostics};
    for (std::size_t i = 1; i < rows.size(); ++i) {
        builder.add(rows[i]);
    }
    return std::move(builder).table();
}

} // namespace boardmark::input
