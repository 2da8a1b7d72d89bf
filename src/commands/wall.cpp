#include <boardmark/input/read_wall.hpp>
#include <boardmark/reference/tables.hpp>
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
    const core::UnitSystem system_of_mix =
        std::visit([](const auto& mix) { return mix.system; }, record.wall.mix);
    try {
        const core::WallPlan plan = core::plan_wall(record.wall, reference::tables(system_of_mix));
        deliver(report::WallResult{record.wall, plan, record.mix_file}, arguments,
                {record.wall.system, files_read});
        const bool mix_fails = core::any_fails(plan.mix_checks);
        return mix_fails ? ExitCode::requirement_not_met : verdict(plan.checks);
    } catch (const core::Unresolved& unresolved) {
        throw no_mix_follows(unresolved, arguments, record.wall.system);
    }
}

} // namespace

const Command wall_command{
    .name = "wall",
    .summary = "quantities, boards, forces on the forms, placing, joints and steel of walls",
    .usage = "boardmark wall [OPTIONS] WALL",
    .reads = "WALL is a wall file",
    .options = {},
    .examples = examples,
    .run = run};

} // namespace boardmark::commands
