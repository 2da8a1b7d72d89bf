#pragma once

#include <string>
#include <vector>

namespace boardmark::report {

/// A file that a result was made from.
struct InputFile {
    std::string name;   ///< as it was given on the command line or in a file; `-`: standard input.
                        ///< Any bytes; made harmless where it is written
    std::string sha256; ///< of its bytes, 64 hexadecimal digits
};

/// The files that a result was made from, in the order in which they were read; none where it was
/// made in memory.
using InputFiles = std::vector<InputFile>;

} // namespace boardmark::report
