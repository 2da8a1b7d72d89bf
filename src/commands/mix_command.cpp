#include "mix_command.hpp"

#include "code_choice.hpp"
#include "worked_mix.hpp"

namespace boardmark::commands {

ExitCode run_mix_command(const std::string& name, input::Purpose purpose,
                         const Arguments& arguments) {
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
