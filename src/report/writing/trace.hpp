#pragma once

#include <boardmark/report/writing/input_file.hpp>

#include "flow.hpp"

#include <string>

namespace boardmark::report {

/// The program that wrote a result: "boardmark 1.0".
std::string program_text();

/// "examples/quay-wall.yaml", "standard input"
std::string shown_name(const InputFile& input);

/// The files of a result below its title: "File: quay-wall.yaml".
Flow file_line(const InputFiles& inputs);

/// Program and files with the beginning of their SHA-256, so that a sheet in the hand leads back to
/// the bytes it was made from.
Flow trace_line(const InputFiles& inputs);

} // namespace boardmark::report
