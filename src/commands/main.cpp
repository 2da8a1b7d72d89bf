#include <boardmark/text/closest.hpp>
#include <boardmark/text/wrap.hpp>

#include "command.hpp"
#include "failure.hpp"
#include "help.hpp"
#include "help_key.hpp"
#include "output_file.hpp"
#include "terminal.hpp"

#include <fcntl.h>
#include <fmt/format.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <csignal>
#include <exception>
#include <iostream>
#include <new>
#include <string>
#include <string_view>
#include <vector>

namespace boardmark::commands {
namespace {

ExitCode print(const std::string& text) {
    const auto width = terminal_width(STDOUT_FILENO);
    write_result(width ? text::fitted(text, *width) : text, {});
    return ExitCode::done;
}

/// The command that a mistyped word most likely stands for.
std::optional<std::string> closest_command(const std::string& word) {
    std::vector<std::string_view> names{"help"};
    for (const Command& command : all_commands()) {
        names.push_back(command.name);
    }
    const auto near = text::closest(word, names);
    return near ? std::optional{std::string{*near}} : std::nullopt;
}

Failure unknown_command(const std::string& word) {
    const auto near = closest_command(word);
    const std::string advice = near            ? fmt::format("did you mean '{}'?", *near)
                               : help_on(word) ? fmt::format("did you mean 'help {}'?", word)
                                               : "'boardmark help' lists the commands";
    return wrong_command_line(fmt::format("'{}' is not a command", word), advice);
}

/// Keys that stand in a code file alone: its tables have the form of those in data/.
bool is_of_code_file(const std::string& word) {
    constexpr std::array<std::string_view, 4> keys{"tables", "columns", "rows", "cells"};
    return std::ranges::find(keys, word) != keys.end();
}

Failure unknown_subject(const std::string& word) {
    if (is_of_code_file(word)) {
        return wrong_command_line(
            fmt::format("'{}' is a key of a code file, whose tables have no help by key", word),
            "'examples/harbour-annex.yaml' is such a file");
    }
    const auto command = closest_command(word);
    const auto near = command ? command : closest_key(word);
    return wrong_command_line(fmt::format("'{}' is neither a command nor a key", word),
                              near ? fmt::format("did you mean '{}'?", *near)
                                   : "'boardmark help' and 'boardmark help keys' list them");
}

ExitCode show_help(const std::vector<std::string>& subjects) {
    if (subjects.empty() || subjects.front().starts_with('-')) {
        return print(general_help());
    }
    const auto text = help_on(subjects.front());
    if (!text) {
        throw unknown_subject(subjects.front());
    }
    return print(*text);
}

ExitCode run(const std::vector<std::string>& words) {
    if (words.empty()) {
        throw Failure{ExitCode::wrong_input, short_help()};
    }
    const std::string& first = words.front();
    const std::vector<std::string> rest(words.begin() + 1, words.end());
    if (first == "help") {
        return show_help(rest);
    }
    constexpr std::string_view help_options[] = {"--help", "-h"};
    constexpr std::string_view version_options[] = {"--version"};
    const Command* command = find_command(first);
    if (asks_for(words, version_options)) {
        return print(version_line());
    }
    if (asks_for(words, help_options)) {
        return print(command ? *help_on(first) : general_help());
    }
    if (!command) {
        throw first.starts_with('-')
            ? wrong_command_line(fmt::format("a command comes first, not '{}'", first),
                                 "'boardmark help' lists the commands")
            : unknown_command(first);
    }
    return command->run(
        Arguments{first,
                  command->options,
                  {command->least_files, command->most_files, command->kind, command->in_place},
                  rest});
}

/// Opens each standard stream that is closed as one that fails whatever is done with it: the next
/// file would get its number, and a warning would be written into a result.
bool hold_standard_streams() {
    const auto is_held = [](int stream, int useless) {
        return ::fcntl(stream, F_GETFD) >= 0 || ::open("/dev/null", useless) == stream;
    };
    return is_held(STDIN_FILENO, O_WRONLY) && is_held(STDOUT_FILENO, O_RDONLY) &&
           is_held(STDERR_FILENO, O_RDONLY);
}

} // namespace
} // namespace boardmark::commands

int main(int argc, char** argv) {
    using namespace boardmark::commands;
    // A file that may not grow further is an output that was not written, not an end without words.
    std::signal(SIGXFSZ, SIG_IGN);
    if (!hold_standard_streams()) {
        return static_cast<int>(ExitCode::output_failed);
    }
    try {
        return static_cast<int>(run({argv + 1, argv + argc}));
    } catch (const Failure& failure) {
        return static_cast<int>(end_with(failure));
    } catch (const std::bad_alloc&) {
        return static_cast<int>(end_with(memory_ran_out()));
    } catch (const std::exception& fault) {
        return static_cast<int>(end_with(fault_of_the_program(fault)));
    }
}
