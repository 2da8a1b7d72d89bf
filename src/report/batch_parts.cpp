#include "batch_parts.hpp"

namespace boardmark::report {
namespace {

Json json_of_item(const core::BatchItem& item) {
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
        rows.push_back(json_of_item(item));
    }
    return rows;
}

} // namespace

Json json_of(const core::Batch& batch) {
    return {{"volume_m3", batch.volume_m3},
            {"ingredients", json_of(batch.items)},
            {"free_water_kg", batch.free_water_kg},
            {"w_cm", batch.w_cm},
            {"mass_kg", batch.mass_kg},
            {"yield_m3", number_or_null(batch.yield_m3)},
            {"relative_yield", number_or_null(batch.relative_yield())}};
}

} // namespace boardmark::report
