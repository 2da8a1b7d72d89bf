#include <boardmark/input/strength/read_strength.hpp>
#include <boardmark/input/values/improbable.hpp>
#include <boardmark/reference/tables.hpp>
#include <boardmark/report/strength/strength_report.hpp>

#include "command.hpp"
#include "delivery.hpp"
#include "opened_file.hpp"
#include "today.hpp"
#include "waiting_line.hpp"

namespace boardmark::commands {
namespace of_strength {
namespace {

constexpr Option options[] = {all_option, today_option};

constexpr std::string_view examples[] = {
    "boardmark strength --today 2026-11-25 examples/strength-results.yaml",
    "boardmark strength --today 2026-11-25 --reporting si --explain examples/strength-results.yaml",
};

ExitCode run(const Arguments& arguments) {
    const int today = today_of(arguments);
    FilesRead files_read;
    OpenedFile file = open_file(arguments, files_read);
    auto reading = while_waiting("reading the results", arguments, [&] {
        return input::read_strength(
            std::move(file.text), file.name,
            {.load = loader_beside(arguments.file(), files_read),
             .classes = reference::tables(core::UnitSystem::si).strength->classes,
             .today = today});
    });
    demand_sound(reading.record.has_value(), reading.diagnostics, arguments);
    const core::CompleteRecord& record = *reading.record;
    core::StrengthFindings findings = while_waiting("judging the results", arguments, [&] {
        return core::find_strength(record, today, reference::tables(record->system));
    });
    input::add_improbable_figures(reading.diagnostics, findings.worksheet.cautions);
    deliver(report::StrengthResult{record, findings, today, files_read.inputs}, arguments,
            {record->system, files_read});
    return verdict(findings.checks);
}

} // namespace
} // namespace of_strength

const Command strength_command{
    .name = "strength",
    .summary = "judge strength results: averages of three, scatter, the line over w/cm",
    .usage = "boardmark strength [OPTIONS] RESULTS",
    .reads = "RESULTS is a file of strength results",
    .kind = input::FileKind::results,
    .options = of_strength::options,
    .examples = of_strength::examples,
    .run = of_strength::run};

} // namespace boardmark::commands
