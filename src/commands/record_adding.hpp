#pragma once

#include <boardmark/input/gate/diagnostic.hpp>
#include <boardmark/record/record.hpp>

#include "arguments.hpp"
#include "files_read.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace boardmark::commands {

/// The consequence of a fault where a record is written.
inline constexpr std::string_view nothing_saved = "nothing was saved";

/// What a trial file gives to a record.
struct FiledRows {
    record::Addition addition;
    std::vector<input::Diagnostic> places; ///< for each row, where a message about it stands
};

/// Reads the file that `--add` names and calculates what follows from it. Throws Failure where the
/// file is wrong, nothing follows from it, or it does not say what a record needs. Adds to
/// `files_read` that file and those that it names.
FiledRows read_filed_rows(const Arguments& arguments, FilesRead& files_read);

} // namespace boardmark::commands
