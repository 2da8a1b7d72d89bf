#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/mix/any_mix.hpp>
#include <boardmark/core/panels/panel_programme.hpp>
#include <boardmark/reference/tables.hpp>
#include <boardmark/report/panels/panel_report.hpp>

#include "command.hpp"
#include "planned_wall.hpp"

#include <algorithm>
#include <utility>

namespace boardmark::commands {
namespace of_panels {
namespace {

constexpr Option options[] = {all_option};

constexpr std::string_view examples[] = {
    "boardmark panels examples/terrace-panels.yaml",
    "boardmark panels --format html examples/terrace-panels.yaml",
};

/// One concrete of the panels, worked through by the tables of its own system of units.
core::Outcome<core::PanelMix> worked(const input::PanelMixFile& file, const std::string& of_wall) {
    const core::Tables tables = reference::tables_for(file.mix);
    auto proportions = core::proportions_of(file.mix, tables);
    if (!proportions) {
        return proportions.why();
    }
    return core::PanelMix{.file = file.file,
                          .of_the_wall = file.file == of_wall,
                          .w_cm = proportions->selection.w_cm,
                          .density_kg_m3 = proportions->totals.fresh_density_kg_m3,
                          .checks = core::assess(file.mix, *proportions, tables)};
}

ExitCode run(const Arguments& arguments) {
    const auto opened = planned_wall(arguments, true);
    if (const auto* failure = std::get_if<Failure>(&opened)) {
        return end_with(*failure);
    }
    const PlannedWall& planned = std::get<PlannedWall>(opened);
    const input::WallRecord& record = planned.record;
    std::vector<core::PanelMix> mixes;
    for (const input::PanelMixFile& file : record.panel_mixes) {
        auto mix = worked(file, record.mix_file);
        if (!mix) {
            return end_with(no_mix_follows(mix.why(), file.file, arguments, record.wall->system));
        }
        mixes.push_back(*std::move(mix));
    }
    core::PanelProgramme programme =
        core::panel_programme(*record.wall, planned.plan, std::move(mixes), planned.tables);
    programme.cautions.insert(programme.cautions.begin(), planned.improbable.begin(),
                              planned.improbable.end());
    deliver(report::PanelResult{record.wall->title, record.mix_file, *record.wall->panels,
                                programme, planned.origin.files_read.inputs},
            arguments, planned.origin);
    const bool mix_fails = std::ranges::any_of(
        programme.mixes, [](const core::PanelMix& mix) { return core::any_fails(mix.checks); });
    return mix_fails ? ExitCode::requirement_not_met : verdict(programme.checks);
}

} // namespace
} // namespace of_panels

const Command panels_command{
    .name = "panels",
    .summary = "sample panels: the fewest that answer, batches, what they can show, score sheet",
    .usage = "boardmark panels [OPTIONS] WALL",
    .reads = "WALL is a wall file with 'panels'",
    .kind = input::FileKind::wall,
    .options = of_panels::options,
    .examples = of_panels::examples,
    .run = of_panels::run,
    .notes =
        "What differs from panel to panel stands under 'panels.factors', of each first what is\n"
        "meant for the wall. The page of '--format html' prints on Letter or A4."};

} // namespace boardmark::commands
