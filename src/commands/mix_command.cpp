#include "mix_command.hpp"

#include <boardmark/reference/tables.hpp>
#include <boardmark/report/mix/row_report.hpp>

#include "code_choice.hpp"
#include "row_maker.hpp"
#include "worked_mix.hpp"

namespace boardmark::commands {
namespace {

/// The mix as the row that a table would give of it.
ExitCode run_row(input::Purpose purpose, const Arguments& arguments) {
    const ReadMix read = read_mix_file(arguments, {purpose});
    const core::Tables tables = reference::tables_for(read.mix);
    const report::RowWriter writer{report::row_ingredients(read.mix),
                                   arguments.reporting().value_or(read.origin.system)};
    const MixRow row = RowMaker{writer, tables, read.mix}.row_of(read.mix);
    write_where_asked(row.text, arguments, read.origin);
    return row.unresolved ? end_with(no_mix_follows(*row.unresolved, arguments, read.origin.system))
                          : row.code;
}

} // namespace

ExitCode run_mix_command(const std::string& name, input::Purpose purpose,
                         const Arguments& arguments) {
    if (arguments.value("format") == "row") {
        return run_row(purpose, arguments);
    }
    const auto opened = open_mix(arguments, {purpose});
    if (const auto* failure = std::get_if<Failure>(&opened)) {
        return end_with(*failure);
    }
    const WorkedMix& worked = std::get<WorkedMix>(opened);
    report::MixResult result{.command = name,
                             .title = worked.title,
                             .requirements = worked.requirements(),
                             .proportions = worked.proportions,
                             .checks = worked.checks,
                             .grading = &worked.tables.grading,
                             .aggregate =
                                 core::aggregate_together(worked.proportions, worked.tables.grading,
                                                          worked.tables.method.fineness_sieves_mm),
                             .inputs = worked.origin.files_read.inputs,
                             .codes = asked_codes(worked, arguments)};
    if (arguments.format() == Format::html) { // only a page draws it
        result.strength =
            core::strength_over_ratio(worked.requirements(), worked.proportions, worked.tables);
    }
    deliver(result, arguments, worked.origin);
    return verdict(worked.checks);
}

} // namespace boardmark::commands
