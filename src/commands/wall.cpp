#include <boardmark/input/read_wall.hpp>
#include <boardmark/report/wall_report.hpp>

#include "command.hpp"
#include "delivery.hpp"
#include "opened_file.hpp"

namespace boardmark::commands {
namespace {

constexpr std::string_view examples[] = {
    "boardmark wall examples/terrace-walls.yaml",
    "boardmark wall --reporting si examples/terrace-walls.yaml",
};

ExitCode run(const Arguments& arguments) {
    std::vector<std::string> files_read{arguments.file()};
    OpenedFile file = open_file(arguments);
    auto reading = input::read_wall(
        std::move(file.text), file.name,
        {.vocabulary = vocabulary(), .load = loader_beside(arguments.file(), files_read)});
    demand_sound(reading.record.has_value(), reading.diagnostics, arguments);
    const input::WallRecord& record = *reading.record;
    deliver(report::WallResult{record.wall, record.mix_file}, arguments,
            {record.wall.system, files_read});
    return ExitCode::done;
}

} // namespace

const Command wall_command{.name = "wall",
                           .summary = "the walls of a file, held against what can be built",
                           .usage = "boardmark wall [OPTIONS] WALL",
                           .reads = "WALL is a wall file",
                           .options = {},
                           .examples = examples,
                           .run = run};

} // namespace boardmark::commands
