#pragma once

#include "part_file.hpp"

#include <optional>
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

/// One file of several that belong together.
struct NamedResult {
    std::string path;
    std::string result;
};

/// Writes all of the files or none: no name is given before every file is whole on disk. Names must
/// differ. Throws Failure where that is not possible.
///
/// @param common whether files may be replaced, and what was read; its path is not used
void write_results(const std::vector<NamedResult>& files, const Destination& common);

/// A result that is written piece by piece, for one that no memory should hold as a whole. A file
/// gets its name when all of it is on disk; what was not ended leaves nothing behind.
class ResultStream {
public:
    /// Throws Failure where the file may not be written.
    explicit ResultStream(Destination destination);

    /// Throws Failure where it cannot be written.
    void write(const std::string& piece);

    /// Gives the file its name. Throws Failure where that is not possible.
    void end();

private:
    Destination destination_;
    std::optional<PartFile> file_; ///< nothing where it is standard output
};

} // namespace boardmark::commands
