#pragma once

#include <boardmark/input/reading/loader.hpp>
#include <boardmark/report/writing/input_file.hpp>

#include <string>
#include <string_view>

namespace boardmark::front {

/// Adds a file to those that a result is made from, unless it stands there.
void add_once(const report::InputFile& file, report::InputFiles& inputs);

/// The same of a file that was read.
///
/// @param name as it was given
void note(const std::string& name, std::string_view bytes, report::InputFiles& inputs);

/// A loader that notes what it loads.
///
/// @param inputs must outlive the loader
input::Loader noting(input::Loader load, report::InputFiles& inputs);

} // namespace boardmark::front
