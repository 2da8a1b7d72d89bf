#include "table_columns.hpp"

#include <boardmark/text/closest.hpp>
#include <boardmark/units/unit.hpp>

#include "../fields/fields.hpp"
#include "../gate/path.hpp"
#include "../reading/refuse.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace boardmark::input {
namespace {

std::string without_blanks(std::string_view text) {
    const std::size_t first = text.find_first_not_of(" \t");
    return first == std::string_view::npos
               ? ""
               : std::string{text.substr(first, text.find_last_not_of(" \t") - first + 1)};
}

/// `requirements.strength [psi]` as a key and its unit.
std::pair<std::string, std::string> split_heading(std::string_view heading) {
    const std::string text = without_blanks(heading);
    const std::size_t opened = text.rfind('[');
    if (opened == std::string::npos || !text.ends_with(']')) {
        return {text, ""};
    }
    return {without_blanks(std::string_view{text}.substr(0, opened)),
            without_blanks(std::string_view{text}.substr(opened + 1, text.size() - opened - 2))};
}

/// The name at the beginning of a key: the longest that the file has there, for names of the user's
/// may have points, else the part up to the first point.
std::string_view first_name(std::string_view key, const Node* section) {
    std::string_view found = key.substr(0, key.find('.'));
    if (!section) {
        return found;
    }
    for (const Entry& entry : section->entries) {
        const std::string_view name = entry.key.scalar;
        const bool begins =
            key.starts_with(name) && (key.size() == name.size() || key[name.size()] == '.');
        if (begins && name.size() > found.size()) {
            found = name;
        }
    }
    return found;
}

bool is_at(const Field& field, const std::vector<std::string>& names, std::size_t count) {
    std::string_view rest = field.path;
    for (std::size_t i = 0; i < count; ++i) {
        const std::size_t dot = rest.find('.');
        const std::string_view part = rest.substr(0, dot);
        const bool last = i + 1 == count;
        if ((part != "*" && part != names[i]) || last != (dot == std::string_view::npos)) {
            return false;
        }
        rest.remove_prefix(last ? rest.size() : dot + 1);
    }
    return true;
}

/// The field of the first so many names, or nullptr.
const Field* field_at(const std::vector<std::string>& names, std::size_t count) {
    const Field* found = nullptr;
    for (const Field& field : mix_fields()) {
        const bool is_name = field.path.ends_with('*');
        if (is_at(field, names, count) && (!found || !is_name)) {
            found = &field;
        }
    }
    return found;
}

/// A header that is being read.
class TableHeader {
public:
    TableHeader(const Node& base, Diagnostics& diagnostics)
        : base_{base}
        , diagnostics_{diagnostics} {}

    void read(const Node& cell) {
        auto [key, unit] = split_heading(cell.scalar);
        if (key.empty()) {
            return refuse_cell(cell, "the column has no name",
                               "write a key of the mix file, as 'requirements.strength [psi]'");
        }
        TableColumn column{names_of(key), cell.scalar, std::move(unit)};
        if (column.names.size() > Path::longest) {
            return refuse_cell(cell, fmt::format("'{}' is not a key of a mix file", key),
                               keys_help);
        }
        if (column.names.size() == 1 && (key == "boardmark" || key == "reporting")) {
            return refuse_cell(cell, fmt::format("'{}' is the same for all rows", key),
                               "it stands in the base mix; delete the column");
        }
        if (may_write(cell, key, column) && has_sound_unit(cell, key, column) &&
            stands_once(cell, key, column)) {
            columns_.push_back(std::move(column));
        }
    }

    std::vector<TableColumn> columns() && { return std::move(columns_); }

private:
    static constexpr const char* keys_help = "'boardmark help keys' lists all keys";

    void refuse_cell(const Node& cell, std::string message, std::string advice) {
        refuse(cell, std::move(message), std::move(advice), diagnostics_);
    }

    std::vector<std::string> names_of(std::string_view key) const {
        std::vector<std::string> names;
        const Node* section = &base_;
        while (!key.empty()) {
            const std::string_view name = first_name(key, section);
            names.emplace_back(name);
            const Entry* entry = section ? section->find(name) : nullptr;
            section = entry ? &entry->value : nullptr;
            key.remove_prefix(std::min(name.size() + 1, key.size()));
        }
        return names;
    }

    /// Whether a value may stand there in this file.
    bool may_write(const Node& cell, const std::string& key, const TableColumn& column) {
        const std::vector<std::string>& names = column.names;
        const Field* field = field_at(names, names.size());
        const Field* table = names.size() > 1 ? field_at(names, names.size() - 1) : nullptr;
        const bool is_pair =
            !field && table && table->shape != Shape::section && table->shape != Shape::value;
        if (!field && !is_pair) {
            refuse_cell(cell, fmt::format("'{}' is not a key of a mix file", key), near(names));
            return false;
        }
        if (field && field->shape == Shape::section) {
            refuse_cell(cell, fmt::format("'{}' holds keys, not a value", key),
                        "name one of the keys below it");
            return false;
        }
        return has_place(cell, names, is_pair);
    }

