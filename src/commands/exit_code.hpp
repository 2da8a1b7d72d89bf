#pragma once

#include <string_view>

namespace boardmark::commands {

/// How the program ends.
enum class ExitCode {
    done = 0, ///< done, and every check that could be run holds or is to be watched
    requirement_not_met = 1,
    wrong_input = 2, ///< the command line or an input file is wrong
    unresolved = 3,  ///< well formed, but no mix follows
    output_failed = 4,
    fault = 5,         ///< of the program itself, never of a file
    // 128 and the signal that asked it to stop; what was done until then is written.
    hung_up = 129,
    interrupted = 130, ///< by Ctrl-C
    terminated = 143,
};

/// What help and manual page say of an exit code.
struct ExitMeaning {
    ExitCode code;
    std::string_view meaning;
};

constexpr ExitMeaning exit_meanings[] = {
    {ExitCode::done, "done, and every check that could be run holds or is to be watched"},
    {ExitCode::requirement_not_met, "done, and some requirement is not met"},
    {ExitCode::wrong_input, "the command line or an input file is wrong"},
    {ExitCode::unresolved, "the inputs are well formed, but no mix follows from them"},
    {ExitCode::output_failed, "an output could not be written"},
    {ExitCode::fault, "the program is at fault; nothing was written"},
};

} // namespace boardmark::commands
