#include "delivery.hpp"

#include <boardmark/front/input_file.hpp>
#include <boardmark/report/writing/words.hpp>

#include "log.hpp"
#include "output_file.hpp"
#include "terminal.hpp"

#include <unistd.h>

#include <cstdlib>
#include <iostream>
#include <string_view>

namespace boardmark::commands {
namespace {

bool variable_is_set(const char* name) {
    const char* value = std::getenv(name);
    return value && *value != '\0';
}

/// Whether a result goes to a terminal, not to a file or a pipe.
bool writes_to_terminal(const Arguments& arguments) {
    return arguments.value("out").value_or("-") == "-" && ::isatty(STDOUT_FILENO) == 1;
}

bool wants_colour(const Arguments& arguments) {
    switch (arguments.colour()) {
    case Colour::always:
        return true;
    case Colour::never:
        return false;
    case Colour::automatic:
        break;
    }
    const char* terminal = std::getenv("TERM");
    const bool dumb = terminal && std::string_view{terminal} == "dumb";
    return writes_to_terminal(arguments) && !dumb && !variable_is_set("NO_COLOR");
}

std::size_t width_of_page(const Arguments& arguments) {
    return writes_to_terminal(arguments)
               ? terminal_width(STDOUT_FILENO).value_or(report::page_width)
               : report::page_width;
}

} // namespace

report::TextStyle text_style(const Arguments& arguments, core::UnitSystem system_of_file) {
    return {.system = arguments.reporting().value_or(system_of_file),
            .explain = arguments.has("explain"),
            .all = arguments.has("all"),
            .colour = wants_colour(arguments),
            .width = width_of_page(arguments)};
}

void write_where_asked(const std::string& written, const Arguments& arguments,
                       const Origin& origin) {
    const Destination destination{.path = arguments.value("out").value_or("-"),
                                  .overwrite = arguments.has("force"),
                                  .inputs = origin.files_read.paths};
    write_result(written, destination);
    log("written: " + destination.path);
}

void write_only_form(const std::string& written, const Arguments& arguments) {
    if (arguments.has("format")) {
        throw wrong_command_line("--format: this command writes one form only",
                                 "leave '--format' out");
    }
    write_where_asked(written, arguments, {core::UnitSystem::us, {}});
}

void demand_sound(bool has_result, const input::Diagnostics& diagnostics,
                  const Arguments& arguments, std::string_view consequence) {
    if (!has_result) {
        throw Failure{ExitCode::wrong_input,
                      input::render(diagnostics, consequence, terminal_width(STDERR_FILENO))};
    }
    if (!arguments.has("quiet")) {
        std::cerr << input::render(diagnostics, consequence, terminal_width(STDERR_FILENO));
    }
}

void tell(const std::vector<core::Phrase>& improbable, const Arguments& arguments,
          core::UnitSystem system_of_file) {
    if (arguments.has("quiet")) {
        return;
    }
    for (const core::Phrase& phrase : improbable) {
        std::cerr << for_standard_error(
            "boardmark: warning: " +
            report::words(phrase, arguments.reporting().value_or(system_of_file)) + "\n");
    }
}

ExitCode verdict(const std::vector<core::Check>& checks) {
    return core::any_fails(checks) ? ExitCode::requirement_not_met : ExitCode::done;
}

Failure no_mix_follows(const core::Unresolved& unresolved, const std::string& file,
                       const Arguments& arguments, core::UnitSystem system_of_file) {
    return {ExitCode::unresolved,
            report::text(unresolved, front::shown_name(file),
                         arguments.reporting().value_or(system_of_file),
                         terminal_width(STDERR_FILENO).value_or(report::page_width))};
}

Failure no_mix_follows(const core::Unresolved& unresolved, const Arguments& arguments,
                       core::UnitSystem system_of_file) {
    return no_mix_follows(unresolved, arguments.file(), arguments, system_of_file);
}

} // namespace boardmark::commands
