#include <boardmark/report/batch/batch_report.hpp>
#include <boardmark/report/mix/mix_report.hpp>

#include "csv_cells.hpp"

#include <fmt/format.h>

#include <string_view>
#include <vector>

namespace boardmark::report {
using core::UnitSystem;

std::string csv(const MixResult& result, UnitSystem system) {
    const bool us = system == UnitSystem::us;
    const std::string_view mass = us ? "lb/yd3" : "kg/m3";
    std::string text = csv_row({"name", "role", fmt::format("mass SSD ({})", mass),
                                fmt::format("mass oven-dry ({})", mass), "absolute volume (% of 1)",
                                "dosed by trial", "remark"});
    const std::string told = csv_cell(remark(result.proportions, result.checks));
    for (const core::Ingredient& ingredient : result.proportions.ingredients) {
        const auto percent =
            ingredient.volume_m3 ? std::optional{100 * *ingredient.volume_m3} : std::nullopt;
        text += csv_row(
            {csv_cell(std::string{ingredient.name}), std::string{core::name_of(ingredient.role)},
             csv_cell_in(ingredient.kg_m3, mass), csv_cell_in(ingredient.dry_kg_m3, mass),
             csv_cell(percent), ingredient.by_trial ? "yes" : "no", told});
    }
    return text;
}

std::string csv(const BatchResult& result, UnitSystem system) {
    const bool us = system == UnitSystem::us;
    const std::string_view mass = us ? "lb" : "kg";
    const std::string_view volume = us ? "fl oz" : "L";
    const int charges = result.charging.count;
    std::string text = csv_row({"name", "role", fmt::format("weigh ({})", mass),
                                fmt::format("or measure ({})", volume), "dosed by trial", "remark",
                                "charges", fmt::format("weigh for each charge ({})", mass)});
    const std::string told = csv_cell(remark(result.proportions, result.checks));
    const auto add = [&](const std::string& name, const core::BatchItem& item, double each_kg,
                         std::optional<double> each_litres) {
        const auto m3 = each_litres ? std::optional{charges * *each_litres / 1000} : std::nullopt;
        text += csv_row({csv_cell(name), std::string{core::name_of(item.role)},
                         csv_cell_in(charges * each_kg, mass), csv_cell_in(m3, volume),
                         item.by_trial ? "yes" : "no", told, std::to_string(charges),
                         csv_cell_in(each_kg, mass)});
    };
    for (const core::BatchItem& item : result.each.items) {
        if (item.role == core::Role::water && result.site_water) {
            const core::SiteWater& water = *result.site_water;
            add(item.name, item, water.at_mixer.kg, water.at_mixer.litres);
            add(item.name + " held back", item, water.held_back.kg, water.held_back.litres);
        } else {
            add(item.name, item, item.kg, item.litres);
        }
    }
    return text;
}

} // namespace boardmark::report
