#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/study/comparison.hpp>
#include <boardmark/reference/tables.hpp>
#include <boardmark/report/study/comparison_report.hpp>

#include "command.hpp"
#include "delivery.hpp"
#include "labels.hpp"
#include "opened_file.hpp"
#include "reducer_mix.hpp"

#include <algorithm>

namespace boardmark::commands {
namespace {

constexpr Option options[] = {
    all_option,
    {"only-different", "", "leave out rows that are the same in every column"},
};

constexpr std::string_view examples[] = {
    "boardmark compare examples/flowing-wall.yaml",
    "boardmark compare --only-different examples/quay-wall.yaml examples/submitted-mix.yaml",
};

constexpr std::size_t most_mixes = 12;

ExitCode run_study(const Arguments& arguments) {
    const ReadMix read = read_mix_file(arguments, {input::Purpose::check});
    const core::CompleteMix& mix = mix_with_reducer(read, arguments.file());
    const core::Tables tables = reference::tables(mix->system);
    const auto written = core::proportion(mix, tables);
    if (!written) {
        return end_with(no_mix_follows(written.why(), arguments, mix->system));
    }
    const auto checks = core::assess(mix, *written, tables);
    const auto columns = core::reducer_study(mix, tables);
    if (!columns) {
        return end_with(no_mix_follows(columns.why(), arguments, mix->system));
    }
    const report::ComparisonResult result{
        .title = mix->title,
        .files = std::vector<std::string>(columns->size(), arguments.file()),
        .columns = *columns,
        .summary = core::summary_of(*columns),
        .checks = checks,
        .cautions = written->worksheet.cautions,
        .is_study = true,
        .only_different = arguments.has("only-different"),
        .inputs = read.origin.files_read.inputs};
    deliver(result, arguments, read.origin);
    return verdict(checks);
}

/// The cautions of all columns, each once. Those with figures are of one mix and stay there.
std::vector<core::Phrase> cautions_of(const std::vector<core::ComparedMix>& columns) {
    std::vector<core::Phrase> cautions;
    for (const core::ComparedMix& column : columns) {
        if (!column.proportions) {
            continue;
        }
        for (const core::Phrase& caution : column.proportions->worksheet.cautions) {
            const bool told = std::ranges::count(cautions, caution.text, &core::Phrase::text) > 0;
            if (!told && caution.arguments.empty()) {
                cautions.push_back(caution);
            }
        }
    }
    return cautions;
}

ExitCode run_files(const Arguments& arguments) {
    const auto& files = arguments.files();
    const auto labels = labels_of(files);
    std::vector<core::ComparedMix> columns;
    Origin origin{core::UnitSystem::us, {}};
    bool any_fails = false;
    for (std::size_t i = 0; i < files.size(); ++i) {
        const ReadMix read = read_mix_file(arguments.for_file(files[i]), {input::Purpose::check});
        const core::UnitSystem system = read.origin.system;
        origin.system = i == 0 ? system : origin.system;
        add(read.origin.files_read, origin.files_read);
        columns.push_back(core::compared(labels[i], read.mix, reference::tables(system)));
        any_fails = any_fails || core::any_fails(columns.back().checks);
    }
    const report::ComparisonResult result{.title = "Mixes side by side",
                                          .files = files,
                                          .columns = columns,
                                          .summary = core::summary_of(columns),
                                          .checks = {},
                                          .cautions = cautions_of(columns),
                                          .is_study = false,
                                          .only_different = arguments.has("only-different"),
                                          .inputs = origin.files_read.inputs};
    deliver(result, arguments, origin);
    const bool any_unresolved = std::ranges::any_of(
        columns, [](const core::ComparedMix& column) { return column.unresolved.has_value(); });
    return any_unresolved ? ExitCode::unresolved
           : any_fails    ? ExitCode::requirement_not_met
                          : ExitCode::done;
}

ExitCode run(const Arguments& arguments) {
    return arguments.files().size() == 1 ? run_study(arguments) : run_files(arguments);
}

} // namespace

const Command compare_command{
    .name = "compare",
    .summary = "mixes side by side; of one mix, what its high-range water reducer buys",
    .usage = "boardmark compare [OPTIONS] MIX [MIX...]",
    .reads = "MIX is a mix file",
    .kind = input::FileKind::mix,
    .options = options,
    .examples = examples,
    .run = run,
    .most_files = most_mixes};

} // namespace boardmark::commands
