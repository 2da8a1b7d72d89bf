#include "document.hpp"

#include <boardmark/text/closest.hpp>
#include <boardmark/text/utf8.hpp>

#include "../fields/field_path.hpp"
#include "../reading/refuse.hpp"
#include "../values/out_of_scope.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <utility>

namespace boardmark::input {
namespace {

constexpr std::size_t longest_name = 80;
constexpr std::size_t most_pairs = 100;
constexpr std::size_t most_looked_through = 64;

bool is_digit(char character) {
    return character >= '0' && character <= '9';
}

/// A key without a value that is really a value torn at a comma, or a key and a value without the
/// space between them.
bool refuse_torn_value(const Entry& entry, bool keys_are_names, Diagnostics& diagnostics) {
    const std::string& key = entry.key.scalar;
    if (entry.value.kind != Node::Kind::empty || key.empty()) {
        return false;
    }
    if (keys_are_names && is_digit(key.front())) {
        refuse(entry.key, fmt::format("'{}' is left over: a comma ends a value", key),
               "write decimals with a point, as in 1.5", diagnostics);
        return true;
    }
    if (key.starts_with("likely ")) {
        refuse(entry.key, fmt::format("'{}' is left over: a comma ends a value", key),
               "write it straight after the unit, without a comma", diagnostics);
        return true;
    }
    const std::size_t colon = key.find(':');
    if (colon == std::string::npos || colon == 0) {
        return false;
    }
    refuse(entry.key, fmt::format("a space is missing after '{}:'", key.substr(0, colon)),
           fmt::format("write '{}: {}'", key.substr(0, colon), key.substr(colon + 1)), diagnostics);
    return true;
}

/// Whether a key appears a second time; both places are named.
bool refuse_duplicate(const Entry* first, const Entry& entry, const Path& path,
                      Diagnostics& diagnostics) {
    if (first == &entry) {
        return false;
    }
    refuse(entry.key, fmt::format("'{}' is given a second time", dotted(path)),
           fmt::format("the first is on line {}; keep one", first->key.spot.line + 1), diagnostics);
    return true;
}

bool refuse_long_name(const Entry& entry, Diagnostics& diagnostics) {
    const std::size_t length = text::count_characters(entry.key.scalar);
    if (length > 0 && length <= longest_name) {
        return false;
    }
    refuse(entry.key,
           length == 0
               ? std::string{"a name is empty"}
               : fmt::format("a name of {} characters; at most {} are read", length, longest_name),
           "give it a short name", diagnostics);
    return true;
}

void read_list(Reading& reading, const Path& path, Diagnostics& diagnostics) {
    if (reading.field->shape == Shape::list_or_one && reading.node->kind == Node::Kind::scalar) {
        auto parsed = read_value(*reading.node, reading.field->value, path, reading.field->example,
                                 diagnostics);
        reading.sound = parsed.has_value();
        if (parsed) {
            reading.items.push_back(std::move(*parsed));
        }
        return;
    }
    if (reading.node->kind != Node::Kind::list) {
        refuse(*reading.node,
               fmt::format("{}: expected a list, found {}", dotted(path),
                           describe(reading.node->kind)),
               fmt::format("write for example '{}'", reading.field->example), diagnostics);
        reading.sound = false;
        return;
    }
    for (const Node& item : reading.node->items) {
        if (auto parsed =
                read_value(item, reading.field->value, path, reading.field->example, diagnostics)) {
            reading.items.push_back(std::move(*parsed));
        } else {
            reading.sound = false;
        }
    }
}

/// What may stand in place of the pairs is one word; a near miss of it gets a suggestion.
std::string advice_for_table(const Reading& reading) {
    const auto near = reading.node->kind == Node::Kind::scalar
                          ? text::closest(reading.node->scalar, reading.field->key.words)
                          : std::nullopt;
    return near ? fmt::format("did you mean '{}'?", *near)
                : fmt::format("write for example '{}'", reading.field->example);
}

/// A table may be one word in place of its pairs (`water_reduction: standard minimum`).
bool read_word_instead(Reading& reading) {
    const auto words = reading.field->key.words;
    if (reading.node->kind != Node::Kind::scalar ||
        std::ranges::count(words, std::string_view{reading.node->scalar}) == 0) {
        return false;
    }
    Parsed word;
    word.node = reading.node;
    word.text = reading.node->scalar;
    word.is_word = true;
    reading.value = std::move(word);
    return true;
}

/// One value may stand for all pairs where the field says so.
bool is_one_value(const Reading& reading) {
    const Shape shape = reading.field->shape;
    return shape == Shape::value ||
           (shape == Shape::value_or_table && reading.node->kind == Node::Kind::scalar);
}

/// One part of a scalar as a node of its own, so that the caret stands under it.
Node part_of(const Node& node, std::size_t from, std::size_t length) {
    Node part = node;
    part.scalar = node.scalar.substr(from, length);
    part.spot.byte += from + (node.quoted ? 1 : 0);
    part.length = part.scalar.size();
    part.quoted = false;
    return part;
}

/// A table of one point: `16 % at 8 fl oz/cwt`, or `16 %` alone, which has no place on the left.
/// The parts live as long as the reading.
bool read_point_instead(Reading& reading, const Path& path, Diagnostics& diagnostics) {
    if (reading.field->shape != Shape::table_or_point || reading.node->kind != Node::Kind::scalar) {
        return false;
    }
    constexpr std::string_view at = " at ";
    const std::string& written = reading.node->scalar;
    const std::size_t split = written.find(at);
    const auto read_part = [&](std::size_t from, std::size_t length, const Value& by) {
        reading.parts.push_back(std::make_shared<Node>(part_of(*reading.node, from, length)));
        return read_value(*reading.parts.back(), by, path, reading.field->example, diagnostics);
    };
    auto value = read_part(0, split, reading.field->value);
    if (split == std::string::npos) {
        reading.value = std::move(value);
        reading.sound = reading.value.has_value();
        return true;
    }
    Value key_value = reading.field->key;
    key_value.words = {};
    auto key = read_part(split + at.size(), std::string::npos, key_value);
    if (key && value) {
        reading.pairs.push_back({std::move(*key), std::move(*value)});
    } else {
        reading.sound = false;
    }
    return true;
}

void read_table(Reading& reading, const Path& path, Diagnostics& diagnostics) {
    if (read_word_instead(reading) || read_point_instead(reading, path, diagnostics)) {
        return;
    }
    if (reading.node->kind != Node::Kind::mapping || reading.node->entries.empty()) {
        refuse(*reading.node,
               fmt::format("{}: expected pairs of values, found {}", dotted(path),
                           reading.node->kind == Node::Kind::mapping
                               ? "none"
                               : describe(reading.node->kind)),
               advice_for_table(reading), diagnostics);
        reading.sound = false;
        return;
    }
    if (reading.node->entries.size() > most_pairs) {
        refuse(*reading.key,
               fmt::format("{} has {} pairs; at most {} are read", dotted(path),
                           reading.node->entries.size(), most_pairs),
               "keep those that matter", diagnostics);
        reading.sound = false;
        return;
    }
    for (const Entry& entry : reading.node->entries) {
        const Path pair_path = path.below(entry.key.scalar);
        if (refuse_duplicate(reading.node->find(entry.key.scalar), entry, pair_path, diagnostics)) {
            reading.sound = false;
            continue;
        }
        if (entry.value.kind == Node::Kind::empty) {
            const Form form = reading.field->key.form;
            const bool keys_are_names = form == Form::text || form == Form::kind;
            if (!refuse_torn_value(entry, keys_are_names, diagnostics)) {
                refuse(entry.key, fmt::format("{} has no value", dotted(pair_path)),
                       fmt::format("write for example '{}'", reading.field->example), diagnostics);
            }
            reading.sound = false;
            continue;
        }
        Value key_value = reading.field->key;
        key_value.words = {};
        auto key = read_value(entry.key, key_value, path, reading.field->example, diagnostics);
        auto value = read_value(entry.value, reading.field->value, pair_path,
                                reading.field->example, diagnostics);
        if (key && value) {
            reading.pairs.push_back({std::move(*key), std::move(*value)});
        } else {
            reading.sound = false;
        }
    }
}

} // namespace

Document::Document(const Node& root, FieldTables fields, Diagnostics& diagnostics)
    : fields_(fields) {
    read_section(root, {}, top_, diagnostics);
}

/// The key straight below a section, or at the top. Those of a section stand behind it in its
/// table, so the search begins there.
const Field* Document::field_below(const Field* section, std::string_view key) const {
    const std::string_view above = section ? section->path : std::string_view{};
    const std::size_t before = section ? above.size() + 1 : 0; // with its point
    const auto first_of = [&](std::span<const Field> fields) {
        const auto found = std::ranges::find_if(fields, [&](const Field& field) {
            const std::string_view path = field.path;
            return path.size() == before + key.size() && path.ends_with(key) &&
                   (!section || (path.starts_with(above) && path[above.size()] == '.'));
        });
        return found == fields.end() ? nullptr : &*found;
    };
    for (const std::span<const Field> table : fields_.all()) {
        const bool holds_section = section && std::greater_equal{}(section, table.data()) &&
                                   std::less{}(section, table.data() + table.size());
        if (holds_section) {
            const auto behind = static_cast<std::size_t>(section - table.data()) + 1;
            if (const Field* found = first_of(table.subspan(behind))) {
                return found;
            }
        }
    }
    for (const std::span<const Field> table : fields_.all()) {
        if (const Field* found = first_of(table)) {
            return found;
        }
    }
    return nullptr;
}

const Field* Document::field_of(const Field* section, std::string_view key) const {
    // A key of the format has no point in it; a name of the user's may have one.
    const bool may_be_a_key = key.find('.') == std::string_view::npos;
    const Field* field = may_be_a_key ? field_below(section, key) : nullptr;
    return field ? field : field_below(section, "*");
}

void Document::refuse_unknown(const Entry& entry, const Path& path, const Field* section,
                              Diagnostics& diagnostics) {
    const Node& key = entry.key;
    const std::string_view above = section ? section->path : std::string_view{};
    constexpr bool keys_are_names = true;
    if (refuse_torn_value(entry, keys_are_names, diagnostics)) {
        return;
    }
    if (auto scope = key_out_of_scope(key.scalar)) {
        refuse(key, fmt::format("{}: {}", dotted(path), scope->reason), std::move(scope->advice),
               diagnostics);
        Path slump = path; // what is written in its place
        slump.back() = "slump";
        mark_told(slump);
        return;
    }
    std::vector<std::string_view> siblings;
    std::string elsewhere;
    for (const std::span<const Field> table : fields_.all()) {
        for (const Field& field : table) {
            if (parent_of(field.path) == above) {
                siblings.push_back(last_part(field.path));
            } else if (last_part(field.path) == key.scalar && elsewhere.empty()) {
                elsewhere = parent_of(field.path);
            }
        }
    }
    const auto near = text::closest(key.scalar, siblings);
    constexpr std::size_t most_listed = 8;
    std::string advice;
    if (near) {
        advice = fmt::format("did you mean '{}'?", *near);
        Path meant = path;
        meant.back() = *near;
        mark_told(meant);
    } else if (!elsewhere.empty()) {
        advice = fmt::format("it belongs under '{}'", elsewhere);
    } else if (siblings.size() <= most_listed) {
        advice = fmt::format("known here: {}", fmt::join(siblings, ", "));
    } else {
        advice = "'boardmark help keys' lists all keys";
    }
    refuse(key, fmt::format("'{}' is not a key of this format", dotted(path)), std::move(advice),
           diagnostics);
}

void Document::read_value_of(const Path& path, Reading& reading, Diagnostics& diagnostics) {
    const Field& field = *reading.field;
    const Node& value_node = *reading.node;
    if (value_node.kind == Node::Kind::empty) {
        refuse(*reading.key, fmt::format("{} has no value", dotted(path)),
               fmt::format("write for example '{}'", field.example), diagnostics);
        reading.sound = false;
    } else if (field.shape == Shape::section) {
        if (value_node.kind == Node::Kind::mapping) {
            read_section(value_node, path, reading, diagnostics);
        } else {
            refuse(value_node,
                   fmt::format("{}: expected keys and values, found {}", dotted(path),
                               describe(value_node.kind)),
                   fmt::format("write for example '{}'", field.example), diagnostics);
            reading.sound = false;
        }
    } else if (field.shape == Shape::list || field.shape == Shape::list_or_one) {
        read_list(reading, path, diagnostics);
    } else if (!is_one_value(reading)) {
        read_table(reading, path, diagnostics);
    } else {
        const std::string_view example = field.example.substr(field.example.find(": ") + 2);
        const Value& value =
            field.shape == Shape::value_or_table && field.whole ? *field.whole : field.value;
        reading.value = read_value(value_node, value, path, example, diagnostics);
        reading.sound = reading.value.has_value();
    }
}

void Document::read_key(const Entry* first, const Entry& entry, const Path& path, Reading& section,
                        Diagnostics& diagnostics) {
    if (refuse_duplicate(first, entry, path, diagnostics) || refuse_long_name(entry, diagnostics)) {
        mark_told(path);
        return;
    }
    const Field* field = field_of(section.field, entry.key.scalar);
    if (!field) {
        refuse_unknown(entry, path, section.field, diagnostics);
        return;
    }
    Reading& reading = section.below.emplace_back();
    reading.name = entry.key.scalar;
    reading.field = field;
    reading.key = &entry.key;
    reading.node = &entry.value;
    read_value_of(path, reading, diagnostics);
}

void Document::read_section(const Node& node, const Path& path, Reading& section,
                            Diagnostics& diagnostics) {
    section.below.reserve(node.entries.size());
    if (node.entries.size() <= most_looked_through) {
        for (const Entry& entry : node.entries) {
            const std::string_view name = entry.key.scalar;
            read_key(node.find(name), entry, path.below(name), section, diagnostics);
        }
        return;
    }
    std::unordered_map<std::string_view, const Entry*> firsts;
    for (const Entry& entry : node.entries) {
        const std::string_view name = entry.key.scalar;
        const Entry* first = firsts.emplace(name, &entry).first->second;
        read_key(first, entry, path.below(name), section, diagnostics);
    }
    Index& index = large_[section.below.data()];
    for (std::size_t i = 0; i < section.below.size(); ++i) {
        index.emplace(section.below[i].key->scalar, i);
    }
}

Reading& Document::section_at(const Path& path) {
    return path.empty() ? top_ : const_cast<Reading&>(*find(path)); // this document's own
}

Reading Document::read_again(const Path& path, Diagnostics& diagnostics) {
    Reading& reading = section_at(path);
    Reading fresh;
    fresh.name = reading.name;
    fresh.field = reading.field;
    fresh.key = reading.key;
    fresh.node = reading.node;
    Reading before = std::exchange(reading, std::move(fresh));
    read_value_of(path, reading, diagnostics);
    return before;
}

void Document::put_back(const Path& path, Reading before) {
    section_at(path) = std::move(before);
}

void Document::read_added(const Path& section, const Node& node, const Entry& added,
                          Diagnostics& diagnostics) {
    const std::string_view name = added.key.scalar;
    read_key(node.find(name), added, section.below(name), section_at(section), diagnostics);
}

void Document::keep_first(const Path& section, std::size_t count) {
    std::vector<Reading>& below = section_at(section).below;
    below.erase(below.begin() + static_cast<std::ptrdiff_t>(count), below.end());
}

void Document::mark_told(const Path& path) {
    told_.emplace_back(path.begin(), path.end());
}

bool Document::is_told(const Path& path) const {
    return std::ranges::any_of(told_, [&](const std::vector<std::string>& told) {
        return std::equal(told.begin(), told.end(), path.begin(), path.end());
    });
}

const Reading* Document::find(const Reading& section, std::string_view name) const {
    const std::vector<Reading>& below = section.below;
    const auto large =
        below.size() > most_looked_through ? large_.find(below.data()) : large_.end();
    if (large != large_.end() && large->second.size() == below.size()) {
        const auto found = large->second.find(name);
        return found == large->second.end() ? nullptr : &below[found->second];
    }
    for (const Reading& reading : below) {
        if (reading.name == name) {
            return &reading;
        }
    }
    return nullptr;
}

const Reading* Document::find(const Path& path) const {
    const Reading* reading = &top_;
    for (const std::string_view name : path) {
        reading = find(*reading, name);
        if (!reading) {
            return nullptr;
        }
    }
    return path.empty() ? nullptr : reading;
}

const Parsed* Document::value(const Path& path) const {
    const Reading* reading = find(path);
    return reading && reading->value ? &*reading->value : nullptr;
}

std::optional<double> Document::number(const Path& path) const {
    const Parsed* parsed = value(path);
    return parsed && !parsed->is_word ? std::optional{parsed->number} : std::nullopt;
}

std::optional<std::string> Document::text(const Path& path) const {
    const Parsed* parsed = value(path);
    return parsed ? std::optional{parsed->text} : std::nullopt;
}

bool Document::flag(const Path& path, bool otherwise) const {
    const Parsed* parsed = value(path);
    return parsed ? parsed->flag : otherwise;
}

std::span<const Reading> Document::below(const Path& path) const {
    const Reading* section = path.empty() ? &top_ : find(path);
    return section ? std::span{section->below} : std::span<const Reading>{};
}

std::vector<std::string_view> Document::names(const Path& path) const {
    std::vector<std::string_view> names;
    for (const Reading& reading : below(path)) {
        names.push_back(reading.key->scalar);
    }
    return names;
}

} // namespace boardmark::input
