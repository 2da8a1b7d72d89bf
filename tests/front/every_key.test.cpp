// Files of the examples without each of their keys, with each key that it lacks and with each
// word that may stand in a place: it is faulty at a place that is told, or leads to no result for a
// reason, or gives papers whose sentences are whole. No figure is held here, which is why so much
// can be changed.

#include <boardmark/boardmark.hpp>
#include <boardmark/core/brief/brief.hpp>
#include <boardmark/core/panels/panel_programme.hpp>
#include <boardmark/core/paper/specification.hpp>
#include <boardmark/core/paper/submittal_list.hpp>
#include <boardmark/core/paper/testing_plan.hpp>
#include <boardmark/core/pour/pour_card.hpp>
#include <boardmark/core/study/comparison.hpp>
#include <boardmark/core/study/dose_response.hpp>
#include <boardmark/core/study/method_study.hpp>
#include <boardmark/reference/paper_rules.hpp>
#include <boardmark/reference/tables.hpp>
#include <boardmark/report/panels/panel_report.hpp>
#include <boardmark/report/paper/specification_report.hpp>
#include <boardmark/report/paper/submittal_report.hpp>
#include <boardmark/report/paper/testing_report.hpp>
#include <boardmark/report/pour/pour_report.hpp>
#include <boardmark/report/study/comparison_report.hpp>
#include <boardmark/report/study/dose_report.hpp>
#include <boardmark/report/wall/brief_report.hpp>

#include "changed_files.hpp"

#include <catch2/catch.hpp>

#include <fstream>
#include <string_view>

using namespace boardmark;
using boardmark::test::ChangedFile;
using boardmark::test::FileChanges;

