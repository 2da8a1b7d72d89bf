#include "command.hpp"
#include "mix_command.hpp"

namespace boardmark::commands {
namespace {

constexpr std::string_view examples[] = {
    "boardmark proportion examples/quay-wall.yaml",
    "boardmark proportion --reporting si --explain examples/courtyard-wall.yaml",
};

ExitCode run(const Arguments& arguments) {
    return run_mix_command("proportion", input::Purpose::proportion, arguments);
}

} // namespace

const Command proportion_command{
    .name = "proportion",
    .summary = "select the proportions of 1 yd3 or 1 m3, step by step, and check them",
    .usage = "boardmark proportion [OPTIONS] MIX",
    .reads = "MIX is a mix file",
    .options = {},
    .examples = examples,
    .run = run};

} // namespace boardmark::commands
