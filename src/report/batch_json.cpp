#include <boardmark/report/batch_report.hpp>

#include "json_parts.hpp"
#include "site_water_text.hpp"

namespace boardmark::report {
namespace {

Json json_of(const core::BatchItem& item) {
    Json row{{"name", item.name},
             {"role", core::name_of(item.role)},
             {"kg", item.kg},
             {"litres", number_or_null(item.litres)}};
    if (item.by_trial) {
        row["by_trial"] = true;
    }
    if (item.sacks) {
        row["sacks"] = *item.sacks;
    }
    return row;
}

Json json_of(const std::vector<core::BatchItem>& items) {
    Json rows = Json::array();
    for (const core::BatchItem& item : items) {
        rows.push_back(json_of(item));
    }
    return rows;
}

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
    Json rounded{{"volume_m3", study.rounded.volume_m3},
                 {"w_cm", study.rounded.w_cm},
                 {"relative_yield", number_or_null(study.rounded.relative_yield())},
                 {"ingredients", json_of(study.rounded.items)},
                 {"checks_failed", Json::array()}};
    for (const core::Check& check : sacks.rounded_checks) {
        if (check.verdict == core::Verdict::fails) {
            rounded["checks_failed"].push_back(check.id);
        }
    }
    return {{"material", study.main.material},
            {"sack_kg", study.main.kg},
            {"exact_sacks", study.exact_sacks},
            {"rounded_as_ordered", std::move(rounded)},
            {"volume_below_m3", number_or_null(study.volume_below_m3)}};
}

/// One charge, or load, of an order that is divided.
Json json_of_charge(const BatchResult& result) {
    const core::Batch& each = result.each;
    Json charge{{"volume_m3", each.volume_m3},
                {"ingredients", json_of(each.items)},
                {"free_water_kg", each.free_water_kg},
                {"w_cm", each.w_cm},
                {"mass_kg", each.mass_kg},
                {"yield_m3", number_or_null(each.yield_m3)}};
    return charge;
}

} // namespace

std::string json(const BatchResult& result) {
    Json object = json_heading("batch", result.title);
    object["volume_m3"] = result.batch.volume_m3;
    object["ordered_m3"] = result.ordered_m3;
    object["ingredients"] = json_of(result.batch.items);
    object["free_water_kg"] = result.batch.free_water_kg;
    object["w_cm"] = result.batch.w_cm;
    object["mass_kg"] = result.batch.mass_kg;
    object["yield_m3"] = number_or_null(result.batch.yield_m3);
    object["relative_yield"] = number_or_null(result.batch.relative_yield());
    object["charges"] = result.charging.count;
    object["per_charge"] = json_of_charge(result);
    object["sacks"] = result.sacks ? json_of(*result.sacks) : Json(nullptr);
    object["site_water"] = result.site_water ? json_of(*result.site_water) : Json(nullptr);
    object["checks"] = json_of(result.checks);
    object["steps"] = json_of(result.proportions.worksheet.steps);
    object["cautions"] = json_of(result.batch.cautions);
    for (Json& caution : json_of(result.proportions.worksheet.cautions)) {
        object["cautions"].push_back(std::move(caution));
    }
    return written(object);
}

} // namespace boardmark::report