namespace {

constexpr int day_of_the_tests = 20782; // 2026-11-25

std::string written_example(const std::string& name) {
    std::ifstream file{std::string{BOARDMARK_SOURCE} + "/examples/" + name, std::ios::binary};
    return {std::istreambuf_iterator<char>{file}, {}};
}

input::Loader loaded_examples() {
    return [](const std::string& name) -> std::variant<std::string, input::LoadFailure> {
        std::string text = written_example(name);
        if (text.empty()) {
            return input::LoadFailure{"there is no such file"};
        }
        return text;
    };
}

/// An argument that a sentence names and nobody gave stays in it as "{name}".
void demand_whole(const std::string& text) {
    constexpr std::string_view of_a_name = "abcdefghijklmnopqrstuvwxyz_0123456789";
    REQUIRE_FALSE(text.empty());
    for (auto open = text.find('{'); open != std::string::npos; open = text.find('{', open + 1)) {
        const auto close = text.find_first_not_of(of_a_name, open + 1);
        if (close != std::string::npos && close > open + 1 && text[close] == '}') {
            FAIL_CHECK("a sentence lacks " << text.substr(open, close + 1 - open) << ":\n" << text);
        }
    }
}

/// A file of the examples, or one that is one edit away from it.
struct Base {
    std::string name;
    std::string from = {};
    std::string to = {};
};

std::string text_of_base(const Base& base) {
    std::string text = written_example(base.name);
    const auto at = text.find(base.from);
    REQUIRE(at != std::string::npos);
    return text.replace(at, base.from.size(), base.to);
}

/// Faults have a line and say something; where there is none, a reason does. As it stands the file
/// is sound.
template <class Result>
bool demand_told(const Opened<Result>& opened, const ChangedFile& file) {
    CHECK((opened || file.change != "nothing"));
    for (const Fault& fault : opened.faults()) {
        CHECK(fault.line > 0);
        CHECK_FALSE(fault.message.empty());
        demand_whole(fault.message);
    }
    if (!opened) {
        CHECK((opened.unresolved() || !opened.faults().empty()));
        demand_whole(opened.told());
    }
    return static_cast<bool>(opened);
}

template <class Result>
void demand_papers(const Result& result) {
    demand_whole(text(result, {.system = core::UnitSystem::us, .explain = true, .all = true}));
}

void demand_issued_papers(const core::PaperCase& job) {
    const std::vector<core::Check> none;
    const report::PaperHeading heading{
        .title = "test", .mix_checks = job.mix_checks, .checks = none, .plan = job.plan};
    demand_papers(report::SpecificationResult{heading, core::specification_of(job)});
    demand_papers(report::SubmittalListResult{heading, core::submittal_list_of(job)});
    demand_papers(report::TestingPlanResult{heading, core::testing_plan_of(job)});
}

core::JobPapers papers_asked(const core::AnyCompleteMix& mix,
                             const std::shared_ptr<const core::JobPapers>& of_wall = {}) {
    const auto& of_mix = core::requirements_of(mix).papers;
    return core::merged(of_wall ? *of_wall : core::JobPapers{},
                        of_mix ? *of_mix : core::JobPapers{});
}

void demand_columns(const std::vector<core::ComparedMix>& columns) {
    const std::vector<core::Check> none;
    demand_papers(report::ComparisonResult{

        .title = "test",
        .files = std::vector<std::string>(columns.size(), "test"),
        .columns = columns,
        .summary = {},
        .checks = none,
        .cautions = {}});
}

/// What else may be asked of a mix that is selected: the uses of its reducer, every method.
void demand_studies(const core::AnyCompleteMix& any) {
    const auto* mix = std::get_if<core::CompleteMix>(&any);
    if (!mix) {
        return;
    }
    const core::Tables tables = reference::tables_for(any);
    if (core::holds_high_range_reducer(*mix)) {
        if (const auto uses = core::reducer_study(*mix, tables)) {
            demand_columns(*uses);
        } else {
            CHECK_FALSE(uses.why().ways_out.empty());
        }
        if (const auto response = core::dose_response(*mix, tables)) {
            const std::vector<core::Check> none;
            const std::vector<core::Phrase> silent;
            demand_papers(report::DoseResult{"test", *response, none, silent});
        } else {
            CHECK_FALSE(response.why().ways_out.empty());
        }
    }
    if ((*mix)->selections.fresh_density_kg_m3) {
        const auto methods = reference::methods();
        std::vector<core::Tables> of_methods;
        std::vector<core::MethodOfStudy> asked;
        for (const core::Method method : methods) {
            of_methods.push_back(reference::tables_for(*mix, method));
        }
        for (std::size_t i = 0; i < of_methods.size(); ++i) {
            asked.push_back({methods[i], &of_methods[i]});
        }
        demand_columns(core::by_methods(*mix, asked));
    }
}

/// The other papers of a wall that was planned.
void demand_wall_papers(const input::WallRecord& record) {
    const core::CompleteWall& wall = record.wall;
    const core::Tables tables = reference::tables_for(wall->mix);
    const auto plan = core::plan_wall(wall, tables);
    if (!plan) {
        return;
    }
    demand_papers(
        report::BriefResult{"test", record.mix_file, core::brief_of(wall, *plan, tables), *plan});
    demand_papers(
        report::PourResult{"test", record.mix_file, core::pour_card(wall, *plan, tables, "")});
    if (wall->panels) {
        std::vector<core::PanelMix> mixes;
        for (const input::PanelMixFile& file : record.panel_mixes) {
            mixes.push_back({.file = file.file, .of_the_wall = file.file == record.mix_file});
        }
        demand_papers(
            report::PanelResult{"test", record.mix_file, *wall->panels,
                                core::panel_programme(wall, *plan, std::move(mixes), tables)});
    }
    const core::JobPapers papers = papers_asked(wall->mix, wall->papers);
    demand_issued_papers({.asked = core::requirements_of(wall->mix),
                          .mix = plan->proportions,
                          .mix_checks = plan->mix_checks,
                          .tables = tables,
                          .rules = reference::paper_rules(core::system_of(wall->mix)),
                          .job = papers,
                          .wall = &*wall,
                          .plan = &*plan,
                          .today = core::Day{std::chrono::days{day_of_the_tests}}});
}

} // namespace

