#pragma once

#include <cstddef>
#include <string>
#include <variant>

namespace boardmark::commands {

/// The most bytes that a mix or trial file may have.
constexpr std::size_t largest_yaml_file = 1024 * 1024;

/// Why a file could not be read, in the system's words.
struct ReadFailure {
    std::string reason;
};

/// The bytes of a file, or of standard input for `-`. Reading stops one byte above the size that
/// the reader accepts, so that an endless input ends.
std::variant<std::string, ReadFailure> read_bytes(const std::string& path,
                                                  std::size_t largest_accepted = largest_yaml_file);

/// The name of an input in messages.
std::string shown_name(const std::string& path);

/// The path of a file that another file names.
std::string beside(const std::string& path, const std::string& name);

/// Whether a file that another file names is, once links are followed, outside that file's folder.
/// A file that is not there is not outside: reading it tells what is wrong.
bool links_out_of_folder(const std::string& path, const std::string& name);

/// Whether a file that another file names is a pipe or a device, which may never end or never
/// begin.
bool is_pipe_or_device(const std::string& path, const std::string& name);

} // namespace boardmark::commands
