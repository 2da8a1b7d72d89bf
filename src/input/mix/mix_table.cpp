#include <boardmark/input/mix/mix_table.hpp>

#include "../gate/tree_builder.hpp"
#include "kept_keys.hpp"
#include "mix_tree.hpp"
#include "table_row.hpp"

#include <algorithm>
#include <map>
#include <mutex>
#include <tuple>
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
        return found != kept->files.end()
                   ? found->second
                   : kept->files.emplace(name, loaded_by(load, name)).first->second;
    };
}

/// The last key that stands in a node, or below one that does.
const Node& last_below(const Node& node) {
    return node.entries.empty() ? node : last_below(node.entries.back().value);
}

/// Where the value of a column stands in the base mix; where it is none of its keys, behind all
/// that stands in its section.
Diagnostic place_in_base(const TableColumn& column, const Node& root) {
    const Node* at = &root;
    for (const std::string& name : column.names) {
        const Entry* entry = at->find(name);
        if (!entry) {
            const Node& last = last_below(*at);
            Diagnostic behind = last.source->diagnostic(last.underline(), "", "");
            behind.column += last.length;
            return behind;
        }
        at = &entry->value;
    }
    return at->source->diagnostic(at->underline(), "", "");
}

/// At which character each cell of a row begins, from 1.
std::vector<std::size_t> starts_of_cells(const SourceText& line, std::size_t number) {
    std::vector<std::size_t> starts;
    for (const Node& cell : cells_of_row(line, number)) {
        starts.push_back(line.diagnostic(cell.underline(), "", "").column);
    }
    return starts;
}

} // namespace

struct MixTable::Parts {
    std::string table_name;
    ReadOptions options;
    Files files; ///< which the keys of the base mix point into
    std::optional<MixTree> tree = {};
    std::optional<core::AnyCompleteMix> base = {};
    std::vector<TableColumn> columns = {};
    std::vector<Diagnostic> places = {}; ///< in the base mix, of the columns

    /// Puts what is told of a row in the order of the mix file that it stands for.
    void sort(Diagnostics& diagnostics, const std::vector<std::size_t>& starts) const {
        const auto place_of = [&](const Diagnostic& diagnostic) {
            const Diagnostic* place = &diagnostic;
            if (diagnostic.file == table_name) {
                const auto after = std::ranges::upper_bound(starts, diagnostic.column);
                place = &places[static_cast<std::size_t>(after - starts.begin()) - 1];
            }
            return std::tuple{files.order_of(place->file), place->line, place->column};
        };
        std::ranges::stable_sort(diagnostics, {}, place_of);
    }
};

MixTable::MixTable(std::unique_ptr<const Parts> parts)
    : parts_{std::move(parts)} {}
MixTable::MixTable(MixTable&&) noexcept = default;
MixTable& MixTable::operator=(MixTable&&) noexcept = default;
MixTable::~MixTable() = default;

const core::AnyCompleteMix& MixTable::base() const {
    return *parts_->base;
}

struct MixRowReader::Kept {
    explicit Kept(const MixTable::Parts& read)
        : parts{read} {}

    const MixTable::Parts& parts;
    KeptKeys keys{*parts.tree, parts.columns, parts.options};
};

MixRowReader::MixRowReader(const MixTable& table)
    : kept_{std::make_unique<Kept>(*table.parts_)} {}
MixRowReader::MixRowReader(MixRowReader&&) noexcept = default;
MixRowReader::~MixRowReader() = default;

MixReading MixRowReader::read(TableLine row) {
    const MixTable::Parts& parts = kept_->parts;
    const SourceText line{parts.table_name, without_line_end(std::move(row.text)), row.number};
    Diagnostics told;
    auto values = values_of_row(line, row.number, parts.columns, told);
    if (!values) {
        return {std::nullopt, std::move(told)};
    }
    const auto sort = [&](Diagnostics& diagnostics) {
        if (!diagnostics.empty()) {
            parts.sort(diagnostics, starts_of_cells(line, row.number));
        }
    };
    Files files;
    if (told.empty()) {
        if (auto reading = kept_->keys.read(*values, {files, sort})) {
            return *std::move(reading);
        }
    }
    MixTree tree = *parts.tree;
    for (std::size_t i = 0; i < values->size(); ++i) {
        if (auto& value = (*values)[i]) {
            write_value(tree.root, parts.columns[i].names, *std::move(value));
        }
    }
    return mix_of(std::move(tree), {files, sort}, parts.options, std::move(told));
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
        Files& files = parts->files;
        const auto sort = [&](Diagnostics& told) { files.sort(told); };
        MixReading reading =
            mix_of(*parts->tree, {files, sort}, parts->options, std::move(opened.diagnostics));
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
        for (const TableColumn& column : parts->columns) {
            parts->places.push_back(place_in_base(column, parts->tree->root));
        }
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