TEST_CASE("a wall file with any key left out, added or answered otherwise", "[every-key]") {
    const Base base =
        GENERATE(Base{"terrace-walls.yaml"},
                 Base{"terrace-walls.yaml", "mix: flowing-wall.yaml", "mix: breakwater-bench.yaml"},
                 Base{"terrace-panels.yaml"}, Base{"cold-wall.yaml"});
    static const input::Vocabulary words = reference::vocabulary();
    for (const ChangedFile& file : FileChanges{text_of_base(base), input::FileKind::wall}.all()) {
        INFO(base.name << ", " << file.change);
        const auto opened = read_wall(file.text, base.name, loaded_examples());
        if (demand_told(opened, file)) {
            demand_whole(opened.value().text(true));
            const bool panels = file.text.find("panels: ") != std::string::npos;
            const auto reading = input::read_wall(
                file.text, base.name,
                {.vocabulary = words, .load = loaded_examples(), .with_panels = panels});
            if (reading.record) {
                demand_wall_papers(*reading.record);
            }
        }
    }
}

TEST_CASE("a mix file with any key left out, added or answered otherwise", "[every-key]") {
    const std::string readings =
        "selections: {fresh_density: 2430 kg/m3, fine_share_by_mass: 31 %}";
    const Base base =
        GENERATE(Base{"quay-wall.yaml"}, Base{"flowing-wall.yaml"}, Base{"breakwater-bench.yaml"},
                 Base{"breakwater-bench.yaml", "method: BRE", "method: IS 10262"});
    static const input::Vocabulary words = reference::vocabulary();
    std::string text = text_of_base(base);
    if (!base.to.empty()) { // those are readings of the charts of BRE
        text.erase(text.find(readings));
    }
    for (const ChangedFile& file : FileChanges{text, input::FileKind::mix}.all()) {
        INFO(base.name << ", " << file.change);
        const auto opened = read(file.text, base.name, Purpose::check, loaded_examples());
        if (demand_told(opened, file)) {
            const WorkedMix& worked = opened.value();
            demand_whole(worked.text(true));
            const auto& papers = worked.requirements().papers;
            demand_issued_papers({.asked = worked.requirements(),
                                  .mix = worked.proportions(),
                                  .mix_checks = worked.checks(),
                                  .tables = worked.tables(),
                                  .rules = reference::paper_rules(worked.system()),
                                  .job = papers ? *papers : core::JobPapers{}});
        }
        const auto reading = input::read_mix(
            file.text, base.name,
            {.purpose = Purpose::proportion, .vocabulary = words, .load = loaded_examples()});
        if (reading.mix) {
            demand_studies(*reading.mix);
        }
    }
}

/// What is read of each file that is one change away, told in full where nothing is wrong.
void demand_told_of_changes(const std::string& name, input::FileKind kind, const auto& read) {
    for (const ChangedFile& file : FileChanges{written_example(name), kind}.all()) {
        INFO(name << ", " << file.change);
        const auto opened = read(file.text, name, loaded_examples(), day_of_the_tests);
        if (demand_told(opened, file)) {
            demand_whole(opened.value().text(true));
        }
    }
}

TEST_CASE("a trial file with any key left out, added or answered otherwise", "[every-key]") {
    const std::string name = GENERATE(as<std::string>{}, "quay-wall-trial.yaml", "wet-trial.yaml");
    demand_told_of_changes(name, input::FileKind::trial,
                           [](auto&&... asked) { return read_trial(asked...); });
}

TEST_CASE("a file of results with any key left out, added or answered otherwise", "[every-key]") {
    const std::string name =
        GENERATE(as<std::string>{}, "strength-results.yaml", "low-results.yaml");
    demand_told_of_changes(name, input::FileKind::results,
                           [](auto&&... asked) { return read_results(asked...); });
}
