#pragma once

#include <string>

namespace boardmark::commands {

/// Where a result goes.
struct Destination {
    std::string path = "-"; ///< `-` is standard output
    bool overwrite = false; ///< whether an existing file may be replaced
    std::string input;      ///< the file that was read; it is never replaced
};

/// Writes a whole result, or nothing: a file appears under its name only when all of it is on disk.
/// Throws Failure where that is not possible.
void write_result(const std::string& result, const Destination& destination);

} // namespace boardmark::commands
