#pragma once

#include <optional>
#include <string>

namespace boardmark::commands {

/// What the program does and its commands.
std::string general_help();

/// A few lines with one example, for a command line without a command.
std::string short_help();

/// The help of a command or of a subject (`exposure`, `keys`); nothing where there is none.
std::optional<std::string> help_on(const std::string& subject);

/// The first line of `--version`.
std::string version_line();

} // namespace boardmark::commands
