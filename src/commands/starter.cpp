#include <boardmark/input/starter/starter.hpp>

#include "command.hpp"
#include "delivery.hpp"
#include "file_kind_argument.hpp"

namespace boardmark::commands {
namespace of_starter {
namespace {

constexpr std::string_view examples[] = {
    "boardmark starter",
    "boardmark starter wall",
    "boardmark starter results --reporting si",
};

ExitCode run(const Arguments& arguments) {
    const core::UnitSystem system = arguments.reporting().value_or(core::UnitSystem::us);
    write_only_form(input::starter(file_kind_argument(arguments), system), arguments);
    return ExitCode::done;
}

} // namespace
} // namespace of_starter

const Command starter_command{
    .name = "starter",
    .summary = "a file to begin with, every key explained",
    .usage = "boardmark starter [OPTIONS] [KIND]",
    .reads = kinds_of_file,
    .words = words_for_kinds,
    .options = {},
    .examples = of_starter::examples,
    .run = of_starter::run,
    .takes_standard_input = false,
    .least_files = 0,
    .notes =
        "A trial and a wall name the mix that 'boardmark starter mix > mix.yaml' writes beside\n"
        "them: together they work as they are."};

} // namespace boardmark::commands
