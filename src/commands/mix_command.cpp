#include "mix_command.hpp"

#include "worked_mix.hpp"

namespace boardmark::commands {

ExitCode run_mix_command(const std::string& name, input::Purpose purpose,
                         const Arguments& arguments) {
    const WorkedMix worked = open_mix(arguments, {purpose});
    const report::MixResult result{name, worked.title, worked.requirements, worked.proportions,
                                   worked.checks};
    deliver(result, arguments, worked.origin);
    return verdict(worked.checks);
}

} // namespace boardmark::commands
