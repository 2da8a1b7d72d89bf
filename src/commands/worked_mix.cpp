#include "worked_mix.hpp"

#include <boardmark/core/proportion.hpp>
#include <boardmark/reference/tables.hpp>
#include <boardmark/report/words.hpp>

#include "input_file.hpp"
#include "log.hpp"
#include "output_file.hpp"

#include <fmt/format.h>
#include <unistd.h>

#include <cstdlib>
#include <iostream>
#include <string_view>

namespace boardmark::commands {
namespace {

input::Vocabulary vocabulary() {
    input::Vocabulary words{.codes = reference::codes(),
                            .exposure_classes = {},
                            .fineness_sieves_mm =
                                reference::tables(core::UnitSystem::si).method.fineness_sieves_mm};
    for (const auto& exposure : reference::exposure_classes()) {
        words.exposure_classes.push_back(exposure.name);
    }
    return words;
}

/// Gets files beside a mix file and remembers their paths.
input::Loader loader_beside(const std::string& path, std::vector<std::string>& files_read) {
    return [path,
            &files_read](const std::string& name) -> std::variant<std::string, input::LoadFailure> {
        files_read.push_back(beside(path, name));
        auto bytes = read_bytes(files_read.back());
        if (const auto* failure = std::get_if<ReadFailure>(&bytes)) {
            return input::LoadFailure{failure->reason};
        }
        return std::get<std::string>(std::move(bytes));
    };
}

core::AnyMix read(const Arguments& arguments, const input::ReadOptions& options) {
    const std::string name = shown_name(arguments.file());
    log("reading " + name);
    auto bytes = read_bytes(arguments.file());
    if (const auto* failure = std::get_if<ReadFailure>(&bytes)) {
        throw wrong_command_line(fmt::format("{} cannot be read: {}", name, failure->reason));
    }
    input::MixReading reading =
        input::read_mix(std::get<std::string>(std::move(bytes)), name, options);
    if (!reading.mix) {
        throw Failure{ExitCode::wrong_input, input::render(reading.diagnostics)};
    }
    if (!arguments.has("quiet")) {
        std::cerr << input::render(reading.diagnostics);
    }
    return std::move(*reading.mix);
}

bool variable_is_set(const char* name) {
    const char* value = std::getenv(name);
    return value && *value != '\0';
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
    const bool to_terminal =
        arguments.value("out").value_or("-") == "-" && ::isatty(STDOUT_FILENO) == 1;
    return to_terminal && !dumb && !variable_is_set("NO_COLOR");
}

} // namespace

Failure no_mix_follows(const core::Unresolved& unresolved, const Arguments& arguments,
                       core::UnitSystem system_of_file) {
    return {ExitCode::unresolved, report::text(unresolved, shown_name(arguments.file()),
                                               arguments.reporting().value_or(system_of_file))};
}

WorkedMix open_mix(const Arguments& arguments, input::Purpose purpose,
                    const std::map<std::string, double>& moisture_percent) {
    if (arguments.has("verbose")) {
        start_log();
    }
    std::vector<std::string> files_read{arguments.file()};
    const core::AnyMix mix = read(arguments, {.purpose = purpose,
                                              .vocabulary = vocabulary(),
                                              .load = loader_beside(arguments.file(), files_read),
                                              .moisture_percent = moisture_percent});
    return std::visit(
        [&](const auto& either) {
            WorkedMix worked{.title = either.title,
                               .system = either.system,
                               .requirements = either.requirements,
                               .tables = reference::tables(either.system),
                               .proportions = {},
                               .checks = {},
                               .files_read = files_read};
            log("calculating '" + worked.title + "'");
            try {
                worked.proportions = core::proportions_of(mix, worked.tables);
            } catch (const core::Unresolved& unresolved) {
                throw no_mix_follows(unresolved, arguments, worked.system);
            }
            worked.checks =
                core::assess(worked.requirements, worked.proportions, worked.tables);
            log(fmt::format("{} steps, {} checks", worked.proportions.worksheet.steps.size(),
                            worked.checks.size()));
            return worked;
        },
        mix);
}

report::TextStyle text_style(const Arguments& arguments, core::UnitSystem system_of_file) {
    return {.system = arguments.reporting().value_or(system_of_file),
            .explain = arguments.has("explain"),
            .colour = wants_colour(arguments)};
}

void write_where_asked(const std::string& written, const Arguments& arguments,
                       const WorkedMix& worked) {
    const Destination destination{.path = arguments.value("out").value_or("-"),
                                  .overwrite = arguments.has("force"),
                                  .inputs = worked.files_read};
    write_result(written, destination);
    log("written: " + destination.path);
}

ExitCode verdict(const std::vector<core::Check>& checks) {
    return core::any_fails(checks) ? ExitCode::requirement_not_met : ExitCode::done;
}

} // namespace boardmark::commands
