#pragma once

#include <boardmark/record/record.hpp>

#include "arguments.hpp"

#include <string>

namespace boardmark::commands {

/// The record's name in messages and results, harmless and valid UTF-8.
std::string record_name(const Arguments& arguments);

/// What the record of the arguments holds. Throws commands::Failure.
record::Contents open_record(const Arguments& arguments);

/// Saves rows in the record of the arguments. Throws commands::Failure; then nothing was saved.
record::Outcome save(const Arguments& arguments, const record::Addition& addition);

} // namespace boardmark::commands
