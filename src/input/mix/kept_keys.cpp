#include "kept_keys.hpp"

#include "code_file.hpp"
#include "own_line.hpp"
#include "strength_class.hpp"
#include "table_row.hpp"

#include <algorithm>
#include <utility>

namespace boardmark::input {
namespace {

/// Makes room in every section that a column passes, so that keys that are added move none.
void make_room(Node& root, std::span<const TableColumn> columns) {
    for (const TableColumn& column : columns) {
        Node* at = &root;
        for (const std::string& name : column.names) {
            at->entries.reserve(at->entries.size() + columns.size());
            const auto found = std::ranges::find_if(
                at->entries, [&](const Entry& entry) { return entry.key.scalar == name; });
            if (found == at->entries.end()) {
                break;
            }
            at = &found->value;
        }
    }
}

std::optional<std::size_t> column_of(std::span<const TableColumn> columns,
                                     const std::vector<std::string>& names) {
    const auto found = std::ranges::find(columns, names, &TableColumn::names);
    return found == columns.end() ? std::nullopt
                                  : std::optional{std::size_t(found - columns.begin())};
}

bool same(const Diagnostic& one, const Diagnostic& other) {
    return one.line == other.line && one.column == other.column && one.file == other.file &&
           one.message == other.message;
}

} // namespace

KeptKeys::KeptKeys(const MixTree& base, std::span<const TableColumn> columns,
                   const ReadOptions& options)
    : options_{options}
    , columns_{columns}
    , tree_{base}
    , results_{take_results(tree_.root)}
    , strength_class_{take_strength_class(tree_.root, options.vocabulary)}
    , code_file_{fetch_code(tree_.root, files_, options, told_)}
    , strength_{column_of(columns, {"requirements", "strength"})}
    , code_{column_of(columns, {"requirements", "code"})}
    , writes_curve_{column_of(columns, {"requirements", "strength_curve"}).has_value()} {
    make_room(tree_.root, columns);
    document_.emplace(tree_.root, mix_field_tables(), told_);
    for (const TableColumn& column : columns) {
        places_.push_back(place_of(column));
    }
    for (Part& part : parts_) {
        if (part.added.empty()) {
            document_->put_back(part.path, document_->read_again(part.path, part.told));
        }
    }
    keep_materials();
}

void KeptKeys::keep_materials() {
    Diagnostics of_all;
    const MixContext reading{{tree_.root, *document_, mix_field_tables(), of_all},
                             options_,
                             strength_class_,
                             code_file_};
    Materials materials = read_materials(reading);
    if (!of_all.empty()) {
        return;
    }
    for (const TableColumn& column : columns_) {
        if (column.names.size() > 1 && column.names.front() == "materials") {
            materials.erase(column.names[1]);
        }
    }
    const MixContext telling{{tree_.root, *document_, mix_field_tables(), told_}, options_};
    for (const auto& [name, material] : materials) {
        ask_back_improbable(telling, material);
    }
    materials_ = std::move(materials);
}

KeptKeys::Place KeptKeys::place_of(const TableColumn& column) {
    Place place;
    Node* at = &tree_.root;
    Path path;
    Path deepest; // that was read as a key
    for (const std::string& name : column.names) {
        const auto found = std::ranges::find_if(
            at->entries, [&](const Entry& entry) { return entry.key.scalar == name; });
        if (found == at->entries.end()) {
            place.section = at;
            place.keys_of_section = at->entries.size();
            const Reading* section = document_->find(path);
            const bool is_section =
                path.empty() || (section && section->field->shape == Shape::section);
            place.part =
                part_of(is_section ? Part{path, name, at, at->entries.size()} : Part{deepest});
            return place;
        }
        path.push_back(name);
        deepest = document_->find(path) ? path : deepest;
        at = &found->value;
        ++place.names_above;
    }
    place.value = at;
    place.part = part_of({deepest});
    return place;
}

std::size_t KeptKeys::part_of(Part wanted) {
    const auto found = std::ranges::find_if(parts_, [&](const Part& part) {
        return part.path == wanted.path && part.added == wanted.added;
    });
    if (found != parts_.end()) {
        return static_cast<std::size_t>(found - parts_.begin());
    }
    parts_.push_back(std::move(wanted));
    return parts_.size() - 1;
}

bool KeptKeys::stands_alone(const std::vector<std::optional<Node>>& values) const {
    constexpr std::string_view of_file = "from ";
    return !(results_ && writes_curve_) &&
           std::ranges::none_of(values, [&](const std::optional<Node>& value) {
               return value && value->scalar.starts_with(of_file);
           });
}

/// What is told of the keys of the base mix that a row leaves as they are.
Diagnostics KeptKeys::told_of_base() const {
    Diagnostics told = told_;
    for (const Part& part : parts_) {
        if (part.touched) {
            std::erase_if(told, [&](const Diagnostic& diagnostic) {
                return std::ranges::any_of(part.told, [&](const Diagnostic& of_part) {
                    return same(of_part, diagnostic);
                });
            });
        }
    }
    return told;
}

/// The keys with the values of a row, as long as it lives.
class KeptKeys::Change {
public:
    Change(KeptKeys& kept, std::vector<std::optional<Node>>& values)
        : kept_{kept}
        , values_{values} {
        for (std::size_t i = 0; i < values.size(); ++i) {
            if (values[i]) {
                write(kept.places_[i], *values[i], kept.columns_[i].names);
            }
        }
    }

