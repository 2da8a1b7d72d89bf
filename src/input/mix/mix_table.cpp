#include <boardmark/input/mix/mix_table.hpp>
#include <boardmark/units/number.hpp>

#include "../csv/csv_reader.hpp"
#include "../gate/encoding.hpp"
#include "../gate/gate.hpp"
#include "../gate/tree_builder.hpp"
#include "../reading/refuse.hpp"
#include "mix_tree.hpp"
#include "table_columns.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <mutex>
#include <utility>
#include <variant>

namespace boardmark::input {
namespace {

/// Loads each file once, for whoever asks, from whatever thread.
Loader loaded_once(Loader load) {
    struct Kept {
        std::mutex turn;
        std::map<std::string, std::variant<std::string, LoadFailure>> files;
    };
    return [kept = std::make_shared<Kept>(), load = std::move(load)](const std::string& name) {
        const std::lock_guard<std::mutex> turn{kept->turn};
        const auto found = kept->files.find(name);
        return found != kept->files.end() ? found->second
                                          : kept->files.emplace(name, load(name)).first->second;
    };
}

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

void write_value(Node& root, const TableColumn& column, Node value) {
    Node* at = &root;
    const Node place = value;
    for (const std::string& name : column.names) {
        at = &entry_below(*at, name, place);
    }
    *at = std::move(value);
}

void without_blanks_around(Node& cell) {
    const std::size_t first = cell.scalar.find_first_not_of(" \t");
    cell.scalar = first == std::string::npos
                      ? ""
                      : cell.scalar.substr(first, cell.scalar.find_last_not_of(" \t") - first + 1);
}

/// A line as it stands between its ends.
std::string without_line_end(std::string line) {
    if (line.ends_with('\r')) {
        line.pop_back();
    }
    return line;
}

/// The cells of a line. Throws Refused.
std::vector<Node> cells_of_row(const SourceText& line, std::size_t number) {
    if (line.text().size() > longest_table_row) {
        throw Refused{{{number, 0}}, "the row is longer than 64 KiB", "cut it"};
    }
    demand_text(line);
    return cells_of(line, number);
}

} // namespace

struct MixTable::Parts {
    std::string table_name;
    ReadOptions options;
    Files files; ///< which the keys of the base mix point into
    std::optional<MixTree> tree = {};
    std::optional<core::AnyCompleteMix> base = {};
    std::vector<TableColumn> columns = {};
};

MixTable::MixTable(std::unique_ptr<const Parts> parts)
    : parts_{std::move(parts)} {}
MixTable::MixTable(MixTable&&) noexcept = default;
MixTable& MixTable::operator=(MixTable&&) noexcept = default;
MixTable::~MixTable() = default;

const core::AnyCompleteMix& MixTable::base() const {
    return *parts_->base;
}

MixReading MixTable::read(TableLine row) const {
    const SourceText line{parts_->table_name, without_line_end(std::move(row.text)), row.number};
    Diagnostics told;
    std::vector<Node> cells;
    try {
        cells = cells_of_row(line, row.number);
    } catch (const Refused& refused) {
        told.push_back(line.diagnostic(refused.where, refused.message, refused.advice));
        return {std::nullopt, std::move(told)};
    }
    const auto& columns = parts_->columns;
    if (cells.size() != columns.size()) {
        refuse(cells[std::min(cells.size(), columns.size()) - 1],
               fmt::format("the row has {} cells; the header names {} columns", cells.size(),
                           columns.size()),
               "", told);
        return {std::nullopt, std::move(told)};
    }
    MixTree tree = *parts_->tree;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        without_blanks_around(cells[i]);
        if (cells[i].scalar.empty()) {
            continue;
        }
        const std::size_t before = told.size();
        if (auto value = value_of(std::move(cells[i]), columns[i], told)) {
            write_value(tree.root, columns[i], *std::move(value));
        } else {
            for (std::size_t at = before; at < told.size(); ++at) {
                told[at].message = columns[i].heading + ": " + told[at].message;
            }
        }
    }
    Files files;
    return mix_of(std::move(tree), files, parts_->options, std::move(told));
}

/// Opens a table; it alone fills the parts of one.
struct MixTableOpener {
    static MixTableOpened open(NamedSource base, NamedSource table, std::size_t header_line,
                               ReadOptions options) {
        MixTableOpened opened;
        options.load = loaded_once(std::move(options.load));
        auto parts = std::make_unique<MixTable::Parts>(
            MixTable::Parts{.table_name = table.name, .options = std::move(options), .files = {}});
        const SourceText& source = parts->files.add(std::move(base.name), std::move(base.text));
        parts->tree = mix_tree(source, parts->files, parts->options, opened.diagnostics);
        if (!parts->tree) {
            return opened;
        }
        MixReading reading =
            mix_of(*parts->tree, parts->files, parts->options, std::move(opened.diagnostics));
        opened.diagnostics = std::move(reading.diagnostics);
        if (!reading.mix) {
            return opened;
        }
        parts->base = std::move(reading.mix);
        auto columns = header_of(table, header_line, *parts, opened.diagnostics);
        if (!columns) {
            return opened;
        }
        parts->columns = *std::move(columns);
        opened.table = MixTable{std::move(parts)};
        return opened;
    }

private:
    static std::optional<std::vector<TableColumn>> header_of(const NamedSource& table,
                                                             std::size_t header_line,
                                                             const MixTable::Parts& parts,
                                                             Diagnostics& diagnostics) {
        const SourceText line{table.name, without_line_end(table.text), header_line};
        try {
            return table_columns(cells_of_row(line, header_line), parts.tree->root, diagnostics);
        } catch (const Refused& refused) {
            diagnostics.push_back(line.diagnostic(refused.where, refused.message, refused.advice));
            return std::nullopt;
        }
    }
};

MixTableOpened open_mix_table(NamedSource base, NamedSource table, std::size_t header_line,
                              ReadOptions options) {
    return MixTableOpener::open(std::move(base), std::move(table), header_line, std::move(options));
}

} // namespace boardmark::input
