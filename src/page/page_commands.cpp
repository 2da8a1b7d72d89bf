#include "../commands/code_choice.hpp"
#include "../commands/command.hpp"
#include "../commands/mix_command.hpp"

#include <algorithm>
#include <array>

// The commands that the page has: those of one file that make a page of their own. Tables of mixes,
// studies of many and the record are for the program.

namespace boardmark::commands {
namespace {

constexpr Option proportion_options[] = {all_option};
constexpr Option check_options[] = {all_option, code_option, all_codes_option};

ExitCode run_proportion(const Arguments& arguments) {
    return run_mix_command("proportion", input::Purpose::proportion, arguments);
}

ExitCode run_check(const Arguments& arguments) {
    return run_mix_command("check", input::Purpose::check, arguments);
}

constexpr Command page_proportion{.name = "proportion",
                                  .summary = {},
                                  .usage = {},
                                  .kind = input::FileKind::mix,
                                  .options = proportion_options,
                                  .examples = {},
                                  .run = run_proportion};
constexpr Command page_check{.name = "check",
                             .summary = {},
                             .usage = {},
                             .kind = input::FileKind::mix,
                             .options = check_options,
                             .examples = {},
                             .run = run_check};

} // namespace

std::span<const Command> all_commands() {
    static const std::array commands{page_proportion, page_check,    compare_command, dose_command,
                                     batch_command,   yield_command, wall_command,    brief_command,
                                     draw_command,    pour_command,  starter_command};
    return commands;
}

const Command* find_command(std::string_view name) {
    const auto commands = all_commands();
    const auto found = std::ranges::find(commands, name, &Command::name);
    return found == commands.end() ? nullptr : &*found;
}

} // namespace boardmark::commands
