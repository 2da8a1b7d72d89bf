#include <boardmark/report/batch_report.hpp>

#include "json_parts.hpp"

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
    return row;
}

} // namespace

std::string json(const BatchResult& result) {
    Json object = json_heading("batch", result.title);
    object["volume_m3"] = result.batch.volume_m3;
    object["ingredients"] = Json::array();
    for (const core::BatchItem& item : result.batch.items) {
        object["ingredients"].push_back(json_of(item));
    }
    object["free_water_kg"] = result.batch.free_water_kg;
    object["w_cm"] = result.batch.w_cm;
    object["mass_kg"] = result.batch.mass_kg;
    object["checks"] = json_of(result.checks);
    object["steps"] = json_of(result.proportions.worksheet.steps);
    object["cautions"] = json_of(result.batch.cautions);
    for (Json& caution : json_of(result.proportions.worksheet.cautions)) {
        object["cautions"].push_back(std::move(caution));
    }
    return written(object);
}

} // namespace boardmark::report
