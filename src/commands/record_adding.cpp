#include "record_adding.hpp"

#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/mix/any_mix.hpp>
#include <boardmark/core/trial/yield.hpp>
#include <boardmark/front/input_file.hpp>
#include <boardmark/input/fields/file_kind.hpp>
#include <boardmark/input/strength/read_strength.hpp>
#include <boardmark/input/trial/read_trial.hpp>
#include <boardmark/reference/tables.hpp>
#include <boardmark/report/writing/words.hpp>
#include <boardmark/text/utf8.hpp>
#include <boardmark/units/date.hpp>

#include "delivery.hpp"
#include "failure.hpp"
#include "opened_file.hpp"
#include "today.hpp"

#include <fmt/format.h>

namespace boardmark::commands {
namespace {

input::Diagnostic fault_of(const std::string& file, std::string message, std::string advice) {
    return {
        .file = file, .message = std::move(message), .excerpt = "", .advice = std::move(advice)};
}

/// A trial is found again by its name and stands in the order of dates.
void demand_name_and_date(const input::TrialRecord& trial, const std::string& file,
                          const Arguments& arguments) {
    input::Diagnostics faults;
    if (trial.name.empty()) {
        faults.push_back(fault_of(file, "the trial has no 'name', by which a record finds it",
                                  "add to the trial for example 'name: T-07'"));
    }
    if (!trial.date) {
        faults.push_back(fault_of(file, "the trial has no 'date', which orders a record",
                                  "add to the trial for example 'date: 2026-03-02'"));
    }
    demand_sound(faults.empty(), faults, arguments, nothing_saved);
}

core::RecordedTrial row_of(const input::TrialRecord& read, const core::Yield& yield) {
    return {.batch = read.name,
            .date = units::written_date(*read.date),
            .mix = read.mix_file,
            .title = core::title_of(read.trial->mix),
            .density_kg_m3 = yield.density_kg_m3,
            .yield_m3 = yield.volume_m3,
            .relative_yield = yield.relative_yield,
            .w_cm = yield.found.totals.w_cm,
            .slump_mm = yield.slump.mm,
            .target_slump_mm = yield.target.slump_mm,
            .air_percent = yield.measured_air_percent,
            .target_air_percent = yield.target.air_percent,
            .gravimetric_air_percent = yield.gravimetric_air_percent,
            .temperature_c = read.trial->tests.temperature_c,
            .remark = ""};
}

/// Values so far off that no record keeps them are a fault of the file.
template <class Row>
void demand_fit(const Row& row, const std::string& what, const std::string& file,
                const Arguments& arguments) {
    input::Diagnostics faults;
    for (const auto& column : core::record_columns<Row>()) {
        if (!core::fits(column, column.of(row))) {
            faults.push_back(fault_of(file,
                                      fmt::format("the {} of {} cannot be", column.name, what),
                                      "look at what was weighed and measured"));
        }
    }
    demand_sound(faults.empty(), faults, arguments, nothing_saved);
}

/// What a trial was. Throws Failure where that does not follow.
core::Yield yield_of(const core::CompleteTrial& trial, const std::string& file,
                     core::UnitSystem system) {
    const core::Tables tables = reference::tables_for(trial->mix);
    const auto follows = [&](auto outcome) {
        if (!outcome) {
            throw Failure{ExitCode::unresolved, report::text(outcome.why(), file, system)};
        }
        return *std::move(outcome);
    };
    const core::Proportions designed = follows(core::proportions_of(trial->mix, tables));
    return follows(core::yield_of(trial, designed, tables));
}

FiledRows filed_trial(OpenedFile file, const std::string& path, const Arguments& arguments,
                      FilesRead& files_read) {
    auto reading = input::read_trial(std::move(file.text), file.name,
                                     {.vocabulary = reference::vocabulary(),
                                      .load = loader_beside(path, files_read),
                                      .today = today_of(arguments)});
    demand_sound(reading.record.has_value(), reading.diagnostics, arguments, nothing_saved);
    const input::TrialRecord& read = *reading.record;
    demand_name_and_date(read, file.name, arguments);
    const auto system = core::system_of(read.trial->mix);
    const auto row = row_of(read, yield_of(read.trial, file.name, system));
    demand_fit(row, "the trial", file.name, arguments);
    return {.addition = {.file = text::printable(file.name),
                         .kind = "trial",
                         .reporting = system,
                         .trials = {row}},
            .places = {fault_of(file.name, "", "")}};
}

core::RecordedSpecimen row_of(const core::StrengthRecord& record,
                              const core::CrushedSpecimen& specimen) {
    const core::CastBatch& batch = record.batches[specimen.batch];
    return {.specimen = specimen.name,
            .batch = batch.name,
            .date = units::written_date(*batch.cast),
            .mix = record.title,
            .age_d = specimen.age_d,
            .strength_mpa = specimen.strength_mpa,
            .specified_strength_mpa = record.specified_mpa,
            .w_cm = batch.w_cm,
            .shape = record.specimen.shape == core::SpecimenShape::cube ? "cube" : "cylinder"};
}

/// A specimen stands in the order of the dates of casting.
void demand_cast_dates(const core::StrengthRecord& record, const std::string& file,
                       const Arguments& arguments) {
    input::Diagnostics faults;
    for (const core::CastBatch& batch : record.batches) {
        if (!batch.cast) {
            faults.push_back(fault_of(
                file, fmt::format("batch {} has no 'cast', which orders a record", batch.name),
                "add the day it was cast, for example 'cast: 2026-03-02'"));
        }
    }
    demand_sound(faults.empty(), faults, arguments, nothing_saved);
}

FiledRows filed_results(OpenedFile file, const std::string& path, const Arguments& arguments,
                        FilesRead& files_read) {
    auto reading =
        input::read_strength(std::move(file.text), file.name,
                             {.load = loader_beside(path, files_read),
                              .classes = reference::tables(core::UnitSystem::si).strength->classes,
                              .today = today_of(arguments)});
    demand_sound(reading.record.has_value(), reading.diagnostics, arguments, nothing_saved);
    const core::StrengthRecord& record = *reading.record;
    demand_cast_dates(record, file.name, arguments);
    FiledRows filed{.addition = {.file = text::printable(file.name),
                                 .kind = "strength results",
                                 .reporting = record.system},
                    .places = {}};
    for (const core::CrushedSpecimen& specimen : record.specimens) {
        filed.addition.specimens.push_back(row_of(record, specimen));
        demand_fit(filed.addition.specimens.back(), "specimen " + specimen.name, file.name,
                   arguments);
        filed.places.push_back(fault_of(file.name, "", ""));
    }
    return filed;
}

} // namespace

FiledRows read_filed_rows(const Arguments& arguments, FilesRead& files_read) {
    const std::string path = *arguments.value("add");
    if (path.ends_with(".csv")) {
        throw wrong_command_line("--add reads a trial file or a file of strength results",
                                 "'--import' reads CSV");
    }
    OpenedFile file = open_file(path, front::largest_yaml_file, files_read);
    const bool results = input::kind_of(file.text) == input::FileKind::results;
    return results ? filed_results(std::move(file), path, arguments, files_read)
                   : filed_trial(std::move(file), path, arguments, files_read);
}

} // namespace boardmark::commands
