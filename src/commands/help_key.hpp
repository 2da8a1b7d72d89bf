#pragma once

#include <optional>
#include <string>

namespace boardmark::commands {

/// What the keys that a word names mean, each with the file it stands in. Nothing where none is
/// named so.
std::optional<std::string> help_on_key(const std::string& word);

/// What is added to the help of a command where keys have its name: their paths. Empty where none
/// has.
std::string keys_beside_command(const std::string& name);

/// The key that a mistyped word most likely stands for.
std::optional<std::string> closest_key(const std::string& word);

/// All keys of all files, each with its meaning and an example.
std::string help_on_keys();

} // namespace boardmark::commands
