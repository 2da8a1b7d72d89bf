#pragma once

#include <boardmark/input/mix/read_mix.hpp>

#include "arguments.hpp"
#include "exit_code.hpp"

#include <string>

namespace boardmark::commands {

/// Reads a mix, calculates it, writes it whole: what `proportion` and `check` share.
ExitCode run_mix_command(const std::string& name, input::Purpose purpose,
                         const Arguments& arguments);

} // namespace boardmark::commands
