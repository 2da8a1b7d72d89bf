#pragma once

#include <boardmark/input/gate/diagnostic.hpp>

#include "../fields/fields.hpp"
#include "../values/value_reader.hpp"
#include "path.hpp"

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace boardmark::input {

/// A pair of a table, where both sides were read.
struct Pair {
    Parsed key;
    Parsed value;
};

/// One key that the file holds, with what was read under it.
struct Reading {
    std::string_view name; ///< of the key
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
    Document(const Node& root, FieldTables fields, Diagnostics& diagnostics);

    /// What stands under a path, or nullptr where the file has no such key.
    const Reading* find(const Path& path) const;

    /// What stands under a key of a section, or nullptr.
    const Reading* find(const Reading& section, std::string_view name) const;

    /// Whether the file has that key, or a fault about it has been told already: one that was meant
    /// to be it, or one that was refused.
    bool has(const Path& path) const { return find(path) || is_told(path); }

    /// Remembers that the fault about a key has been told.
    void mark_told(const Path& path);

    /// Reads anew what stands under a path that the file has, after its node was changed. Gives
    /// what had been read, which `put_back` takes once the node is as it was.
    Reading read_again(const Path& path, Diagnostics& diagnostics);
    void put_back(const Path& path, Reading before);

    /// Reads a key that was added to the node of a section, or to the top where the path is empty.
    void read_added(const Path& section, const Node& node, const Entry& added,
                    Diagnostics& diagnostics);
    /// Forgets all keys of a section but so many.
    void keep_first(const Path& section, std::size_t count);

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
    void read_key(const Entry* first, const Entry& entry, const Path& path, Reading& section,
                  Diagnostics& diagnostics);
    void read_value_of(const Path& path, Reading& reading, Diagnostics& diagnostics);
    Reading& section_at(const Path& path);
    const Field* field_of(const Field* section, std::string_view key) const;
    const Field* field_below(const Field* section, std::string_view key) const;
    void refuse_unknown(const Entry& entry, const Path& path, const Field* section,
                        Diagnostics& diagnostics);
    bool is_told(const Path& path) const;

    /// The keys of a section by their names, where it has too many to look through.
    using Index = std::unordered_map<std::string_view, std::size_t>;

    FieldTables fields_;
    std::unordered_map<const Reading*, Index> large_; ///< by the first key of a section
    Reading top_; ///< the file as a section, which has no field of its own
    std::vector<std::vector<std::string>> told_;
};

} // namespace boardmark::input
