#include "batch_sheet.hpp"

#include <algorithm>

namespace boardmark::report {
namespace {

const core::Ingredient& ingredient_named(const core::Proportions& proportions,
                                         const std::string& name) {
    return *std::ranges::find(proportions.ingredients, name, &core::Ingredient::name);
}

double per_m3(const core::Proportions& proportions, const core::BatchItem& item) {
    return item.role == core::Role::water ? proportions.totals.water_kg_m3
                                          : ingredient_named(proportions, item.name).kg_m3;
}

/// Volume of a liquid of a known mass, by the volume and the mass of the same liquid elsewhere.
std::optional<double> volume_m3(const core::Ingredient& liquid, double kg) {
    if (!liquid.relative_density || !liquid.volume_m3 || liquid.kg_m3 <= 0) {
        return std::nullopt;
    }
    return kg / liquid.kg_m3 * *liquid.volume_m3;
}

} // namespace

std::vector<SheetRow> batch_sheet(const YieldResult& result) {
    std::vector<SheetRow> rows;
    const core::Proportions& found = result.yield.found;
    for (const core::BatchItem& item : result.next->batch.items) {
        SheetRow row{.name = item.name,
                     .role = item.role,
                     .weighed_kg = result.yield.weighed_kg.at(item.name),
                     .next_kg = item.kg,
                     .weighed_m3 = std::nullopt,
                     .next_m3 = std::nullopt,
                     .found_kg_m3 = per_m3(found, item),
                     .next_kg_m3 = per_m3(result.next->proportions, item)};
        if (item.role == core::Role::admixture && item.litres) {
            row.next_m3 = *item.litres / 1000;
            row.weighed_m3 = volume_m3(ingredient_named(found, item.name), row.weighed_kg);
        }
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace boardmark::report
