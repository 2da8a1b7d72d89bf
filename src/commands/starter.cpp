#include <boardmark/input/fields/starter.hpp>

#include "command.hpp"
#include "delivery.hpp"

namespace boardmark::commands {
namespace {

constexpr std::string_view examples[] = {
    "boardmark starter",
    "boardmark starter --reporting si",
};

ExitCode run(const Arguments& arguments) {
    const core::UnitSystem system = arguments.reporting().value_or(core::UnitSystem::us);
    write_only_form(input::starter_mix(system), arguments);
    return ExitCode::done;
}

} // namespace

const Command starter_command =
    without_file({.name = "starter",
                  .summary = "a mix file to begin with, every key explained",
                  .usage = "boardmark starter [OPTIONS]",
                  .examples = examples,
                  .run = run});

} // namespace boardmark::commands
