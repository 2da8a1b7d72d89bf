#pragma once

#include "arguments.hpp"
#include "exit_code.hpp"

#include <span>
#include <string_view>

namespace boardmark::commands {

/// A word of the command line: what it does, its own options, two examples that work.
struct Command {
    std::string_view name;
    std::string_view summary;
    std::string_view usage;
    std::string_view reads = {};                  ///< "MIX is a mix file"
    std::optional<input::FileKind> kind = {};     ///< of the files; nothing: no kind of ours
    std::span<const std::string_view> words = {}; ///< that may stand in place of a file
    std::span<const Option> options = {};
    std::span<const std::string_view> examples;
    ExitCode (*run)(const Arguments& arguments);
    bool takes_standard_input = true; ///< whether '-' may stand for the file
    std::size_t least_files = 1;
    std::size_t most_files = 1;
    std::string_view notes = {};    ///< what the options alone do not say; may be empty
    std::string_view in_place = {}; ///< an option that stands in place of the files
};

/// A command that makes its text from nothing.
constexpr Command without_file(Command command) {
    command.reads = "No file is read";
    command.takes_standard_input = false;
    command.least_files = 0;
    command.most_files = 0;
    return command;
}

/// Every command, in the order of the help.
std::span<const Command> all_commands();

/// The command of that name, or nullptr.
const Command* find_command(std::string_view name);

extern const Command proportion_command;
extern const Command check_command;
extern const Command batch_command;
extern const Command yield_command;
extern const Command strength_command;
extern const Command compare_command;
extern const Command dose_command;
extern const Command risk_command;
extern const Command sweep_command;
extern const Command economy_command;
extern const Command record_command;
extern const Command wall_command;
extern const Command brief_command;
extern const Command draw_command;
extern const Command pour_command;
extern const Command specify_command;
extern const Command panels_command;
extern const Command page_command;
extern const Command schema_command;
extern const Command starter_command;
extern const Command completion_command;
extern const Command manual_command;

} // namespace boardmark::commands
