#pragma once

#include <cstddef>
#include <string>
#include <variant>

namespace boardmark::commands {

/// Why a file could not be read, in the system's words.
struct ReadFailure {
    std::string reason;
};

/// The bytes of a file, or of standard input for `-`. Reading stops one byte above the size that
/// the reader accepts, so that an endless input ends.
std::variant<std::string, ReadFailure> read_bytes(const std::string& path,
                                                  std::size_t largest_accepted = 1024 * 1024);

/// The name of an input in messages.
std::string shown_name(const std::string& path);

/// The path of a file that another file names.
std::string beside(const std::string& path, const std::string& name);

} // namespace boardmark::commands
