#include <boardmark/report/paper/specification_report.hpp>
#include <boardmark/report/paper/submittal_report.hpp>
#include <boardmark/report/paper/testing_report.hpp>

#include "command.hpp"
#include "job_file.hpp"

#include <algorithm>
#include <iterator>
#include <vector>

namespace boardmark::commands {
namespace of_specify {
namespace {

constexpr Option options[] = {
    {"submittals", "", "what supplier and contractor hand in, by which day, and its keys"},
    {"tests", "", "how often is sampled and tested, and what luck does to the results"},
    all_option,
    paper_date_option,
};

constexpr std::string_view examples[] = {
    "boardmark specify examples/terrace-walls.yaml",
    "boardmark specify --submittals --date 2027-01-15 examples/terrace-walls.yaml",
    "boardmark specify --tests --format html examples/terrace-walls.yaml",
};

/// What fails of some checks: nothing goes out over it, whatever paper it is.
std::vector<core::Check> failing(const std::vector<core::Check>& checks) {
    std::vector<core::Check> found;
    std::copy_if(checks.begin(), checks.end(), std::back_inserter(found),
                 [](const core::Check& check) { return check.verdict == core::Verdict::fails; });
    return found;
}

/// Writes a paper with the checks of the job and gives the code to end with.
template <class Result, class Paper>
ExitCode delivered(const JobFile& job, const Paper& paper, const std::vector<core::Check>& mix,
                   const std::vector<core::Check>& checks, const Arguments& arguments) {
    deliver(Result{job.heading(mix, checks), paper}, arguments, job.origin());
    return core::any_fails(mix) ? ExitCode::requirement_not_met : verdict(checks);
}

/// The same of a paper of one subject, with its own checks and what fails of the others.
template <class Result, class Paper>
ExitCode delivered_alone(const JobFile& job, const Paper& paper, const Arguments& arguments) {
    std::vector<core::Check> checks = failing(job.wall_checks());
    checks.insert(checks.end(), paper.checks.begin(), paper.checks.end());
    return delivered<Result>(job, paper, failing(job.mix_checks()), checks, arguments);
}

ExitCode run(const Arguments& arguments) {
    const bool submittals = arguments.has("submittals");
    const bool tests = arguments.has("tests");
    if (submittals && tests) {
        throw wrong_command_line("--submittals and --tests are two papers",
                                 "ask for one after the other");
    }
    const auto opened = open_job(arguments);
    if (const auto* failure = std::get_if<Failure>(&opened)) {
        return end_with(*failure);
    }
    const JobFile& job = std::get<JobFile>(opened);
    if (submittals) {
        const core::SubmittalList list = core::submittal_list_of(job.paper_case());
        return delivered_alone<report::SubmittalListResult>(job, list, arguments);
    }
    if (tests) {
        const core::TestingPlan plan = core::testing_plan_of(job.paper_case());
        return delivered_alone<report::TestingPlanResult>(job, plan, arguments);
    }
    const core::Specification specification = core::specification_of(job.paper_case());
    return delivered<report::SpecificationResult>(job, specification, job.mix_checks(),
                                                  job.wall_checks(), arguments);
}

} // namespace
} // namespace of_specify

const Command specify_command{
    .name = "specify",
    .summary = "the papers that a designer issues: clauses, submittals, testing plan",
    .usage = "boardmark specify [--submittals | --tests] [OPTIONS] WALL|MIX",
    .reads = "WALL is a wall file, MIX a mix file",
    .kind = input::FileKind::wall,
    .options = of_specify::options,
    .examples = of_specify::examples,
    .run = of_specify::run,
    .notes =
        "Choices that the files do not settle stand in brackets, with advice and the key that\n"
        "settles each; '--explain' adds reason and source of every clause."};

} // namespace boardmark::commands
