#pragma once

#include "exit_code.hpp"

#include <exception>
#include <string>

namespace boardmark::commands {

/// Why a command cannot go on, thrown or given back; the message is complete and ready for standard
/// error.
struct Failure {
    ExitCode code;
    std::string message;
};

/// Ends a command without a result: tells why on standard error and gives the code to end with.
ExitCode end_with(const Failure& failure);

/// A fault of the command line: "boardmark: error: …" and where to look for help.
Failure wrong_command_line(const std::string& what, const std::string& advice = "");

/// An output that could not be written.
Failure output_failed(const std::string& name, const std::string& reason);

/// The system gives no more memory.
Failure memory_ran_out();

/// What no file and no command line brings about, such as a figure that is not finite.
Failure fault_of_the_program(const std::exception& fault);

} // namespace boardmark::commands
