#include "mix_command.hpp"

#include "mix_session.hpp"

namespace boardmark::commands {

ExitCode run_mix_command(const std::string& name, input::Purpose purpose,
                         const Arguments& arguments) {
    const MixSession session = open_mix(arguments, purpose);
    const report::MixResult result{name, session.title, session.requirements, session.proportions,
                                   session.checks};
    deliver(result, arguments, session);
    return verdict(session.checks);
}

} // namespace boardmark::commands
