#include "mix_command.hpp"

#include "mix_session.hpp"

namespace boardmark::commands {

ExitCode run_mix_command(const std::string& name, input::Purpose purpose,
                         const Arguments& arguments) {
    const MixSession session = open_mix(arguments, purpose);
    const report::MixResult result{name, session.title, session.requirements,
                                   session.proportions, session.checks};
    const report::TextStyle style = text_style(arguments, session.system);
    switch (arguments.format()) {
    case Format::text:
        deliver(report::text(result, style), arguments);
        break;
    case Format::json:
        deliver(report::json(result), arguments);
        break;
    case Format::csv:
        deliver(report::csv(result, style.system), arguments);
        break;
    }
    return verdict(session.checks);
}

} // namespace boardmark::commands
