#include "command.hpp"
#include "failure.hpp"
#include "mix_command.hpp"
#include "proportion_set.hpp"
#include "table_options.hpp"
#include "table_run.hpp"

#include <fmt/format.h>

namespace boardmark::commands {
namespace of_proportion {
namespace {

constexpr Option options[] = {
    all_option,
    {"w-cm", "A,B,...", "a trial set: 2 to 9 ratios side by side, such as 0.36,0.40,0.45"},
    {"volume", "Q", "with --w-cm: batch weights of each for this much, such as 1.5ft3"},
    {"moisture", "NAME=P,...", "with --volume: today's moistures, sand=5.2%,stone=1.4%"},
    {"resolution", "M", "with --volume: round to the steps of the scale, such as 0.1lb"},
    row_format_option,
    table_option,
    base_option,
    rows_option,
    table_threads_option,
};

constexpr std::string_view examples[] = {
    "boardmark proportion examples/quay-wall.yaml",
    "boardmark proportion --reporting si --explain examples/courtyard-wall.yaml",
    "boardmark proportion --w-cm 0.36,0.40,0.45 --volume 1.5ft3 examples/quay-wall.yaml",
    "boardmark proportion --table examples/quay-mixes.csv --base examples/quay-wall.yaml",
};

void refuse_without_set(const Arguments& arguments) {
    for (const char* option : {"volume", "moisture", "resolution"}) {
        if (arguments.has(option)) {
            throw wrong_command_line(fmt::format("--{} goes with --w-cm, a trial set", option),
                                     "'boardmark batch' batches one mix");
        }
    }
}

ExitCode run(const Arguments& arguments) {
    demand_fitting_table_options(arguments);
    if (arguments.has("table")) {
        return run_table(input::Purpose::proportion, arguments);
    }
    if (arguments.has("w-cm")) {
        return run_trial_set(arguments);
    }
    refuse_without_set(arguments);
    return run_mix_command("proportion", input::Purpose::proportion, arguments);
}

} // namespace
} // namespace of_proportion

const Command proportion_command{
    .name = "proportion",
    .summary = "select the proportions of 1 yd3 or 1 m3, step by step, and check them",
    .usage = "boardmark proportion [OPTIONS] MIX",
    .reads = "MIX is a mix file",
    .kind = input::FileKind::mix,
    .options = of_proportion::options,
    .examples = of_proportion::examples,
    .run = of_proportion::run,
    .notes =
        "A trial set is made whole even where a ratio exceeds a limit: the strength line needs "
        "it.\nThe exit code is then 1, and 3 where for one of the ratios no mix follows.",
    .in_place = "table"};

} // namespace boardmark::commands
