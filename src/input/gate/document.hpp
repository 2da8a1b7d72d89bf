#pragma once

#include <boardmark/input/gate/diagnostic.hpp>

#include "../fields/fields.hpp"
#include "../values/value_reader.hpp"
#include "path.hpp"

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace boardmark::input {

/// A pair of a table, where both sides were read.
struct Pair {
    Parsed key;
    Parsed value;
};

/// One key that the file holds, with what was read under it.
struct Reading {
    const Field* field = nullptr;
    const Node* key = nullptr;
    const Node* node = nullptr;
    bool sound = true;                        ///< whether everything under the key could be read
    std::optional<Parsed> value;              ///< Shape::value
    std::vector<Parsed> items;                ///< Shape::list
    std::vector<Pair> pairs;                  ///< Shape::table
    std::vector<std::shared_ptr<Node>> parts; ///< of a scalar that was read in parts
    std::vector<Reading> below;               ///< Shape::section: its keys, in file order
};

/// Every key of a file that the table of fields knows, read and checked one by one.
class Document {
public:
    /// Reads a tree. Unknown and duplicate keys and wrong values become diagnostics.
    Document(const Node& root, std::span<const Field> fields, Diagnostics& diagnostics);

    /// What stands under a path, or nullptr where the file has no such key.
    const Reading* find(const Path& path) const;

    /// Whether the file has that key, or a fault about it has been told already: one that was meant
    /// to be it, or one that was refused.
    bool has(const Path& path) const { return find(path) || is_told(path); }

    /// Remembers that the fault about a key has been told.
    void mark_told(const Path& path);

    /// The value under a path. Nothing where the key is missing or its value was wrong.
    const Parsed* value(const Path& path) const;

    std::optional<double> number(const Path& path) const;
    std::optional<std::string> text(const Path& path) const;
    bool flag(const Path& path, bool otherwise) const;

    /// What was read below a path, in file order.
    std::span<const Reading> below(const Path& path) const;

    /// The names below a path, in file order; they stand in the tree of the file.
    std::vector<std::string_view> names(const Path& path) const;

private:
    void read_section(const Node& node, const Path& path, Reading& section,
                      Diagnostics& diagnostics);
    void read_entry(const Entry& entry, const Path& path, Reading& reading,
                    Diagnostics& diagnostics);
    const Field* field_of(const Field* section, std::string_view key) const;
    const Field* field_below(const Field* section, std::string_view key) const;
    void refuse_unknown(const Entry& entry, const Path& path, const Field* section,
                        Diagnostics& diagnostics);
    bool is_told(const Path& path) const;

    std::span<const Field> fields_;
    Reading top_; ///< the file as a section, which has no field of its own
    std::vector<std::vector<std::string>> told_;
};

} // namespace boardmark::input
