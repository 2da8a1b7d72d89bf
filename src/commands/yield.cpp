#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/mix/any_mix.hpp>
#include <boardmark/core/trial/next_trial.hpp>
#include <boardmark/core/trial/yield.hpp>
#include <boardmark/input/trial/read_trial.hpp>
#include <boardmark/input/values/improbable.hpp>
#include <boardmark/reference/tables.hpp>
#include <boardmark/report/trial/yield_report.hpp>

#include "command.hpp"
#include "delivery.hpp"
#include "opened_file.hpp"
#include "today.hpp"

#include <optional>

namespace boardmark::commands {
namespace of_yield {
namespace {

constexpr Option options[] = {all_option, today_option};

constexpr std::string_view examples[] = {
    "boardmark yield examples/quay-wall-trial.yaml",
    "boardmark yield --reporting si --explain examples/quay-wall-trial.yaml",
};

input::TrialReading read(const Arguments& arguments, FilesRead& files_read) {
    OpenedFile file = open_file(arguments, files_read);
    auto reading = input::read_trial(std::move(file.text), file.name,
                                     {.vocabulary = reference::vocabulary(),
                                      .load = loader_beside(arguments.file(), files_read),
                                      .today = today_of(arguments)});
    demand_sound(reading.record.has_value(), reading.diagnostics, arguments);
    return reading;
}

ExitCode run(const Arguments& arguments) {
    FilesRead files_read;
    const input::TrialReading reading = read(arguments, files_read);
    const input::TrialRecord& record = *reading.record;
    const core::CompleteTrial& trial = record.trial;
    const core::UnitSystem system = core::system_of(trial->mix);
    const core::Tables tables = reference::tables_for(trial->mix);
    const auto designed = core::proportions_of(trial->mix, tables);
    if (!designed) {
        return end_with(no_mix_follows(designed.why(), arguments, system));
    }
    auto yield = core::yield_of(trial, *designed, tables);
    if (!yield) {
        return end_with(no_mix_follows(yield.why(), arguments, system));
    }
    input::add_improbable_figures(reading.diagnostics, yield->found.worksheet.cautions);
    const auto checks = core::assess(trial, *yield, *designed, tables);
    const auto next = core::next_trial(trial, *yield, *designed, tables);
    const std::optional<core::NextTrial> next_trial = next ? std::optional{*next} : std::nullopt;
    const std::optional<core::Unresolved> no_next =
        next ? std::nullopt : std::optional{next.why()}; // what this trial was stands without it
    const report::YieldResult result{.title = core::title_of(trial->mix),
                                     .mix_file = record.mix_file,
                                     .name = record.name,
                                     .date = record.date,
                                     .trial = trial,
                                     .designed = *designed,
                                     .yield = *yield,
                                     .checks = checks,
                                     .next = next_trial,
                                     .no_next = no_next,
                                     .inputs = files_read.inputs};
    deliver(result, arguments, {system, files_read});
    // A next trial that fails is not to be batched, whatever this one was.
    return next_trial && core::any_fails(next_trial->checks) ? ExitCode::requirement_not_met
                                                             : verdict(checks);
}

} // namespace
} // namespace of_yield

const Command yield_command{
    .name = "yield",
    .summary =
        "what a trial batch turned out to be: yield, air, w/cm, and the batch sheet of the next",
    .usage = "boardmark yield [OPTIONS] TRIAL",
    .reads = "TRIAL is a trial file",
    .kind = input::FileKind::trial,
    .options = of_yield::options,
    .examples = of_yield::examples,
    .run = of_yield::run};

} // namespace boardmark::commands
