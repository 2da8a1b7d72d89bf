#include "planned_wall.hpp"

#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/mix/any_mix.hpp>
#include <boardmark/input/values/improbable.hpp>
#include <boardmark/reference/tables.hpp>

#include "opened_file.hpp"
#include "waiting_line.hpp"

namespace boardmark::commands {

namespace {

/// The mix file where no mix follows from it, else the wall file.
std::string unresolved_file(const input::WallRecord& record, const core::Tables& tables,
                            const Arguments& arguments) {
    return core::proportions_of(record.wall->mix, tables) ? arguments.file() : record.mix_file;
}

} // namespace

ExitCode PlannedWall::verdict() const {
    return core::any_fails(plan.mix_checks) ? ExitCode::requirement_not_met
                                            : commands::verdict(plan.checks);
}

std::variant<PlannedWall, Failure> planned_wall(const Arguments& arguments, bool with_panels) {
    FilesRead files_read;
    OpenedFile file = open_file(arguments, files_read);
    return planned_wall(arguments, std::move(file), std::move(files_read), with_panels);
}

std::variant<PlannedWall, Failure> planned_wall(const Arguments& arguments, OpenedFile file,
                                                FilesRead files_read, bool with_panels) {
    auto reading = while_waiting("reading the walls", arguments, [&] {
        return input::read_wall(std::move(file.text), file.name,
                                {.vocabulary = reference::vocabulary(),
                                 .load = loader_beside(arguments.file(), files_read),
                                 .with_panels = with_panels});
    });
    demand_sound(reading.record.has_value(), reading.diagnostics, arguments);
    const core::CompleteWall& wall = reading.record->wall;
    core::Tables tables = reference::tables_for(wall->mix);
    auto plan = while_waiting("planning the walls", arguments,
                              [&] { return core::plan_wall(wall, tables); });
    if (!plan) {
        return no_mix_follows(plan.why(), unresolved_file(*reading.record, tables, arguments),
                              arguments, wall->system);
    }
    input::add_improbable_figures(reading.diagnostics, plan->cautions);
    Origin origin{wall->system, std::move(files_read)};
    return PlannedWall{std::move(*reading.record), std::move(tables), *std::move(plan),
                       std::move(origin), input::improbable_figures(reading.diagnostics)};
}

} // namespace boardmark::commands
