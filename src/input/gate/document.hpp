#pragma once

#include <boardmark/input/gate/diagnostic.hpp>

#include "../fields/fields.hpp"
#include "../values/value_reader.hpp"

#include <initializer_list>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace boardmark::input {

/// A pair of a table, where both sides were read.
struct Pair {
    Parsed key;
    Parsed value;
};

/// One key that the file holds, with what was read under it.
struct Reading {
    const Field* field;
    const Node* key;
    const Node* node;
    bool sound = true;                        ///< whether everything under the key could be read
    std::optional<Parsed> value;              ///< Shape::value
    std::vector<Parsed> items;                ///< Shape::list
    std::vector<Pair> pairs;                  ///< Shape::table
    std::vector<std::shared_ptr<Node>> parts; ///< of a scalar that was read in parts
};

/// The place of a key: the names from the top of the file down.
using Path = std::vector<std::string>;

/// "materials.stone.absorption"
std::string dotted(const Path& path);

/// Every key of a file that the table of fields knows, read and checked one by one.
class Document {
public:
    /// Reads a tree. Unknown and duplicate keys and wrong values become diagnostics.
    Document(const Node& root, std::span<const Field> fields, Diagnostics& diagnostics);

    /// What stands under a path, or nullptr where the file has no such key.
    const Reading* find(const Path& path) const;

    /// Whether the file has that key, or a fault about it has been told already: one that was meant
    /// to be it, or one that was refused.
    bool has(const Path& path) const { return find(path) || told_.contains(path); }

    /// Remembers that the fault about a key has been told.
    void mark_told(Path path) { told_.insert(std::move(path)); }

    /// The value under a path. Nothing where the key is missing or its value was wrong.
    const Parsed* value(const Path& path) const;

    std::optional<double> number(const Path& path) const;
    std::optional<std::string> text(const Path& path) const;
    bool flag(const Path& path, bool otherwise) const;

    /// The names below a path, in file order.
    std::vector<std::string> names(const Path& path) const;

private:
    void read_section(const Node& node, const Path& path, const std::string& pattern,
                      Diagnostics& diagnostics);
    void read_entry(const Entry& entry, const Path& path, const Field& field,
                    Diagnostics& diagnostics);
    const Field* field_of(const std::string& pattern, const std::string& key) const;
    void refuse_unknown(const Entry& entry, const Path& path, const std::string& pattern,
                        Diagnostics& diagnostics);

    std::span<const Field> fields_;
    std::map<Path, Reading> readings_;
    std::map<Path, std::vector<std::string>> order_;
    std::set<Path> told_;
};

} // namespace boardmark::input
