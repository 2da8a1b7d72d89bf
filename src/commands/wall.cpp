#include <boardmark/report/wall/wall_report.hpp>

#include "command.hpp"
#include "planned_wall.hpp"

namespace boardmark::commands {
namespace of_wall {
namespace {

constexpr Option options[] = {all_option};

constexpr std::string_view examples[] = {
    "boardmark wall examples/terrace-walls.yaml",
    "boardmark wall --reporting si examples/terrace-walls.yaml",
};

ExitCode run(const Arguments& arguments) {
    const auto opened = planned_wall(arguments);
    if (const auto* failure = std::get_if<Failure>(&opened)) {
        return end_with(*failure);
    }
    const PlannedWall& planned = std::get<PlannedWall>(opened);
    deliver(report::WallResult{planned.record.wall, planned.plan, planned.record.mix_file,
                               planned.origin.files_read.inputs},
            arguments, planned.origin);
    return planned.verdict();
}

} // namespace
} // namespace of_wall

const Command wall_command{
    .name = "wall",
    .summary = "quantities, boards, forces on the forms, placing, joints and steel of walls",
    .usage = "boardmark wall [OPTIONS] WALL",
    .reads = "WALL is a wall file",
    .kind = input::FileKind::wall,
    .options = of_wall::options,
    .examples = of_wall::examples,
    .run = of_wall::run};

} // namespace boardmark::commands
