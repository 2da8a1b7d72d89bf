#include "command.hpp"

#include <algorithm>
#include <array>

namespace boardmark::commands {

std::span<const Command> all_commands() {
    static const std::array commands{
        proportion_command, check_command,   compare_command, dose_command,    risk_command,
        sweep_command,      economy_command, batch_command,   yield_command,   strength_command,
        record_command,     wall_command,    brief_command,   draw_command,    pour_command,
        specify_command,    panels_command,  page_command,    schema_command,  starter_command,
        completion_command, manual_command};
    return commands;
}

const Command* find_command(std::string_view name) {
    const auto commands = all_commands();
    const auto found = std::ranges::find(commands, name, &Command::name);
    return found == commands.end() ? nullptr : &*found;
}

} // namespace boardmark::commands
