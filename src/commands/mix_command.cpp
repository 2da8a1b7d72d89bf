#include "mix_command.hpp"

#include "worked_mix.hpp"

namespace boardmark::commands {

ExitCode run_mix_command(const std::string& name, input::Purpose purpose,
                         const Arguments& arguments) {
    const WorkedMix worked = open_mix(arguments, {purpose});
    report::MixResult result{.command = name,
                             .title = worked.title,
                             .requirements = worked.requirements,
                             .proportions = worked.proportions,
                             .checks = worked.checks,
                             .grading = &worked.tables.grading};
    if (arguments.format() == Format::html) { // only a page draws it
        result.strength =
            core::strength_over_ratio(worked.requirements, worked.proportions, worked.tables);
    }
    deliver(result, arguments, worked.origin);
    return verdict(worked.checks);
}

} // namespace boardmark::commands
