#include <boardmark/core/trial/batching_tolerance.hpp>
#include <boardmark/report/batch/batch_report.hpp>

#include "../writing/names.hpp"
#include "json_of_batch.hpp"
#include "site_water_text.hpp"

namespace boardmark::report {
namespace {

Json json_of(const core::SiteWater& water) {
    return {{"at_mixer_kg", water.at_mixer.kg},
            {"held_back_kg", water.held_back.kg},
            {"may_be_added_kg", water.may_be_added.kg},
            {"may_be_added_kg_m3", water.may_be_added_kg_m3},
            {"w_cm_then", water.w_cm_then},
            {"w_cm_limit", water.w_cm_limit},
            {"limited_by", name_of(water.limited_by)},
            {"slump_gain_mm", number_or_null(water.slump_gain_mm)},
            {"advice", report::json_of(water.advice)}};
}

Json json_of(const SackResult& sacks) {
    const core::SackStudy& study = sacks.study;
    Json rounded = report::json_of(study.rounded);
    rounded["checks_failed"] = failed_ids(sacks.rounded_checks);
    return {{"material", study.main.material},
            {"sack_kg", study.main.kg},
            {"exact_sacks", study.exact_sacks},
            {"rounded_as_ordered", std::move(rounded)},
            {"as_ordered_checks_failed", failed_ids(sacks.ordered_checks)},
            {"volume_below_m3", number_or_null(study.volume_below_m3)},
            {"below_checks_failed", failed_ids(sacks.below_checks)}};
}

Json json_of(const core::ShortLoad& load) {
    const auto& charge = load.charge;
    return {{"loads", load.loads},
            {"each_m3", load.each_m3},
            {"minimum_load_m3", load.minimum_m3},
            {"short_m3", load.short_m3},
            {"currency", charge ? Json(charge->currency) : Json(nullptr)},
            {"charge_per_m3", charge ? Json(charge->per_m3) : Json(nullptr)},
            {"charge", number_or_null(load.cost())}};
}

/// How far each weight may be off.
void add_tolerances(const core::Batch& batch, const core::BatchingTolerances& tolerances,
                    Json& object) {
    for (std::size_t i = 0; i < batch.items.size(); ++i) {
        const core::BatchItem& item = batch.items[i];
        if (!item.by_trial) {
            object["ingredients"][i]["tolerance_kg"] =
                core::batching_tolerance_kg(item.role, item.kg, tolerances);
        }
    }
}

} // namespace

std::string json(const BatchResult& result) {
    Json object =
        json_heading("batch", result.title, core::verdicts_of(result.checks), result.inputs);
    object.update(json_of(result.batch));
    add_tolerances(result.batch, result.tolerances, object);
    object["ordered_m3"] = result.ordered_m3;
    object["charges"] = result.charging.count;
    object["per_charge"] = json_of(result.each);
    add_tolerances(result.each, result.tolerances, object["per_charge"]);
    object["sacks"] = result.sacks ? json_of(*result.sacks) : Json(nullptr);
    object["site_water"] = result.site_water ? json_of(*result.site_water) : Json(nullptr);
    object["short_load"] = result.short_load ? json_of(*result.short_load) : Json(nullptr);
    object["order"] = json_of(result.each.order);
    object["checks"] = json_of(result.checks);
    object["steps"] = json_of(result.proportions.worksheet.steps);
    object["cautions"] = json_of(result.batch.cautions);
    for (Json& caution : json_of(result.proportions.worksheet.cautions)) {
        object["cautions"].push_back(std::move(caution));
    }
    return written(object);
}

} // namespace boardmark::report
