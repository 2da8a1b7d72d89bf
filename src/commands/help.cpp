#include "help.hpp"

#include <boardmark/reference/tables.hpp>
#include <boardmark/report/mix/row_report.hpp>
#include <boardmark/text/wrap.hpp>

#include "command.hpp"
#include "help_key.hpp"
#include "table_options.hpp"
#include "terminal.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <vector>

namespace boardmark::commands {
namespace {

std::string exit_codes() {
    std::string text = "Exit codes:\n";
    for (const ExitMeaning& exit : exit_meanings) {
        text += fmt::format("  {}  {}\n", static_cast<int>(exit.code), exit.meaning);
    }
    return text;
}

std::string head_of(const Option& option) {
    return fmt::format("--{}{}{}{}", option.name,
                       option.letter.empty() ? "" : fmt::format(", -{}", option.letter),
                       option.value.empty() ? "" : " ", option.value);
}

/// Options one below the other, their meanings in one column.
std::string text_of(std::span<const Option> own) {
    const std::vector<Option> options = with_common_options(own);
    std::size_t widest = 0;
    for (const Option& option : options) {
        widest = std::max(widest, head_of(option).size());
    }
    std::string text;
    for (const Option& option : options) {
        text += fmt::format("  {:<{}}  {}\n", head_of(option), widest, option.meaning);
    }
    return text::fitted(text, widest_page);
}

std::string sentence(std::string_view summary) {
    std::string text{summary};
    text.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(text.front())));
    return text + ".";
}

std::string help_of(const Command& command) {
    std::string text = fmt::format("Usage: {}\n\n{}\n", command.usage, sentence(command.summary));
    text += fmt::format("{}{}.\n\nOptions:\n", command.reads,
                        command.takes_standard_input ? ", or '-' for standard input" : "");
    text += text_of(command.options);
    if (!command.notes.empty()) {
        text += fmt::format("\n{}\n", command.notes);
    }
    if (command.in_place == table_option.name) {
        text += fmt::format("\n{}\n", table_notes);
    }
    text += "\nExamples:\n";
    for (const std::string_view example : command.examples) {
        text += fmt::format("  {}\n", example);
    }
    return text + "\n" + exit_codes();
}

/// The classes of one code, each with its meaning.
std::string classes_text(const core::CodeTables& code) {
    std::string text =
        fmt::format("Exposure classes of {}{}. {}:\n", code.name,
                    code.edition.empty() ? "" : " (" + code.edition + ")",
                    code.several_of_category ? "The designer states all that apply"
                                             : "The designer states one of each category");
    std::string line;
    for (const core::ExposureCategory& category : code.categories) {
        const bool last = &category == &code.categories.back();
        const auto told = fmt::format("{} {}{}", category.name, category.subject, last ? "." : ",");
        constexpr std::size_t width = 78;
        if (!line.empty() && line.size() + 1 + told.size() > width) {
            text += line + "\n";
            line.clear();
        }
        line += (line.empty() ? "" : " ") + told;
    }
    text += line + "\n\n";
    std::size_t widest = 0;
    for (const core::ExposureClass& exposure : code.classes) {
        widest = std::max(widest, exposure.name.size());
    }
    for (const core::ExposureClass& exposure : code.classes) {
        text += fmt::format("  {:<{}}  {}\n", exposure.name, widest, exposure.meaning);
    }
    return text::fitted(text, widest_page);
}

std::string help_on_exposure() {
    std::string text;
    for (const std::string& name : reference::codes()) {
        text +=
            (text.empty() ? "" : "\n") + classes_text(*reference::code(name, core::UnitSystem::si));
    }
    return text;
}

std::string help_on_row() {
    std::string text =
        "Columns of '--format row' and of the tables that '--table' gives, in US and "
        "in SI units:\n\n";
    for (const report::DescribedColumn& column : report::row_columns()) {
        const std::string units = column.us_unit == column.si_unit
                                      ? std::string{column.us_unit}
                                      : fmt::format("{} | {}", column.us_unit, column.si_unit);
        constexpr std::size_t indent = 38;
        text += text::wrapped(
            column.meaning,
            {fmt::format("  {:<18}{:<18}", column.name, units), std::string(indent, ' ')},
            widest_page);
    }
    return text;
}

} // namespace

std::string short_help() {
    return "boardmark proportions concrete for architectural walls.\n\n"
           "Usage: boardmark COMMAND [OPTIONS] FILE\n"
           "Example: boardmark proportion examples/quay-wall.yaml\n"
           "'boardmark help' lists the commands.\n";
}

std::string general_help() {
    std::string text =
        "boardmark proportions concrete for architectural walls: mix and trial files in,\n"
        "batch weights, yield and limit checks out.\n\n"
        "Usage: boardmark COMMAND [OPTIONS] FILE\n\nCommands:\n";
    for (const Command& command : all_commands()) {
        text += fmt::format("  {:<12}{}\n", command.name, command.summary);
    }
    text += fmt::format("  {:<12}{}\n", "help",
                        "this text; 'help COMMAND', 'KEY', 'keys', 'exposure' or 'row' say more");
    text += "\nOptions of every command:\n" + text_of({});
    text += "\nExamples:\n";
    for (const Command& command : all_commands()) {
        text += fmt::format("  {}\n", command.examples.front());
    }
    return text + "\n" + exit_codes() +
           "\nProportions are a start, to be proven by trial batches. Local codes and the "
           "licensed\n"
           "engineer decide.\n";
}

std::optional<std::string> help_on(const std::string& subject) {
    if (subject == "exposure") {
        return help_on_exposure();
    }
    if (subject == "row") {
        return help_on_row();
    }
    if (subject == "keys") {
        return help_on_keys();
    }
    const Command* command = find_command(subject);
    return command ? std::optional{help_of(*command) + keys_beside_command(subject)}
                   : help_on_key(subject);
}

std::string version_line() {
    return "boardmark " BOARDMARK_VERSION "\n";
}

} // namespace boardmark::commands
