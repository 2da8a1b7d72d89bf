#include "failure.hpp"

#include <boardmark/text/utf8.hpp>

#include "terminal.hpp"

#include <iostream>

namespace boardmark::commands {

ExitCode end_with(const Failure& failure) {
    std::cerr << for_standard_error(failure.message);
    return failure.code;
}

Failure wrong_command_line(const std::string& what, const std::string& advice) {
    std::string message = "boardmark: error: " + text::printable(what) + "\n";
    if (!advice.empty()) {
        message += "           " + text::printable(advice) + "\n";
    }
    return {ExitCode::wrong_input, message};
}

Failure output_failed(const std::string& name, const std::string& reason) {
    return {ExitCode::output_failed,
            "boardmark: error: " + (name.empty() ? "''" : text::printable(name)) +
                " was not written: " + reason + "\n"};
}

Failure memory_ran_out() {
    return {ExitCode::fault, "boardmark: error: the system gives no more memory; there is no result\n"};
}

Failure fault_of_the_program(const std::exception& fault) {
    return {ExitCode::fault,
            "boardmark: error: this should not happen: " + text::printable(fault.what()) + "\n" +
                "           the program is at fault, not the file; trust no "
                "figure of it\n"};
}

} // namespace boardmark::commands
