#include "batch_sheet.hpp"

#include <algorithm>

namespace boardmark::report {
namespace {

const core::Ingredient& ingredient_named(const core::Proportions& proportions,
                                         std::string_view name) {
    return *std::ranges::find(proportions.ingredients, name, &core::Ingredient::name);
}

double per_m3(const core::Proportions& proportions, std::string_view name, core::Role role) {
    return role == core::Role::water ? proportions.totals.water_kg_m3
                                     : ingredient_named(proportions, name).kg_m3;
}

/// Volume of what was weighed of a liquid.
std::optional<double> volume_m3(const core::Ingredient& liquid, double kg) {
    if (liquid.kg_m3 <= 0) {
        return 0;
    }
    return liquid.volume_m3 ? std::optional{kg / liquid.kg_m3 * *liquid.volume_m3} : std::nullopt;
}

SheetRow sheet_row_of(const YieldResult& result, const core::Ingredient& found) {
    SheetRow row{.name = std::string{found.name},
                 .role = found.role,
                 .weighed_kg = result.yield.weighed_kg.at(std::string{found.name}),
                 .next_kg = std::nullopt,
                 .weighed_m3 = std::nullopt,
                 .next_m3 = std::nullopt,
                 .found_kg_m3 = per_m3(result.yield.found, found.name, found.role),
                 .next_kg_m3 = std::nullopt};
    const bool liquid =
        found.role == core::Role::admixture && found.material->kind != core::Kind::pigment;
    if (liquid) {
        row.weighed_m3 = volume_m3(found, row.weighed_kg);
    }
    if (!result.next) {
        return row;
    }
    const auto& items = result.next->batch.items;
    const core::BatchItem& item = *std::ranges::find(items, found.name, &core::BatchItem::name);
    row.next_kg = item.kg;
    row.next_kg_m3 = per_m3(result.next->proportions, found.name, found.role);
    if (liquid && item.litres) {
        row.next_m3 = *item.litres / 1000;
    }
    return row;
}

} // namespace

std::vector<SheetRow> batch_sheet(const YieldResult& result) {
    std::vector<SheetRow> rows;
    for (const core::Ingredient& found : result.yield.found.ingredients) {
        if (found.role != core::Role::air) {
            rows.push_back(sheet_row_of(result, found));
        }
    }
    return rows;
}

} // namespace boardmark::report
