#pragma once

#include "arguments.hpp"
#include "exit_code.hpp"

namespace boardmark::commands {

/// `proportion --w-cm`: several ratios side by side.
ExitCode run_trial_set(const Arguments& arguments);

} // namespace boardmark::commands