    /// Whether the file has what the value stands in.
    bool has_place(const Node& cell, const std::vector<std::string>& names, bool is_pair) {
        const Node* at = &base_;
        for (std::size_t i = 0; i < names.size(); ++i) {
            if (at->kind != Node::Kind::mapping) {
                refuse_cell(cell,
                            fmt::format("the base mix writes '{}' in one word, not by its keys",
                                        fmt::join(names.begin(), names.begin() + long(i), ".")),
                            "write it there with keys and values");
                return false;
            }
            const Entry* entry = at->find(names[i]);
            const bool is_material = i == 1 && names.front() == "materials";
            const bool needed = is_material || (is_pair && i + 1 == names.size());
            if (!entry && needed) {
                refuse_cell(cell,
                            fmt::format("the base mix has no '{}' under '{}'", names[i],
                                        fmt::join(names.begin(), names.begin() + long(i), ".")),
                            is_material ? "describe the material there"
                                        : "write it there; a share or a dose may be 0");
                return false;
            }
            if (!entry) {
                return true;
            }
            at = &entry->value;
        }
        return true;
    }

    /// The key that was meant, as advice.
    static std::string near(const std::vector<std::string>& names) {
        std::vector<std::string> candidates;
        for (const Field& field : mix_fields()) {
            std::string candidate{field.path};
            const std::size_t star = candidate.find('*');
            if (star != std::string::npos && names.size() > 1) {
                candidate.replace(star, 1, names[1]);
            }
            candidates.push_back(std::move(candidate));
        }
        const std::vector<std::string_view> known(candidates.begin(), candidates.end());
        const auto found = text::closest(fmt::format("{}", fmt::join(names, ".")), known);
        return found ? fmt::format("did you mean '{}'?", *found) : keys_help;
    }

    bool has_sound_unit(const Node& cell, const std::string& key, const TableColumn& column) {
        if (column.unit.empty()) {
            return true;
        }
        const std::vector<std::string>& names = column.names;
        const Field* field = field_at(names, names.size());
        field = field ? field : field_at(names, names.size() - 1);
        const Value& value =
            field->shape == Shape::value_or_table && field->whole && field_at(names, names.size())
                ? *field->whole
                : field->value;
        if (value.form == Form::price) {
            return true; // currency and unit; the cells tell
        }
        const bool in_pairs = field->shape == Shape::table || field->shape == Shape::table_or_point;
        if (value.form != Form::quantity || (in_pairs && field_at(names, names.size()))) {
            refuse_cell(cell, fmt::format("'{}' takes no unit in its heading", key),
                        "write the cells as they would stand in the file");
            return false;
        }
        const units::Unit* unit = units::find_unit(column.unit);
        if (!unit) {
            refuse_cell(cell, fmt::format("'{}' is not a unit known here", column.unit),
                        fmt::format("the file would have for example '{}'", field->example));
            return false;
        }
        const bool fits = std::ranges::any_of(value.dimensions, [&](const auto& dimension) {
            return dimension && *dimension == unit->dimension;
        });
        if (!fits) {
            refuse_cell(
                cell,
                fmt::format("'{}': '{}' is {}", key, column.unit, units::describe(unit->dimension)),
                fmt::format("the file would have for example '{}'", field->example));
        }
        return fits;
    }

    /// Whether no other column writes the same value, or what it stands in.
    bool stands_once(const Node& cell, const std::string& key, const TableColumn& column) {
        const auto overlaps = [&](const TableColumn& other) {
            const std::size_t common = std::min(other.names.size(), column.names.size());
            return std::equal(other.names.begin(), other.names.begin() + long(common),
                              column.names.begin());
        };
        if (std::ranges::none_of(columns_, overlaps)) {
            return true;
        }
        refuse_cell(cell, fmt::format("'{}' is written by two columns", key), "delete one");
        return false;
    }

    const Node& base_;
    Diagnostics& diagnostics_;
    std::vector<TableColumn> columns_;
};

} // namespace

std::optional<std::vector<TableColumn>> table_columns(const std::vector<Node>& header,
                                                      const Node& base, Diagnostics& diagnostics) {
    const std::size_t before = diagnostics.size();
    if (header.size() == 1 && header.front().scalar.find(';') != std::string::npos) {
        refuse(header.front(), "the columns are separated by semicolons",
               "save the file with commas between the cells", diagnostics);
        return std::nullopt;
    }
    TableHeader reading{base, diagnostics};
    for (const Node& cell : header) {
        reading.read(cell);
    }
    return diagnostics.size() == before ? std::optional{std::move(reading).columns()}
                                        : std::nullopt;
}

} // namespace boardmark::input
