#include <boardmark/input/trial/read_trial.hpp>
#include <boardmark/text/closest.hpp>
#include <boardmark/units/date.hpp>

#include "../mix/named_mix.hpp"
#include "../reading/read_record.hpp"
#include "batched_reader.hpp"
#include "fresh_test_reader.hpp"

#include <map>

namespace boardmark::input {
namespace {

/// Moistures by the names of the mix file, in its basis.
std::map<std::string, double> read_moistures(const FileContext& context) {
    std::map<std::string, double> moistures;
    if (const Reading* table = context.document.find({"trial", "moisture"})) {
        for (const Pair& pair : table->pairs) {
            moistures[pair.key.text] = pair.value.number;
        }
    }
    return moistures;
}

/// The day of the trial. A trial was: nothing of it lies after today.
std::optional<int> read_day(const FileContext& context, const TrialOptions& options) {
    const Parsed* date = context.document.value({"trial", "date"});
    if (!date) {
        return std::nullopt;
    }
    const int day = static_cast<int>(date->number);
    if (options.today && day > *options.today) {
        context.refuse(*date->node,
                       "trial.date: " + date->text + " is after today, " +
                           units::written_date(*options.today),
                       "correct the date; '--today' sets another day");
    } else if (constexpr int oldest_usual_days = 3653; // ten years; common practice, no source
               options.today && day < *options.today - oldest_usual_days) {
        context.ask_back(*date->node,
                         "trial.date: " + date->text + " is more than ten years before today, " +
                             units::written_date(*options.today),
                         "check the year; it is used as written");
    }
    return day;
}

void read_target(const FileContext& context, core::Trial& trial) {
    trial.target_slump_mm = context.document.number({"trial", "target", "slump"});
    trial.target_air_percent = context.document.number({"trial", "target", "air"});
    trial.intended_volume_m3 = context.document.number({"trial", "intended_volume"});
    if (context.document.text({"trial", "coarse"}) == "as trial") {
        trial.coarse = core::CoarseBasis::as_trial;
    }
}

/// The trial past the door of `core`, or nothing; then its faults are told.
std::optional<core::CompleteTrial> enter(const FileContext& context, core::Trial trial) {
    if (has_errors(context.diagnostics)) {
        return std::nullopt; // what was refused left values open that the door would refuse again
    }
    auto entered = core::complete(std::move(trial));
    if (const auto* faults = std::get_if<core::Faults>(&entered)) {
        for (const core::Fault& fault : *faults) {
            context.refuse(*context.document.find({"trial"})->key, fault.message,
                           "check the figure and its unit");
        }
        return std::nullopt;
    }
    return std::get<core::CompleteTrial>(std::move(entered));
}

std::optional<TrialRecord> build(const FileContext& context, Files& files,
                                 const TrialOptions& options) {
    context.demand({"mix"}, "a trial is of a mix");
    context.demand({"trial"}, "");
    auto mix = read_named_mix(context, files,
                              {.purpose = Purpose::trial,
                               .vocabulary = options.vocabulary,
                               .load = options.load,
                               .moisture_percent = read_moistures(context)},
                              "name the mix file that was batched");
    const FreshTestReader tests{context};
    core::FreshTests fresh = tests.read();
    if (!mix) {
        return std::nullopt;
    }
    const std::string mix_file = context.document.text({"mix"}).value_or("");
    core::Trial trial{.mix = std::move(*mix), .water = {}, .batched = {}, .tests = fresh};
    const std::optional<int> date = read_day(context, options);
    const BatchedReader batched{context, trial.mix, mix_file};
    batched.read(trial);
    read_target(context, trial);
    auto entered = enter(context, std::move(trial));
    if (!entered) {
        return std::nullopt;
    }
    return TrialRecord{.trial = *std::move(entered),
                       .mix_file = mix_file,
                       .name = context.document.text({"trial", "name"}).value_or(""),
                       .date = date};
}

} // namespace

TrialReading read_trial(std::string text, std::string file, const TrialOptions& options) {
    return read_record<TrialReading>(
        std::move(text), std::move(file), {FileKind::trial, trial_fields()},
        [&](const FileContext& context, Files& files) { return build(context, files, options); });
}

} // namespace boardmark::input
