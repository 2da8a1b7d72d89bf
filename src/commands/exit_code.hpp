#pragma once

namespace boardmark::commands {

/// How the program ends.
enum class ExitCode {
    done = 0, ///< done, and every check that could be run holds or is to be watched
    requirement_not_met = 1,
    wrong_input = 2, ///< the command line or an input file is wrong
    unresolved = 3,  ///< well formed, but no mix follows
    output_failed = 4,
};

} // namespace boardmark::commands
