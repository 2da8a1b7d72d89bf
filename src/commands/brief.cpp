#include <boardmark/report/wall/brief_report.hpp>

#include "command.hpp"
#include "planned_wall.hpp"

namespace boardmark::commands {
namespace of_brief {
namespace {

constexpr Option options[] = {all_option};

constexpr std::string_view examples[] = {
    "boardmark brief examples/terrace-walls.yaml",
    "boardmark brief --format html examples/terrace-walls.yaml",
};

ExitCode run(const Arguments& arguments) {
    const auto opened = planned_wall(arguments);
    if (const auto* failure = std::get_if<Failure>(&opened)) {
        return end_with(*failure);
    }
    const PlannedWall& planned = std::get<PlannedWall>(opened);
    const core::Brief brief = core::brief_of(planned.record.wall, planned.plan, planned.tables);
    deliver(report::BriefResult{planned.record.wall->title, planned.record.mix_file, brief,
                                planned.plan, planned.origin.files_read.inputs},
            arguments, planned.origin);
    return planned.verdict();
}

} // namespace
} // namespace of_brief

const Command brief_command{
    .name = "brief",
    .summary = "one document for contractor and supplier: what is required, proposed, still open",
    .usage = "boardmark brief [OPTIONS] WALL",
    .reads = "WALL is a wall file",
    .kind = input::FileKind::wall,
    .options = of_brief::options,
    .examples = of_brief::examples,
    .run = of_brief::run};

} // namespace boardmark::commands
