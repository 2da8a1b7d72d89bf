#include "command.hpp"
#include "mix_command.hpp"
#include "table_options.hpp"
#include "table_run.hpp"

namespace boardmark::commands {
namespace {

constexpr Option options[] = {all_option,  row_format_option, table_option,
                              base_option, rows_option,       table_threads_option};

constexpr std::string_view examples[] = {
    "boardmark check examples/submitted-mix.yaml",
    "boardmark check --format json examples/quay-wall.yaml",
    "boardmark check --table examples/quay-mixes.csv --base examples/quay-wall.yaml",
};

ExitCode run(const Arguments& arguments) {
    demand_fitting_table_options(arguments);
    if (arguments.has("table")) {
        return run_table(input::Purpose::check, arguments);
    }
    return run_mix_command("check", input::Purpose::check, arguments);
}

} // namespace

const Command check_command{.name = "check",
                            .summary = "check a mix, proportioned or submitted, against the limits",
                            .usage = "boardmark check [OPTIONS] MIX",
                            .reads = "MIX is a mix file",
                            .kind = input::FileKind::mix,
                            .options = options,
                            .examples = examples,
                            .run = run,
                            .in_place = "table"};

} // namespace boardmark::commands
