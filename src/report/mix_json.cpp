#include <boardmark/report/mix_report.hpp>

#include "json_parts.hpp"
#include "names.hpp"

namespace boardmark::report {
namespace {

Json json_of(const core::Selection& selection) {
    return {{"specified_strength_mpa", selection.specified_strength_mpa},
            {"required_average_strength_mpa", selection.required_average_strength_mpa},
            {"slump_mm", selection.slump_mm},
            {"nominal_max_size_mm", selection.nominal_max_size_mm},
            {"air_percent", selection.air_percent},
            {"air_at_placing_percent", selection.air_at_placing_percent},
            {"w_cm", selection.w_cm},
            {"w_cm_by_strength", number_or_null(selection.w_cm_by_strength)},
            {"w_cm_by_exposure", number_or_null(selection.w_cm_by_exposure)},
            {"w_cm_governed_by", name_of(selection.w_cm_governed_by)},
            {"table_water_kg_m3", number_or_null(selection.table_water_kg_m3)},
            {"water_reduction_percent", number_or_null(selection.water_reduction_percent)},
            {"water_kg_m3", selection.water_kg_m3},
            {"binder_kg_m3", selection.binder_kg_m3},
            {"coarse_volume", number_or_null(selection.coarse_volume)},
            {"fineness_modulus", number_or_null(selection.fineness_modulus)}};
}

Json json_of(const std::vector<core::Ingredient>& ingredients) {
    Json list = Json::array();
    for (const core::Ingredient& ingredient : ingredients) {
        Json row{{"name", ingredient.name},
                 {"role", core::name_of(ingredient.role)},
                 {"kg_m3", ingredient.kg_m3},
                 {"dry_kg_m3", number_or_null(ingredient.dry_kg_m3)},
                 {"volume_m3", number_or_null(ingredient.volume_m3)}};
        if (ingredient.by_trial) {
            row["by_trial"] = true;
        }
        list.push_back(std::move(row));
    }
    return list;
}

Json json_of(const core::Totals& totals) {
    return {{"fresh_density_kg_m3", number_or_null(totals.fresh_density_kg_m3)},
            {"volume_m3", number_or_null(totals.volume_m3)},
            {"water_kg_m3", totals.water_kg_m3},
            {"binder_kg_m3", totals.binder_kg_m3},
            {"w_cm", totals.w_cm},
            {"paste_percent", number_or_null(totals.paste_percent)},
            {"mortar_percent", number_or_null(totals.mortar_percent)}};
}

} // namespace

std::string json(const MixResult& result) {
    const core::Proportions& proportions = result.proportions;
    Json object = json_heading(result.command, result.title);
    object["method"] = proportions.submitted ? Json(nullptr) : Json("ACI 211.1-91");
    object["selection"] = json_of(proportions.selection);
    object["ingredients"] = json_of(proportions.ingredients);
    object["totals"] = json_of(proportions.totals);
    object["checks"] = json_of(result.checks);
    object["steps"] = json_of(proportions.worksheet.steps);
    object["cautions"] = json_of(proportions.worksheet.cautions);
    return written(object);
}

} // namespace boardmark::report
