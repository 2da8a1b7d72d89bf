#include <boardmark/text/closest.hpp>

#include "command.hpp"
#include "delivery.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

namespace boardmark::commands {
namespace {

constexpr std::string_view examples[] = {
    "boardmark completion bash",
    "boardmark completion fish",
};

/// A text inside single quotes of a shell.
std::string quoted(std::string_view text) {
    std::string result = "'";
    for (const char letter : text) {
        result += letter == '\'' ? "'\\''" : std::string(1, letter);
    }
    return result + "'";
}

std::string words_of(std::span<const std::string_view> words) {
    return fmt::format("{}", fmt::join(words, " "));
}

std::string names_of_commands() {
    std::vector<std::string_view> names;
    for (const Command& command : all_commands()) {
        names.push_back(command.name);
    }
    names.push_back("help");
    return words_of(names);
}

/// What may stand after an option, once for each option of a fixed choice.
std::string bash_values() {
    std::string text;
    std::vector<std::string_view> told;
    for (const Command& command : all_commands()) {
        for (const Option& option : with_common_options(command.options)) {
            if (!option.words.empty() && std::ranges::count(told, option.name) == 0) {
                told.push_back(option.name);
                text += fmt::format("        --{}) COMPREPLY=($(compgen -W '{}' -- \"$word\")); "
                                    "return ;;\n",
                                    option.name, words_of(option.words));
            }
        }
    }
    return text;
}

std::string bash() {
    std::string text =
        "# bash completion of boardmark: source this file, or put it where bash looks for them.\n"
        "_boardmark() {\n"
        "    local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} options=\n"
        "    if [ \"$COMP_CWORD\" -eq 1 ]; then\n";
    text += fmt::format("        COMPREPLY=($(compgen -W '{} --help --version' -- \"$word\"))\n",
                        names_of_commands());
    text += "        return\n    fi\n    case $before in\n" + bash_values() + "    esac\n";
    text += "    case ${COMP_WORDS[1]} in\n";
    for (const Command& command : all_commands()) {
        std::string options;
        for (const Option& option : with_common_options(command.options)) {
            options += fmt::format("{}--{}", options.empty() ? "" : " ", option.name);
        }
        text += fmt::format("        {}) options='{}' ;;\n", command.name, options);
    }
    text += fmt::format("        help) COMPREPLY=($(compgen -W '{} exposure keys' -- \"$word\")); "
                        "return ;;\n    esac\n",
                        names_of_commands());
    return text + "    if [[ $word == -* ]]; then\n"
                  "        COMPREPLY=($(compgen -W \"$options\" -- \"$word\"))\n"
                  "    else\n"
                  "        COMPREPLY=($(compgen -f -- \"$word\"))\n"
                  "    fi\n"
                  "}\n"
                  "complete -o filenames -F _boardmark boardmark\n";
}

/// A meaning inside the brackets of a zsh specification.
std::string in_brackets(std::string_view meaning) {
    std::string text;
    for (const char letter : meaning) {
        if (std::string_view{"[]:\\"}.find(letter) != std::string_view::npos) {
            text += '\\';
        }
        text += letter;
    }
    return text;
}

std::string zsh_specification(const Option& option) {
    std::string text = fmt::format("--{}[{}]", option.name, in_brackets(option.meaning));
    if (!option.words.empty()) {
        text += fmt::format(":{}:({})", option.name, words_of(option.words));
    } else if (!option.value.empty()) {
        text += fmt::format(":{}:{}", option.name, option.value == "FILE" ? "_files" : " ");
    }
    return quoted(text);
}

std::string zsh() {
    std::string text =
        "#compdef boardmark\n"
        "# zsh completion of boardmark: put it as _boardmark into a folder of $fpath.\n"
        "_boardmark() {\n"
        "    local -a commands=(\n";
    for (const Command& command : all_commands()) {
        text += "        " +
                quoted(fmt::format("{}:{}", command.name, in_brackets(command.summary))) + "\n";
    }
    text += "        'help:how a command is used'\n    )\n"
            "    if (( CURRENT == 2 )); then\n        _describe command commands\n        return\n"
            "    fi\n    local command=$words[2]\n    shift words\n    (( CURRENT-- ))\n"
            "    case $command in\n";
    for (const Command& command : all_commands()) {
        text += fmt::format("        {}) _arguments", command.name);
        for (const Option& option : with_common_options(command.options)) {
            text += " \\\n            " + zsh_specification(option);
        }
        text += " \\\n            '*:file:_files' ;;\n";
    }
    return text +
           fmt::format("        help) _values subject {} exposure keys ;;\n", names_of_commands()) +
           "    esac\n}\n_boardmark \"$@\"\n";
}

std::string fish() {
    std::string text =
        "# fish completion of boardmark: put it as boardmark.fish where fish looks.\n";
    for (const Command& command : all_commands()) {
        text += fmt::format("complete -c boardmark -f -n __fish_use_subcommand -a {} -d {}\n",
                            command.name, quoted(command.summary));
    }
    text += fmt::format("complete -c boardmark -f -n __fish_use_subcommand -a help -d {}\n",
                        quoted("how a command is used"));
    for (const Command& command : all_commands()) {
        for (const Option& option : with_common_options(command.options)) {
            const std::string value = option.value.empty() ? ""
                                      : option.words.empty()
                                          ? " -r"
                                          : fmt::format(" -x -a '{}'", words_of(option.words));
            text += fmt::format(
                "complete -c boardmark -n '__fish_seen_subcommand_from {}' -l {}{} -d {}\n",
                command.name, option.name, value, quoted(option.meaning));
        }
    }
    return text;
}

struct Shell {
    std::string_view name;
    std::string (*script)();
};
constexpr Shell shells[] = {{"bash", bash}, {"zsh", zsh}, {"fish", fish}};

ExitCode run(const Arguments& arguments) {
    std::vector<std::string_view> names;
    for (const Shell& shell : shells) {
        names.push_back(shell.name);
        if (shell.name == arguments.file()) {
            write_only_form(shell.script(), arguments);
            return ExitCode::done;
        }
    }
    const auto near = text::closest(arguments.file(), names);
    throw wrong_command_line(fmt::format("'{}' is not a shell known here", arguments.file()),
                             near ? fmt::format("did you mean '{}'?", *near)
                                  : fmt::format("one of {}", fmt::join(names, ", ")));
}

} // namespace

const Command completion_command{
    .name = "completion",
    .summary = "what a shell needs to complete commands, options and their values",
    .usage = "boardmark completion [OPTIONS] SHELL",
    .reads = "SHELL is bash, zsh or fish",
    .options = {},
    .examples = examples,
    .run = run,
    .takes_standard_input = false};

} // namespace boardmark::commands
