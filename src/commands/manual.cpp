#include "command.hpp"
#include "delivery.hpp"
#include "table_options.hpp"

#include <fmt/format.h>

namespace boardmark::commands {
namespace {

constexpr std::string_view examples[] = {
    "boardmark manual",
    "boardmark manual | head -n 20",
};

/// Text of a manual page: a hyphen is a hyphen that can be copied, a leading point is no request.
std::string roff(std::string_view text) {
    std::string result;
    for (const char letter : text) {
        result += letter == '-' ? "\\-" : letter == '\\' ? "\\e" : std::string(1, letter);
    }
    return !result.empty() && (result.front() == '.' || result.front() == '\'') ? "\\&" + result
                                                                                : result;
}

std::string roff_of(std::span<const Option> options) {
    std::string text;
    for (const Option& option : options) {
        text += fmt::format(
            ".TP\n{}\\fB\\-\\-{}\\fR{}\n{}\n",
            option.letter.empty() ? "" : fmt::format("\\fB\\-{}\\fR, ", roff(option.letter)),
            roff(option.name),
            option.value.empty() ? "" : fmt::format(" \\fI{}\\fR", roff(option.value)),
            roff(option.meaning));
    }
    return text;
}

std::string roff_of(const Command& command) {
    std::string text = fmt::format(".SS {}\n\\fB{}\\fR\n.PP\n{}. {}.\n", command.name,
                                   roff(command.usage), roff(command.summary), roff(command.reads));
    if (!command.notes.empty()) {
        text += fmt::format(".PP\n{}\n", roff(command.notes));
    }
    if (command.in_place == table_option.name) {
        text += fmt::format(".PP\n{}\n", roff(table_notes));
    }
    text += roff_of(command.options);
    text += ".PP\nExamples:\n.nf\n";
    for (const std::string_view example : command.examples) {
        text += fmt::format(".RS 4\n{}\n.RE\n", roff(example));
    }
    return text + ".fi\n";
}

constexpr std::string_view beginning =
    ".SH NAME\nboardmark \\- proportions concrete for architectural walls\n"
    ".SH SYNOPSIS\n\\fBboardmark\\fR \\fICOMMAND\\fR [\\fIOPTIONS\\fR] \\fIFILE\\fR\n"
    ".SH DESCRIPTION\nMix, trial, results and wall files in; batch weights, yield, limit checks, "
    "comparisons, forces on the forms and a brief for the contractor out. Proportions are a start, "
    "to be proven by trial batches; local codes and the licensed engineer decide.\n"
    ".PP\n\\fBboardmark help\\fR \\fIKEY\\fR explains any key of a mix, trial, results or "
    "wall file, \\fBboardmark starter\\fR \\fIKIND\\fR writes a file to begin with.\n"
    ".SH COMMANDS\n";

constexpr std::string_view ending =
    ".SH ENVIRONMENT\n"
    ".TP\nNO_COLOR\nwhere it is set and not empty, no colour is used\n"
    ".TP\nCOLUMNS\nwhere output is a terminal, its columns in place of its window's; text fits 60 "
    "to 100\n"
    ".TP\nTERM\n\"dumb\" has no colour\n"
    ".TP\nSOURCE_DATE_EPOCH\nstands for today where a date is needed\n";

ExitCode run(const Arguments& arguments) {
    std::string text = ".TH BOARDMARK 1 \"\" \"boardmark " BOARDMARK_VERSION "\"\n";
    text += beginning;
    for (const Command& command : all_commands()) {
        text += roff_of(command);
    }
    text += ".SH OPTIONS OF EVERY COMMAND\n" + roff_of(common_options());
    text += ".SH EXIT STATUS\n";
    for (const ExitMeaning& exit : exit_meanings) {
        text += fmt::format(".TP\n{}\n{}\n", static_cast<int>(exit.code), roff(exit.meaning));
    }
    text += ending;
    write_only_form(text, arguments);
    return ExitCode::done;
}

} // namespace

const Command manual_command = without_file({.name = "manual",
                                             .summary = "the manual page of all commands, for man",
                                             .usage = "boardmark manual [OPTIONS]",
                                             .examples = examples,
                                             .run = run});

} // namespace boardmark::commands
