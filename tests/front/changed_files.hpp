#pragma once

// A file as it stands and as a hurried hand leaves it: without one of its keys, with one key more,
// with another word of those that may stand in a place. Which keys and words there are, the table
// of keys says.

#include <boardmark/input/fields/key_table.hpp>

#include "input/gate/gate.hpp"

#include <algorithm>
#include <stdexcept>
#include <string>
#include <vector>

namespace boardmark::test {

struct ChangedFile {
    std::string change; ///< "without walls.wall.shows"
    std::string text;
};

class FileChanges {
public:
    /// @param kind of the file that the text is
    FileChanges(const std::string& text, input::FileKind kind)
        : source_{"file", text}
        , kind_{kind} {
        input::Diagnostics diagnostics;
        auto root = input::pass_gate(source_, diagnostics);
        if (!root) {
            throw std::runtime_error(input::render(diagnostics));
        }
        root_ = *std::move(root);
    }

    std::vector<ChangedFile> all() {
        changes_ = {{"nothing", written()}};
        change(root_, "");
        return std::move(changes_);
    }

private:
    std::string written() const {
        std::string text;
        for (const input::Entry& entry : root_.entries) {
            text += scalar(entry.key) + ": " + value(entry.value) + "\n";
        }
        return text;
    }

    static std::string scalar(const input::Node& node) {
        const bool plain =
            !node.quoted && node.scalar.find_first_of(",:{}[]#\"'") == std::string::npos;
        if (plain) {
            return node.scalar;
        }
        std::string quoted = "\"";
        for (const char character : node.scalar) {
            quoted += character == '"' || character == '\\' ? "\\" : "";
            quoted += character;
        }
        return quoted + "\"";
    }

    static std::string value(const input::Node& node) {
        std::string text;
        switch (node.kind) {
        case input::Node::Kind::mapping:
            for (const input::Entry& entry : node.entries) {
                text += (text.empty() ? "" : ", ") + scalar(entry.key) + ": " + value(entry.value);
            }
            return "{" + text + "}";
        case input::Node::Kind::list:
            for (const input::Node& item : node.items) {
                text += (text.empty() ? "" : ", ") + value(item);
            }
            return "[" + text + "]";
        case input::Node::Kind::scalar:
            return scalar(node);
        case input::Node::Kind::empty:
            break;
        }
        return "";
    }

    static input::Node plain(std::string_view word) {
        input::Node node;
        node.kind = input::Node::Kind::scalar;
        node.scalar = word;
        return node;
    }

    void add(std::string change) { changes_.push_back({std::move(change), written()}); }

    void change(input::Node& node, const std::string& path) {
        for (std::size_t i = 0; i < node.entries.size(); ++i) {
            const std::string below = path + (path.empty() ? "" : ".") + node.entries[i].key.scalar;
            const input::Entry kept = node.entries[i];
            const auto at = node.entries.begin() + static_cast<std::ptrdiff_t>(i);
            node.entries.erase(at);
            add("without " + below);
            node.entries.insert(node.entries.begin() + static_cast<std::ptrdiff_t>(i), kept);
            put_other_words(node.entries[i].value, below);
            change(node.entries[i].value, below);
        }
        if (node.kind == input::Node::Kind::mapping) {
            add_keys(node, path);
        }
    }

    void put_other_words(input::Node& value, const std::string& path) {
        if (value.kind == input::Node::Kind::mapping) {
            return;
        }
        const input::Node kept = value;
        for (const input::DescribedKey& key : file().keys) {
            for (const std::string_view word : matches(key.path, path) ? key.words : no_words) {
                value = plain(word);
                add(path + ": " + std::string{word});
            }
        }
        value = kept;
    }

    /// Keys that the section does not have, each as its example writes it.
    void add_keys(input::Node& node, const std::string& path) {
        for (const input::DescribedKey& key : file().keys) {
            const std::size_t dot = key.path.rfind('.');
            const bool here = dot == std::string_view::npos
                                  ? path.empty()
                                  : matches(key.path.substr(0, dot), path);
            const std::string name{key.path.substr(dot + 1)};
            if (!here || name == "*" || node.find(name) || key.example.empty()) {
                continue;
            }
            node.entries.push_back({plain(name), plain("EXAMPLE")});
            add(path + "." + name + ": " + std::string{key.example});
            std::string& text = changes_.back().text;
            text.replace(text.find("EXAMPLE"), std::string_view{"EXAMPLE"}.size(), key.example);
            node.entries.pop_back();
        }
    }

    /// Whether a path of the table, in which `*` is a name of the user's, is that path.
    static bool matches(std::string_view table, std::string_view path) {
        while (true) {
            const std::string_view left = table.substr(0, table.find('.'));
            const std::string_view right = path.substr(0, path.find('.'));
            if (left != right && left != "*") {
                return false;
            }
            if (left.size() == table.size() || right.size() == path.size()) {
                return left.size() == table.size() && right.size() == path.size();
            }
            table.remove_prefix(left.size() + 1);
            path.remove_prefix(right.size() + 1);
        }
    }

    const input::DescribedFile& file() const {
        static const std::vector<input::DescribedFile> files = input::key_tables();
        return *std::ranges::find(files, kind_, &input::DescribedFile::kind);
    }

    inline static const std::vector<std::string_view> no_words;
    input::SourceText source_;
    input::FileKind kind_;
    input::Node root_;
    std::vector<ChangedFile> changes_;
};

} // namespace boardmark::test
