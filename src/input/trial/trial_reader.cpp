#include <boardmark/input/trial/read_trial.hpp>
#include <boardmark/text/closest.hpp>
#include <boardmark/units/date.hpp>

#include "../gate/files.hpp"
#include "../reading/file_context.hpp"
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

/// The mix that was batched. Nothing where it cannot be read; then its faults are told.
std::optional<core::AnyMix> read_batched_mix(const FileContext& context, const std::string& name,
                                             Files& files, const TrialOptions& options) {
    const Node& asked = *context.document.value({"mix"})->node;
    const SourceText* source = fetch(asked, "mix", name, options.load, files, context.diagnostics);
    if (!source) {
        return std::nullopt;
    }
    if (const auto kind = other_kind(*source, FileKind::mix)) {
        context.refuse(asked, "mix: '" + name + "' is " + *kind,
                       "name the mix file that was batched");
        return std::nullopt;
    }
    auto reading = read_mix(source->text(), source->file(),
                            {.purpose = Purpose::trial,
                             .vocabulary = options.vocabulary,
                             .load = loader_of(options.load, name),
                             .moisture_percent = read_moistures(context)});
    for (Diagnostic& diagnostic : reading.diagnostics) {
        context.diagnostics.push_back(std::move(diagnostic));
    }
    return std::move(reading.mix);
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
                         "look at the year once more; it is used as written");
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

std::optional<TrialRecord> build(const FileContext& context, Files& files,
                                 const TrialOptions& options) {
    context.demand({"mix"}, "a trial is of a mix");
    context.demand({"trial"}, "");
    const auto mix_file = context.document.text({"mix"});
    auto mix = mix_file ? read_batched_mix(context, *mix_file, files, options) : std::nullopt;
    const FreshTestReader tests{context};
    core::FreshTests fresh = tests.read();
    if (!mix) {
        return std::nullopt;
    }
    TrialRecord record{
        .trial = {.mix = std::move(*mix), .water = {}, .batched = {}, .tests = fresh},
        .mix_file = *mix_file,
        .name = context.document.text({"trial", "name"}).value_or("")};
    record.date = read_day(context, options);
    const BatchedReader batched{context, record.trial.mix, *mix_file};
    batched.read(record.trial);
    read_target(context, record.trial);
    return record;
}

} // namespace

TrialReading read_trial(std::string text, std::string file, const TrialOptions& options) {
    TrialReading reading;
    Diagnostics& diagnostics = reading.diagnostics;
    Files files;
    const SourceText& source = files.add(std::move(file), std::move(text));
    const auto root = read_tree(source, diagnostics);
    if (!root || refuse_other_kind(*root, FileKind::trial, diagnostics)) {
        return reading;
    }
    const Document document{*root, trial_fields(), diagnostics};
    auto record = build({*root, document, trial_fields(), diagnostics}, files, options);
    files.sort(diagnostics);
    if (!has_errors(diagnostics)) {
        reading.record = std::move(record);
    }
    return reading;
}

} // namespace boardmark::input
