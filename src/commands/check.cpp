#include "code_choice.hpp"
#include "command.hpp"
#include "mix_command.hpp"

namespace boardmark::commands {
namespace {

constexpr Option options[] = {all_option, code_option, all_codes_option};

constexpr std::string_view examples[] = {
    "boardmark check examples/submitted-mix.yaml",
    "boardmark check --all-codes examples/quay-wall.yaml",
};

ExitCode run(const Arguments& arguments) {
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
                            .run = run};

} // namespace boardmark::commands
