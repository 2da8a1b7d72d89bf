#pragma once

#include <string>

namespace boardmark::commands {

/// Turns on the diagnostic log: what the program does, on standard error.
void start_log();

/// One line of the diagnostic log; nothing where it is off.
void log(const std::string& line);

} // namespace boardmark::commands
