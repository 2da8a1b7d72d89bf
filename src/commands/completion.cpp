#include <boardmark/input/fields/key_table.hpp>
#include <boardmark/text/closest.hpp>

#include "command.hpp"
#include "delivery.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <vector>

namespace boardmark::commands {
namespace of_completion {
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
            } else if (option.value == "FILE" && std::ranges::count(told, option.name) == 0) {
                told.push_back(option.name);
                text +=
                    fmt::format("        --{}{}) _boardmark_files; return ;;\n", option.name,
                                option.letter.empty() ? "" : fmt::format("|-{}", option.letter));
            }
        }
    }
    return text;
}

/// The keys of all files, each once by the end of its path.
std::string names_of_keys() {
    std::set<std::string_view> names;
    for (const input::DescribedFile& file : input::key_tables()) {
        for (const input::DescribedKey& key : file.keys) {
            names.insert(key.path.substr(key.path.rfind('.') + 1));
        }
    }
    names.erase("*");
    return fmt::format("{}", fmt::join(names, " "));
}

/// What offers the words that are no options of a command.
std::string bash_others(const Command& command) {
    if (!command.words.empty()) {
        return fmt::format("COMPREPLY=($(compgen -W '{}' -- \"$word\"))", words_of(command.words));
    }
    if (command.kind) {
        return fmt::format("_boardmark_files '*.y*ml' '{}'",
                           fmt::join(input::telling_keys(*command.kind), "|"));
    }
    return command.most_files == 0 ? "COMPREPLY=()" : "_boardmark_files";
}

constexpr std::string_view bash_beginning =
    "# bash completion of boardmark: source this file, or put it where bash looks for them.\n"
    "# Files whose names fit the first word, if any holds a key of the second then those alone, "
    "and\n"
    "# folders.\n"
    "_boardmark_files() {\n"
    "    local file of_kind=()\n"
    "    mapfile -t COMPREPLY < <(compgen -f ${1:+-X \"!$1\"} -- \"$word\")\n"
    "    [ $# -eq 0 ] && return\n"
    "    for file in \"${COMPREPLY[@]}\"; do\n"
    "        [ -f \"$file\" ] && grep -qsE \"^($2):\" -- \"$file\" && of_kind+=(\"$file\")\n"
    "    done\n"
    "    [ ${#of_kind[@]} -gt 0 ] && COMPREPLY=(\"${of_kind[@]}\")\n"
    "    mapfile -t -O ${#COMPREPLY[@]} COMPREPLY < <(compgen -d -- \"$word\")\n"
    "}\n"
    "_boardmark() {\n"
    "    local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} options=\n"
    "    # bash parts a word at '=': '--format=h' is '--format', '=', 'h'.\n"
    "    [ \"$word\" = = ] && word=\n"
    "    [ \"$before\" = = ] && before=${COMP_WORDS[COMP_CWORD-2]}\n";

std::string bash() {
    std::string text{bash_beginning};
    text += "    if [ \"$COMP_CWORD\" -eq 1 ]; then\n";
    text += fmt::format("        COMPREPLY=($(compgen -W '{} --help --version' -- \"$word\"))\n",
                        names_of_commands());
    text += "        return\n    fi\n    case $before in\n" + bash_values() + "    esac\n";
    text += "    case ${COMP_WORDS[1]} in\n";
    for (const Command& command : all_commands()) {
        std::string options;
        for (const Option& option : with_common_options(command.options)) {
            options += fmt::format("{}--{}", options.empty() ? "" : " ", option.name);
        }
        text += fmt::format(
            "        {}) options='{}'\n            [[ $word == -* ]] || {{ {}; return; }} ;;\n",
            command.name, options, bash_others(command));
    }
    text += fmt::format("        help) options='{} exposure keys {}' ;;\n    esac\n",
                        names_of_commands(), names_of_keys());
    return text + "    COMPREPLY=($(compgen -W \"$options\" -- \"$word\"))\n"
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

std::string zsh_specification(const Option& option, std::string_view written) {
    // A long option takes its value behind a blank or '='.
    const bool takes_equals = written.starts_with("--") && !option.value.empty();
    std::string text =
        fmt::format("{}{}[{}]", written, takes_equals ? "=" : "", in_brackets(option.meaning));
    if (!option.words.empty()) {
        text += fmt::format(":{}:({})", option.name, words_of(option.words));
    } else if (!option.value.empty()) {
        text += fmt::format(":{}:{}", option.name, option.value == "FILE" ? "_files" : " ");
    }
    return quoted(text);
}

/// What offers the words that are no options of a command.
std::string zsh_others(const Command& command) {
    if (!command.words.empty()) {
        return fmt::format("'*:word:({})'", words_of(command.words));
    }
    return command.kind ? "'*:file:_files -g \"*.(yaml|yml)\"'" : "'*:file:_files'";
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
            text +=
                " \\\n            " + zsh_specification(option, fmt::format("--{}", option.name));
            if (!option.letter.empty()) {
                text += " \\\n            " +
                        zsh_specification(option, fmt::format("-{}", option.letter));
            }
        }
        text += " \\\n            " + zsh_others(command) + " ;;\n";
    }
    return text +
           fmt::format("        help) _values subject {} exposure keys {} ;;\n",
                       names_of_commands(), names_of_keys()) +
           "    esac\n}\n_boardmark \"$@\"\n";
}

/// What offers the words that are no options of a command, beside all files.
std::string fish_others(const Command& command) {
    const std::string offered = !command.words.empty() ? words_of(command.words)
                                : command.kind         ? "(__fish_complete_suffix .yaml)"
                                                       : "";
    return offered.empty()
               ? ""
               : fmt::format(
                     "complete -c boardmark -n '__fish_seen_subcommand_from {}' -k -a '{}'\n",
                     command.name, offered);
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
                "complete -c boardmark -n '__fish_seen_subcommand_from {}' -l {}{}{} -d {}\n",
                command.name, option.name,
                option.letter.empty() ? "" : fmt::format(" -s {}", option.letter), value,
                quoted(option.meaning));
        }
        text += fish_others(command);
    }
    return text;
}

constexpr std::string_view shells[] = {"bash", "zsh", "fish"};
constexpr std::string (*scripts[])() = {bash, zsh, fish};

ExitCode run(const Arguments& arguments) {
    const auto* shell = std::ranges::find(shells, std::string_view{arguments.file()});
    if (shell != std::end(shells)) {
        write_only_form(scripts[shell - std::begin(shells)](), arguments);
        return ExitCode::done;
    }
    const auto near = text::closest(arguments.file(), shells);
    throw wrong_command_line(fmt::format("'{}' is not a shell known here", arguments.file()),
                             near ? fmt::format("did you mean '{}'?", *near)
                                  : fmt::format("one of {}", fmt::join(shells, ", ")));
}

} // namespace
} // namespace of_completion

const Command completion_command{
    .name = "completion",
    .summary = "what a shell needs to complete commands, options and their values",
    .usage = "boardmark completion [OPTIONS] SHELL",
    .reads = "SHELL is bash, zsh or fish",
    .words = of_completion::shells,
    .options = {},
    .examples = of_completion::examples,
    .run = of_completion::run,
    .takes_standard_input = false};

} // namespace boardmark::commands
