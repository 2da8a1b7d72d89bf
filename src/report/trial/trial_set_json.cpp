#include <boardmark/report/trial/trial_set_report.hpp>
#include <boardmark/report/writing/words.hpp>

#include "../batch/json_of_batch.hpp"
#include "../writing/json_values.hpp"
#include "../writing/names.hpp"
#include "../writing/verdicts.hpp"
#include "trial_set_cautions.hpp"

namespace boardmark::report {
namespace {

using report::json_of;

Json json_of_mix(const core::TrialMix& mix) {
    Json object{{"label", label_of(mix)}, {"w_cm", mix.w_cm}};
    const core::SolvedTrial* solved = mix.solved();
    if (!solved) {
        for (const char* name : {"selection", "ingredients", "totals", "checks_failed", "batch"}) {
            object[name] = nullptr;
        }
        object["unresolved"] =
            words(std::get<core::Unresolved>(mix.outcome).what, core::UnitSystem::si);
        return object;
    }
    object["selection"] = json_of(solved->proportions.selection);
    object["ingredients"] = json_of(solved->proportions.ingredients);
    object["totals"] = json_of(solved->proportions.totals);
    object["checks_failed"] = failed_ids(solved->checks);
    object["batch"] = solved->batch ? json_of(*solved->batch) : Json(nullptr);
    object["unresolved"] = nullptr;
    object["steps"] = json_of(solved->proportions.worksheet.steps);
    return object;
}

/// The checks of all mixes, each with the mix it is of.
Json checks_of(const core::TrialSet& set) {
    Json list = Json::array();
    for (const core::TrialMix& mix : set.mixes) {
        if (!mix.solved()) {
            continue;
        }
        for (const Json& check : json_of(mix.solved()->checks)) {
            Json labelled{{"mix", label_of(mix)}};
            labelled.update(check);
            list.push_back(std::move(labelled));
        }
    }
    return list;
}

} // namespace

std::string json(const TrialSetResult& result) {
    Json object = json_heading("proportion", result.title, verdicts_of(result.set), result.inputs);
    object["method"] = result.set.method;
    object["mixes"] = Json::array();
    for (const core::TrialMix& mix : result.set.mixes) {
        object["mixes"].push_back(json_of_mix(mix));
    }
    object["checks"] = checks_of(result.set);
    object["advice"] = json_of(result.set.advice);
    const core::Batch* batch = first_batch(result.set);
    object["order"] = batch ? json_of(batch->order) : Json::array();
    object["cautions"] = Json::array();
    for (const SetCaution& caution : cautions_of(result.set, core::UnitSystem::si)) {
        object["cautions"].push_back(whose(caution) + caution.text);
    }
    return written(object);
}

} // namespace boardmark::report
