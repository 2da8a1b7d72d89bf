#pragma once

#include <boardmark/record/record.hpp>

#include "arguments.hpp"
#include "files_read.hpp"

#include <string>

namespace boardmark::commands {

/// The record's name in messages and results, harmless and valid UTF-8.
std::string record_name(const Arguments& arguments);

/// What the record of the arguments holds; it is added to `files_read`. Throws commands::Failure.
record::Contents open_record(const Arguments& arguments, FilesRead& files_read);

/// Saves rows in the record of the arguments. Throws commands::Failure; then nothing was saved.
record::Outcome save(const Arguments& arguments, const record::Addition& addition);

} // namespace boardmark::commands
