#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/study/comparison.hpp>
#include <boardmark/core/study/method_study.hpp>
#include <boardmark/front/input_file.hpp>
#include <boardmark/reference/tables.hpp>
#include <boardmark/report/study/comparison_report.hpp>

#include "command.hpp"
#include "delivery.hpp"
#include "labels.hpp"
#include "opened_file.hpp"
#include "reducer_mix.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::commands {
namespace of_compare {
namespace {

constexpr Option options[] = {
    all_option,
    {"methods", "", "one mix by each method of proportioning"},
    {"only-different", "", "leave out rows that are the same in every column"},
};

constexpr std::string_view examples[] = {
    "boardmark compare examples/flowing-wall.yaml",
    "boardmark compare --methods examples/breakwater-bench.yaml",
    "boardmark compare --only-different examples/quay-wall.yaml examples/submitted-mix.yaml",
};

constexpr std::size_t most_mixes = 12;

ExitCode run_study(const Arguments& arguments) {
    const ReadMix read = read_mix_file(arguments, {input::Purpose::check});
    const core::CompleteMix& mix = mix_with_reducer(read, arguments.file());
    const core::Tables tables = reference::tables_for(mix, mix->method);
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
    ExitCode code = ExitCode::done;
    std::vector<Failure> without_a_mix;
    for (std::size_t i = 0; i < files.size(); ++i) {
        const ReadMix read = read_mix_file(arguments.for_file(files[i]), {input::Purpose::check});
        const core::UnitSystem system = read.origin.system;
        origin.system = i == 0 ? system : origin.system;
        add(read.origin.files_read, origin.files_read);
        columns.push_back(core::compared(labels[i], read.mix, reference::tables_for(read.mix)));
        if (const auto& why = columns.back().unresolved) {
            without_a_mix.push_back(no_mix_follows(*why, files[i], arguments, system));
        } else if (core::any_fails(columns.back().checks)) {
            code = ExitCode::requirement_not_met;
        }
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
    for (const Failure& failure : without_a_mix) {
        code = end_with(failure);
    }
    return code;
}

/// The mix of a file, which must be one to be selected.
const core::CompleteMix& mix_to_select(const ReadMix& read, const std::string& file) {
    const auto* mix = std::get_if<core::CompleteMix>(&read.mix);
    if (!mix) {
        throw wrong_command_line(
            fmt::format("--methods: the amounts of {} are submitted; no method selects them",
                        front::shown_name(file)),
            "name a mix file with 'mixture'");
    }
    return *mix;
}

ExitCode run_methods(const Arguments& arguments) {
    const ReadMix read = read_mix_file(arguments, {input::Purpose::check});
    const core::CompleteMix& mix = mix_to_select(read, arguments.file());
    std::vector<core::Tables> tables;
    for (const core::Method method : reference::methods()) {
        tables.push_back(reference::tables_for(mix, method));
    }
    std::vector<core::MethodOfStudy> methods;
    for (std::size_t i = 0; i < tables.size(); ++i) {
        methods.push_back({reference::methods()[i], &tables[i]});
    }
    const auto columns = core::by_methods(mix, methods);
    const auto own = std::ranges::find(methods, mix->method, &core::MethodOfStudy::method);
    const core::ComparedMix& column = columns[static_cast<std::size_t>(own - methods.begin())];
    const report::ComparisonResult result{
        .title = mix->title,
        .files = std::vector<std::string>(columns.size(), arguments.file()),
        .columns = columns,
        .summary = core::spread_of_methods(columns),
        .checks = {},
        .cautions = cautions_of(columns),
        .is_study = false,
        .each_owes_a_mix = column.unresolved.has_value(),
        .only_different = arguments.has("only-different"),
        .inputs = read.origin.files_read.inputs};
    deliver(result, arguments, read.origin);
    if (column.unresolved) {
        return end_with(no_mix_follows(*column.unresolved, arguments, mix->system));
    }
    return verdict(column.checks);
}

ExitCode run(const Arguments& arguments) {
    if (arguments.has("methods")) {
        if (arguments.files().size() != 1) {
            throw wrong_command_line("--methods compares one mix by several methods",
                                     "name one mix file");
        }
        return run_methods(arguments);
    }
    return arguments.files().size() == 1 ? run_study(arguments) : run_files(arguments);
}

} // namespace
} // namespace of_compare

const Command compare_command{
    .name = "compare",
    .summary = "mixes side by side; of one mix, what its high-range water reducer buys",
    .usage = "boardmark compare [OPTIONS] MIX [MIX...]",
    .reads = "MIX is a mix file",
    .kind = input::FileKind::mix,
    .options = of_compare::options,
    .examples = of_compare::examples,
    .run = of_compare::run,
    .most_files = of_compare::most_mixes};

} // namespace boardmark::commands
