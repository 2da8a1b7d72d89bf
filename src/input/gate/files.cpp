#include "files.hpp"

#include "../reading/refuse.hpp"
#include "gate.hpp"

#include <algorithm>
#include <filesystem>

namespace boardmark::input {
namespace {

bool demand_mapping(const Node& root, Diagnostics& diagnostics) {
    if (root.kind == Node::Kind::mapping) {
        return true;
    }
    refuse(root, "expected keys and values at top level, found " + std::string{describe(root.kind)},
           "begin with 'boardmark: 1'", diagnostics);
    return false;
}

/// The first line says which version of the format the file is in; each way to be wrong has its own
/// words.
void demand_version(const Node& root, Diagnostics& diagnostics) {
    const Entry* entry = root.find("boardmark");
    if (!entry) {
        Node top;
        top.source = root.source;
        refuse(top, "the file has no 'boardmark'; it says which version of the format follows",
               "begin with 'boardmark: 1'", diagnostics);
        return;
    }
    const Node& version = entry->value;
    if (version.kind != Node::Kind::scalar) {
        return; // told with the other keys: it is not a value
    }
    if (version.quoted) {
        refuse(version, "boardmark: the version is a bare number, not a text",
               "write 'boardmark: 1'", diagnostics);
    } else if (version.scalar == "1.0") {
        refuse(version, "boardmark: the version is a whole number", "write 'boardmark: 1'",
               diagnostics);
    } else if (version.scalar != "1") {
        refuse(version,
               "boardmark: version '" + version.scalar +
                   "' of the format is not known here; this program reads version 1",
               "write 'boardmark: 1', or use a newer program", diagnostics);
    }
}

/// A key that only one kind of file has, and what reads that kind.
struct TellingKey {
    std::string_view key;
    FileKind kind;
    std::string_view name;
    std::string_view commands;
};
constexpr std::string_view mix_commands = "use 'boardmark proportion', 'check' or 'batch'";
constexpr TellingKey all_telling_keys[] = {
    {"trial", FileKind::trial, "a trial file", "use 'boardmark yield'"},
    {"specimens", FileKind::results, "a file of strength results", "use 'boardmark strength'"},
    {"walls", FileKind::wall, "a wall file", "use 'boardmark wall'"},
    {"planters", FileKind::wall, "a wall file", "use 'boardmark wall'"},
    {"benches", FileKind::wall, "a wall file", "use 'boardmark wall'"},
    {"mixture", FileKind::mix, "a mix file", mix_commands},
    {"proportions", FileKind::mix, "a mix file", mix_commands},
};

const TellingKey* telling_key(const Node& root) {
    const auto found = std::ranges::find_if(
        all_telling_keys, [&](const TellingKey& telling) { return root.find(telling.key); });
    return found == std::end(all_telling_keys) ? nullptr : &*found;
}

/// Where a file of a kind may be seen.
std::string starter_of(FileKind kind) {
    switch (kind) {
    case FileKind::mix:
        return "'boardmark starter mix' shows a mix file";
    case FileKind::trial:
        return "'boardmark starter trial' shows a trial file";
    case FileKind::results:
        return "'boardmark starter results' shows a file of results";
    case FileKind::wall:
        return "'boardmark starter wall' shows a wall file";
    }
    return "";
}

/// A name that leaves the folder of the file it stands in.
bool leaves_folder(const std::string& name) {
    const std::filesystem::path path{name};
    return name.empty() || path.is_absolute() || name.find('\\') != std::string::npos ||
           std::ranges::count(path, std::filesystem::path{".."}) > 0;
}

} // namespace

const SourceText& Files::add(std::string name, std::string text) {
    constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
    if (text.starts_with(byte_order_mark)) {
        text.erase(0, byte_order_mark.size());
    }
    return files_.emplace_back(std::move(name), std::move(text));
}

std::size_t Files::order_of(const std::string& name) const {
    const auto found = std::ranges::find(files_, name, &SourceText::file);
    return static_cast<std::size_t>(found - files_.begin());
}

void Files::sort(Diagnostics& diagnostics) const {
    std::ranges::stable_sort(diagnostics, {}, [&](const Diagnostic& diagnostic) {
        return std::tuple{order_of(diagnostic.file), diagnostic.line, diagnostic.column};
    });
}

std::optional<Node> read_tree(const SourceText& source, Diagnostics& diagnostics) {
    auto root = pass_gate(source, diagnostics);
    if (!root || !demand_mapping(*root, diagnostics)) {
        return std::nullopt;
    }
    demand_version(*root, diagnostics);
    return root;
}

bool refuse_other_kind(const Node& root, FileKind expected, Diagnostics& diagnostics) {
    const TellingKey* telling = telling_key(root);
    if (!telling || telling->kind == expected) {
        return false;
    }
    refuse(root.find(telling->key)->key,
           "this is " + std::string{telling->name} + "; '" + std::string{telling->key} +
               "' does not belong in another kind of file",
           std::string{telling->commands} + "; " + starter_of(expected), diagnostics);
    return true;
}

std::vector<std::string_view> telling_keys(FileKind kind) {
    std::vector<std::string_view> keys;
    for (const TellingKey& telling : all_telling_keys) {
        if (telling.kind == kind) {
            keys.push_back(telling.key);
        }
    }
    return keys;
}

std::optional<FileKind> kind_of(std::string text) {
    const SourceText source{"", std::move(text)};
    Diagnostics of_no_interest;
    const auto root = pass_gate(source, of_no_interest);
    const TellingKey* telling = root ? telling_key(*root) : nullptr;
    return telling ? std::optional{telling->kind} : std::nullopt;
}

std::optional<std::string> other_kind(const SourceText& source, FileKind expected) {
    Diagnostics of_no_interest;
    const auto root = pass_gate(source, of_no_interest);
    const TellingKey* telling = root ? telling_key(*root) : nullptr;
    if (telling && telling->kind != expected) {
        return std::string{telling->name};
    }
    const bool materials_only = root && !telling && root->find("materials") &&
                                !root->find("requirements") && expected == FileKind::mix;
    return materials_only ? std::optional<std::string>{"a file of materials"} : std::nullopt;
}

std::string shown_beside(const std::string& file, const std::string& name) {
    const std::size_t slash = file.rfind('/');
    return slash == std::string::npos ? name : file.substr(0, slash + 1) + name;
}

Loader loader_of(const Loader& load, const std::string& named) {
    return [load, named](const std::string& name) {
        return loaded_by(load, shown_beside(named, name));
    };
}

const SourceText* fetch(const Node& asked, const std::string& key, const std::string& name,
                        const Loader& load, Files& files, Diagnostics& diagnostics) {
    if (name == "-") {
        refuse(asked, key + ": '-' would be standard input, which only the command line names",
               "name a file beside this one", diagnostics);
        return nullptr;
    }
    if (leaves_folder(name)) {
        refuse(asked, key + ": '" + name + "' lies outside the folder of this file",
               "name a file beside this one", diagnostics);
        return nullptr;
    }
    auto loaded = loaded_by(load, name);
    if (const auto* failure = std::get_if<LoadFailure>(&loaded)) {
        refuse(asked, key + ": '" + name + "' cannot be read: " + failure->reason,
               !failure->advice.empty() ? failure->advice
               : key == "mix"
                   ? "check the name, relative to this file; " + starter_of(FileKind::mix)
                   : "check the name; it is relative to this file",
               diagnostics);
        return nullptr;
    }
    return &files.add(shown_beside(asked.source->file(), name),
                      std::move(std::get<std::string>(loaded)));
}

} // namespace boardmark::input
