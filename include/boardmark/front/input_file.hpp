#pragma once

#include <boardmark/input/reading/loader.hpp>

#include <sys/types.h>

#include <cstddef>
#include <functional>
#include <string>
#include <variant>

namespace boardmark::front {

/// The most bytes that a mix or trial file may have.
constexpr std::size_t largest_yaml_file = std::size_t{1024} * 1024;

/// Why a file could not be read, in the system's words.
struct ReadFailure {
    std::string reason;
};

/// The bytes of a file, or of standard input for `-`. Reading stops one byte above the size that
/// the reader accepts, so that an endless input ends.
std::variant<std::string, ReadFailure> read_bytes(const std::string& path,
                                                  std::size_t largest_accepted = largest_yaml_file);

/// read(2) that waits where somebody made the descriptor not to; a signal ends it with EINTR.
ssize_t read_some(int descriptor, char* buffer, std::size_t size);

/// Whether an input can be looked for under that path; standard input always can.
bool is_there(const std::string& path);

/// The name of an input in messages.
std::string shown_name(const std::string& path);

/// Gets the files that a file names from beside it: plain files of the same folder, nothing else.
///
/// @param path of the file that names them
/// @param on_read told the path of each before it is read; may be empty
input::Loader loader_beside(const std::string& path,
                            std::function<void(const std::string&)> on_read = {});

} // namespace boardmark::front
