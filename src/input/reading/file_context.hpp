#pragma once

#include "../gate/document.hpp"

#include <string>

namespace boardmark::input {

/// A file that is being read: what was found under its keys, and where faults go.
struct FileContext {
    const Node& root;
    const Document& document;
    FieldTables fields;
    Diagnostics& diagnostics;

    bool has(const Path& path) const { return document.has(path); }

    /// Whether further keys stand under a path.
    bool holds_keys(const Path& path) const {
        const Reading* reading = document.find(path);
        return reading && reading->node->kind == Node::Kind::mapping;
    }

    /// A fault of a value.
    void refuse(const Node& node, std::string message, std::string advice) const;

    /// A value that is possible but hardly true: it is used, and asked back.
    void ask_back(const Node& node, std::string message, std::string advice) const;

    /// A key that is not there, told at its parent's key.
    void missing(const Path& parent, std::string_view key, const std::string& why,
                 const std::string& advice) const;

    /// Tells that a key is missing unless the file has it or its fault has been told; the advice is
    /// its example.
    void demand(const Path& path, const std::string& why) const;

    /// The example line of a key, as advice to add it.
    std::string add_example(const Path& path) const;
};

} // namespace boardmark::input
