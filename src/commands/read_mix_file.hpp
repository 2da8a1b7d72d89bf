#pragma once

#include <boardmark/core/mix.hpp>
#include <boardmark/input/read_mix.hpp>

#include "arguments.hpp"

#include <map>
#include <string>
#include <vector>

namespace boardmark::commands {

/// A mix that was read, and the files it came from.
struct ReadMix {
    core::AnyMix mix;
    std::vector<std::string> files_read;
};

/// Reads the mix file of the arguments. Warnings go to standard error. Throws Failure where the
/// file is wrong.
ReadMix read_mix_file(const Arguments& arguments, input::Purpose purpose,
                      const std::map<std::string, double>& moisture_percent = {});

} // namespace boardmark::commands
