#pragma once

#include <boardmark/input/mix/read_mix.hpp>
#include <boardmark/input/reading/loader.hpp>

#include "arguments.hpp"
#include "files_read.hpp"

#include <cstddef>
#include <string>

namespace boardmark::commands {

/// The file of the arguments, read.
struct OpenedFile {
    std::string name; ///< for messages
    std::string text; ///< its bytes, any at all
};

/// Starts the log where it is asked for and reads the file. Throws Failure where it cannot be read.
/// Every file that is read is added to `files_read`.
OpenedFile open_file(const Arguments& arguments, FilesRead& files_read);

/// Another file, read; of one that is larger than accepted only a byte more. The advice, which may
/// be empty, is told where it cannot be read.
OpenedFile open_file(const std::string& path, std::size_t largest_accepted, FilesRead& files_read,
                     const std::string& advice = "");

/// Gets files beside the file of the arguments. `files_read` must outlive the loader.
input::Loader loader_beside(const std::string& path, FilesRead& files_read);

} // namespace boardmark::commands
