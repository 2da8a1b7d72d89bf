#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/weather/heat.hpp>

#include "../checks/cement_words.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// A part of the binder by its kind, as the table of heat names it.
struct HeatPart {
    Kind kind;
    std::string row;
    double kg_m3;
};

/// "fly ash F" where the standard says so; without a class the hotter one.
std::string row_of(Kind kind, const std::string& standard) {
    if (kind != Kind::fly_ash) {
        return std::string{name_of(kind)};
    }
    return is_class_f_ash(standard) ? "fly ash F" : "fly ash C";
}

std::vector<HeatPart> parts_of(const Proportions& proportions) {
    std::vector<HeatPart> parts;
    for (const Ingredient* ingredient : of_role(proportions, Role::binder)) {
        const Material& material = *ingredient->material;
        double clinker_kg_m3 = ingredient->kg_m3;
        for (const Constituent& part : material.binder.contains) {
            const double kg_m3 = ingredient->kg_m3 * part.percent / 100;
            parts.push_back({part.kind, row_of(part.kind, ""), kg_m3});
            clinker_kg_m3 -= kg_m3;
        }
        parts.push_back({material.kind, row_of(material.kind, material.standard), clinker_kg_m3});
    }
    return parts;
}

double slag_factor(double share_percent, const HeatTables& heat) {
    const auto row = std::ranges::find_if(
        heat.slag, [&](const SlagHeat& one) { return share_percent <= one.up_to_percent; });
    return row == heat.slag.end() ? heat.slag.back().factor : row->factor;
}

} // namespace

double temperature_rise_k(const Proportions& proportions, const Tables& tables) {
    const HeatTables& heat = tables.heat;
    const auto parts = parts_of(proportions);
    double slag_kg_m3 = 0;
    for (const HeatPart& part : parts) {
        slag_kg_m3 += part.kind == Kind::slag_cement ? part.kg_m3 : 0;
    }
    const double slag_percent = 100 * slag_kg_m3 / proportions.totals.binder_kg_m3;
    double as_portland_kg_m3 = 0;
    for (const HeatPart& part : parts) {
        const auto row = heat.factor.find(part.row);
        const double factor = part.kind == Kind::slag_cement ? slag_factor(slag_percent, heat)
                              : row == heat.factor.end()     ? heat.factor.at("portland cement")
                                                             : row->second;
        as_portland_kg_m3 += factor * part.kg_m3;
    }
    return heat.rise_k_of_100_kg_m3.value / 100 * as_portland_kg_m3;
}

} // namespace boardmark::core
