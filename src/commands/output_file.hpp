#pragma once

#include <string>
#include <vector>

namespace boardmark::commands {

/// Where a result goes.
struct Destination {
    std::string path = "-";               ///< `-` is standard output
    bool overwrite = false;               ///< whether an existing file may be replaced
    std::vector<std::string> inputs = {}; ///< the files that were read; none is ever replaced
};

/// Writes a whole result, or nothing: a file appears under its name only when all of it is on disk.
/// Throws Failure where that is not possible.
void write_result(const std::string& result, const Destination& destination);

} // namespace boardmark::commands
