#include <boardmark/report/batch_report.hpp>

#include "json_parts.hpp"

namespace boardmark::report {

std::string json(const BatchResult& result) {
    Json object = json_heading("batch", result.title);
    object["volume_m3"] = result.batch.volume_m3;
    object["ingredients"] = json_of(result.batch.items);
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
