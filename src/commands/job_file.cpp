#include "job_file.hpp"

#include <boardmark/input/fields/file_kind.hpp>
#include <boardmark/reference/paper_rules.hpp>
#include <boardmark/units/date.hpp>

#include "opened_file.hpp"

#include <fmt/format.h>

#include <utility>

namespace boardmark::commands {
namespace {

core::JobPapers papers_of(const std::shared_ptr<const core::JobPapers>& papers) {
    return papers ? *papers : core::JobPapers{};
}

JobFile job_of(PlannedWall planned, std::optional<core::Day> date) {
    const core::Wall& wall = *planned.record.wall;
    core::JobPapers papers =
        core::merged(papers_of(wall.papers), papers_of(core::requirements_of(wall.mix).papers));
    core::PaperRules rules = reference::paper_rules(core::system_of(wall.mix));
    return {std::move(planned), std::move(papers), std::move(rules), date};
}

JobFile job_of(WorkedMix worked, std::optional<core::Day> date) {
    core::JobPapers papers = papers_of(worked.requirements().papers);
    core::PaperRules rules = reference::paper_rules(core::system_of(worked.mix));
    return {std::move(worked), std::move(papers), std::move(rules), date};
}

} // namespace

std::optional<core::Day> paper_date(const Arguments& arguments) {
    const auto written = arguments.value(paper_date_option.name);
    if (!written) {
        return std::nullopt;
    }
    const auto day = units::read_date(*written);
    if (!day) {
        throw wrong_command_line(fmt::format("--date: '{}' is not a date", *written),
                                 "write for example '--date 2027-05-10'");
    }
    return core::Day{std::chrono::days{*day}};
}

core::PaperCase JobFile::paper_case() const {
    if (const PlannedWall* planned = wall()) {
        return {.asked = core::requirements_of(planned->record.wall->mix),
                .mix = planned->plan.proportions,
                .mix_checks = planned->plan.mix_checks,
                .tables = planned->tables,
                .rules = rules,
                .job = papers,
                .wall = &*planned->record.wall,
                .plan = &planned->plan,
                .today = date};
    }
    const WorkedMix& worked = std::get<WorkedMix>(opened);
    return {.asked = worked.requirements(),
            .mix = worked.proportions,
            .mix_checks = worked.checks,
            .tables = worked.tables,
            .rules = rules,
            .job = papers,
            .today = date};
}

const core::AnyCompleteMix& JobFile::mix() const {
    const PlannedWall* planned = wall();
    return planned ? planned->record.wall->mix : std::get<WorkedMix>(opened).mix;
}

const std::vector<core::Check>& JobFile::mix_checks() const {
    const PlannedWall* planned = wall();
    return planned ? planned->plan.mix_checks : std::get<WorkedMix>(opened).checks;
}

std::vector<core::Check> JobFile::wall_checks() const {
    const PlannedWall* planned = wall();
    return planned ? planned->plan.checks : std::vector<core::Check>{};
}

const core::Tables& JobFile::tables() const {
    const PlannedWall* planned = wall();
    return planned ? planned->tables : std::get<WorkedMix>(opened).tables;
}

const Origin& JobFile::origin() const {
    const PlannedWall* planned = wall();
    return planned ? planned->origin : std::get<WorkedMix>(opened).origin;
}

std::string JobFile::title() const {
    const PlannedWall* planned = wall();
    return planned ? planned->record.wall->title : std::get<WorkedMix>(opened).title;
}

report::PaperHeading JobFile::heading(const std::vector<core::Check>& mix_checks,
                                      const std::vector<core::Check>& checks) const {
    const PlannedWall* planned = wall();
    return {.title = title(),
            .mix_file = planned ? planned->record.mix_file : "",
            .date = date,
            .mix_checks = mix_checks,
            .checks = checks,
            .plan = planned ? &planned->plan : nullptr,
            .inputs = origin().files_read.inputs};
}

std::variant<JobFile, Failure> open_job(const Arguments& arguments) {
    const auto date = paper_date(arguments);
    FilesRead files_read;
    OpenedFile file = open_file(arguments, files_read);
    const bool is_wall = input::kind_of(file.text) == input::FileKind::wall;
    if (is_wall) {
        auto planned = planned_wall(arguments, std::move(file), std::move(files_read));
        if (auto* failure = std::get_if<Failure>(&planned)) {
            return std::move(*failure);
        }
        return job_of(std::get<PlannedWall>(std::move(planned)), date);
    }
    auto worked =
        open_mix(arguments, {input::Purpose::check}, std::move(file), std::move(files_read));
    if (auto* failure = std::get_if<Failure>(&worked)) {
        return std::move(*failure);
    }
    return job_of(std::get<WorkedMix>(std::move(worked)), date);
}

} // namespace boardmark::commands