    ~Change() {
        for (Part& part : kept_.parts_) {
            if (part.before) {
                kept_.document_->put_back(part.path, *std::move(part.before));
                part.before.reset();
            } else if (part.touched) {
                kept_.document_->keep_first(part.path, part.keys_of_section);
            }
            part.touched = false;
        }
        for (std::size_t i = 0; i < values_.size(); ++i) {
            if (values_[i]) {
                take_back(kept_.places_[i], *values_[i]);
            }
        }
    }
    Change(const Change&) = delete;
    Change& operator=(const Change&) = delete;

    /// Reads what was changed.
    void read(Diagnostics& diagnostics) {
        for (Part& part : kept_.parts_) {
            if (part.touched && part.added.empty()) {
                part.before = kept_.document_->read_again(part.path, diagnostics);
            } else if (part.touched) {
                kept_.document_->read_added(part.path, *part.section,
                                            *part.section->find(part.added), diagnostics);
            }
        }
    }

private:
    void write(const Place& place, Node& value, std::span<const std::string> names) {
        kept_.parts_[place.part].touched = true;
        if (place.value) {
            std::swap(*place.value, value);
        } else {
            write_value(*place.section, names.subspan(place.names_above), value);
        }
    }

    static void take_back(const Place& place, Node& value) {
        if (place.value) {
            std::swap(*place.value, value);
            return;
        }
        auto& entries = place.section->entries;
        entries.erase(entries.begin() + static_cast<std::ptrdiff_t>(place.keys_of_section),
                      entries.end());
    }

    KeptKeys& kept_;
    std::vector<std::optional<Node>>& values_;
};

std::optional<MixReading> KeptKeys::read(std::vector<std::optional<Node>>& values,
                                         const KeySource& source) {
    if (!stands_alone(values)) {
        return std::nullopt;
    }
    const auto writes = [&](std::optional<std::size_t> column) {
        return column && values[*column];
    };
    MixReading reading;
    std::optional<core::StrengthName> strength_class = strength_class_;
    {
        Change change{*this, values};
        if (writes(strength_)) {
            strength_class = take_strength_class(tree_.root, options_.vocabulary);
        }
        reading.diagnostics = told_of_base();
        change.read(reading.diagnostics);
        if (!has_errors(reading.diagnostics)) {
            make_mix({{tree_.root, *document_, mix_field_tables(), reading.diagnostics},
                      options_,
                      strength_class,
                      writes(code_) ? nullptr : code_file_,
                      materials_ ? &*materials_ : nullptr},
                     results_, source, reading);
        }
    }
    if (writes(strength_) && strength_class) {
        values[*strength_]->scalar = strength_class->name; // which was replaced by its strength
    }
    return reading.mix ? std::optional{std::move(reading)} : std::nullopt;
}

} // namespace boardmark::input
