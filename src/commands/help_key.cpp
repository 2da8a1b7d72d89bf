#include "help_key.hpp"

#include <boardmark/input/fields/key_table.hpp>
#include <boardmark/text/closest.hpp>
#include <boardmark/text/wrap.hpp>

#include <fmt/format.h>

#include <string_view>
#include <vector>

namespace boardmark::commands {
namespace {

constexpr std::size_t widest_line = 100;

/// A row of the explanation: its name, what it says.
std::string row(std::string_view name, std::string_view words) {
    constexpr std::size_t column = 12;
    return text::wrapped(
        words, {fmt::format("  {:<{}}", name, column - 2), std::string(column, ' ')}, widest_line);
}

/// The names of the keys one level below a key.
std::vector<std::string_view> keys_below(const input::FoundKey& found) {
    std::vector<std::string_view> names;
    const std::string prefix = std::string{found.key->path} + ".";
    for (const input::DescribedKey& key : found.file->keys) {
        const std::string_view rest =
            key.path.starts_with(prefix) ? key.path.substr(prefix.size()) : "";
        if (!rest.empty() && rest.find('.') == rest.npos) {
            names.push_back(rest);
        }
    }
    return names;
}

std::string explained(const input::FoundKey& found) {
    const input::DescribedKey& key = *found.key;
    std::string text = fmt::format("{}, in a {}{}\n", key.path, found.file->name,
                                   key.required ? "; it has to be there" : "");
    text += row("meaning", key.meaning);
    text += row("holds", key.holds);
    text += row("example", key.example);
    if (!key.default_text.empty()) {
        text += row("left out", fmt::format("{} holds", key.default_text));
    }
    const auto below = keys_below(found);
    return below.empty() ? text : text + row("below it", fmt::format("{}", fmt::join(below, ", ")));
}

} // namespace

std::optional<std::string> help_on_key(const std::string& word) {
    const auto tables = input::key_tables();
    std::string text;
    for (const input::FoundKey& found : input::keys_named(word, tables)) {
        text += (text.empty() ? "" : "\n") + explained(found);
    }
    return text.empty() ? std::nullopt : std::optional{text};
}

std::string keys_beside_command(const std::string& name) {
    const auto tables = input::key_tables();
    std::vector<std::string_view> paths;
    for (const input::FoundKey& found : input::keys_named(name, tables)) {
        paths.push_back(found.key->path);
    }
    return paths.empty()
               ? ""
               : "\n" + text::wrapped(fmt::format("Keys of that name, for 'boardmark help KEY': {}",
                                                  fmt::join(paths, ", ")),
                                      {"", "  "}, widest_line);
}

std::optional<std::string> closest_key(const std::string& word) {
    const auto tables = input::key_tables();
    std::vector<std::string_view> names;
    for (const input::DescribedFile& file : tables) {
        for (const input::DescribedKey& key : file.keys) {
            names.push_back(key.path);
            names.push_back(key.path.substr(key.path.rfind('.') + 1));
        }
    }
    const auto near = text::closest(word, names);
    return near ? std::optional{std::string{*near}} : std::nullopt;
}

std::string help_on_keys() {
    std::string text;
    for (const auto& file : input::key_tables()) {
        text +=
            fmt::format("{}Keys of the {}, with an example of each; * is a name of your own.\n\n",
                        text.empty() ? "" : "\n", file.name);
        for (const auto& key : file.keys) {
            const std::string left_out =
                key.default_text.empty() ? "" : fmt::format(" (default {})", key.default_text);
            text += fmt::format("  {}\n", key.path);
            text += text::wrapped(std::string{key.meaning} + left_out, {"      ", "      "},
                                  widest_line);
            text += fmt::format("      {}\n", key.example);
        }
    }
    return text;
}

} // namespace boardmark::commands
