#include <boardmark/core/paper/submittal_review.hpp>
#include <boardmark/reference/tables.hpp>
#include <boardmark/report/paper/review_report.hpp>

#include "code_choice.hpp"
#include "command.hpp"
#include "job_file.hpp"
#include "labels.hpp"
#include "mix_command.hpp"
#include "table_options.hpp"
#include "table_run.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace boardmark::commands {
namespace of_check {
namespace {

constexpr Option options[] = {
    {"against", "WALL|MIX", "hold what was handed in against the designer's file; answer it"},
    all_option,
    code_option,
    all_codes_option,
    paper_date_option,
    row_format_option,
    table_option,
    base_option,
    rows_option,
    table_threads_option,
};

constexpr std::string_view examples[] = {
    "boardmark check examples/submitted-mix.yaml",
    "boardmark check --all-codes examples/quay-wall.yaml",
    "boardmark check --against examples/issued-wall.yaml examples/submittal.yaml",
    "boardmark check --table examples/quay-mixes.csv --base examples/quay-wall.yaml",
};

constexpr std::size_t most_submittals = 12;

/// A file that was handed in: amounts, not a mix that is still to be proportioned.
ReadMix read_submittal(const Arguments& arguments, const std::string& file) {
    ReadMix read = read_mix_file(arguments.for_file(file), {input::Purpose::check});
    if (!std::holds_alternative<core::CompleteSubmittedMix>(read.mix)) {
        throw wrong_command_line(fmt::format("{} has no 'proportions'", file),
                                 "a submittal states its amounts; 'boardmark proportion' selects "
                                 "them");
    }
    return read;
}

/// The designer's file, whichever of the two it is.
std::variant<JobFile, Failure> open_designers(const Arguments& arguments) {
    return open_job(arguments.for_file(*arguments.value("against")));
}

ExitCode run_against(const Arguments& arguments) {
    const auto opened = open_designers(arguments);
    if (const auto* failure = std::get_if<Failure>(&opened)) {
        return end_with(*failure);
    }
    const JobFile& job = std::get<JobFile>(opened);
    const auto& files = arguments.files();
    const auto labels = labels_of(files);
    Origin origin = job.origin();
    std::vector<core::SubmittalReview> reviews;
    for (std::size_t i = 0; i < files.size(); ++i) {
        const ReadMix read = read_submittal(arguments, files[i]);
        add(read.origin.files_read, origin.files_read);
        auto review = core::reviewed(
            job.paper_case(), {std::get<core::CompleteSubmittedMix>(read.mix), labels[i], files[i]},
            reference::vocabulary());
        if (!review) {
            return end_with(no_mix_follows(review.why(), files[i], arguments, read.origin.system));
        }
        reviews.push_back(*std::move(review));
    }
    deliver(report::ReviewResult{.title = job.title(),
                                 .against = *arguments.value("against"),
                                 .date = job.date,
                                 .reviews = reviews,
                                 .inputs = origin.files_read.inputs},
            arguments, origin);
    const bool returned = std::ranges::any_of(reviews, [](const core::SubmittalReview& review) {
        return review.verdict == core::ReviewVerdict::returned;
    });
    return returned ? ExitCode::requirement_not_met : ExitCode::done;
}

ExitCode run(const Arguments& arguments) {
    demand_fitting_table_options(arguments);
    if (arguments.has("table")) {
        return run_table(input::Purpose::check, arguments);
    }
    if (arguments.has("against")) {
        return run_against(arguments);
    }
    if (arguments.files().size() > 1) {
        throw wrong_command_line("several files are checked '--against' a designer's file",
                                 "without it, check one after the other");
    }
    if (arguments.has("date")) {
        throw wrong_command_line("--date goes with --against",
                                 "papers and their ages are looked at there");
    }
    return run_mix_command("check", input::Purpose::check, arguments);
}

} // namespace
} // namespace of_check

const Command check_command{
    .name = "check",
    .summary = "check a mix, proportioned or submitted, against the limits",
    .usage = "boardmark check [OPTIONS] MIX | --against WALL|MIX SUBMITTED [SUBMITTED...]",
    .reads = "MIX and SUBMITTED are mix files",
    .kind = input::FileKind::mix,
    .options = of_check::options,
    .examples = of_check::examples,
    .run = of_check::run,
    .most_files = of_check::most_submittals,
    .notes = "With '--against' the demands are the designer's, whatever the submittal says of its\n"
             "purpose; papers that are missing or too old are named. Exit 1 where one is returned.",
    .in_place = "table"};

} // namespace boardmark::commands
