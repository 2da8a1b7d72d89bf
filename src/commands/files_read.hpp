#pragma once

#include <boardmark/report/writing/input_file.hpp>

#include <string>
#include <vector>

namespace boardmark::commands {

/// The files that a command reads.
struct FilesRead {
    std::vector<std::string> paths = {}; ///< no output may replace one of them
    report::InputFiles inputs = {};      ///< that the result is made from, each once
};

/// Adds files that were read after the others.
void add(const FilesRead& more, FilesRead& files_read);

} // namespace boardmark::commands
