#include <boardmark/core/proportion.hpp>
#include <boardmark/core/wall_plan.hpp>

#include "../checks/trial_checks.hpp"
#include "../high_range_reducer.hpp"
#include "../slump_gain.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

bool is_dosed(const Ingredient& ingredient) {
    return ingredient.by_trial || ingredient.kg_m3 > 0;
}

/// Whether any admixture delays setting. Those of which nobody asked leave it open: a method then
/// takes the highest coefficient. Entraining air, speeding up and colouring delay nothing.
std::optional<bool> retards(const Proportions& proportions) {
    bool open = false;
    for (const Ingredient* ingredient : of_role(proportions, Role::admixture)) {
        const Material& material = *ingredient->material;
        const std::string& standard = material.standard;
        const bool by_type = material.kind == Kind::retarder || standard.ends_with(" G") ||
                             standard.ends_with(" D") || standard.ends_with(" B");
        const bool harmless = material.kind == Kind::air_entraining_admixture ||
                              material.kind == Kind::accelerator || material.kind == Kind::pigment;
        if (!is_dosed(*ingredient) || harmless) {
            continue;
        }
        if (material.admixture.retards.value_or(by_type)) {
            return true;
        }
        open = open || !material.admixture.retards;
    }
    return open ? std::nullopt : std::optional{false};
}

/// "ASTM C150 II" and "CEM I 42.5 R" are among the types that the methods call I, II or III.
bool is_type_one_to_three(const std::string& standard) {
    for (const char* type : {" I", " II", " III", " I/II", " IA", " IIA", " IIIA"}) {
        if (standard.ends_with(type)) {
            return true;
        }
    }
    return standard.find("CEM I ") != std::string::npos;
}

void describe_cement(const Proportions& proportions, FormCase& pour) {
    double slag_kg_m3 = 0;
    double ash_kg_m3 = 0;
    bool known = true;
    bool pure = true;
    const auto add = [&](Kind kind, double kg_m3) {
        slag_kg_m3 += kind == Kind::slag_cement ? kg_m3 : 0;
        ash_kg_m3 += kind == Kind::fly_ash || kind == Kind::natural_pozzolan ? kg_m3 : 0;
    };
    for (const Ingredient* ingredient : of_role(proportions, Role::binder)) {
        const Material& material = *ingredient->material;
        add(material.kind, ingredient->kg_m3);
        for (const Constituent& part : material.binder.contains) {
            add(part.kind, ingredient->kg_m3 * part.percent / 100);
        }
        const bool nameless = material.kind == Kind::portland_cement && material.standard.empty();
        const bool open_blend =
            material.kind == Kind::blended_cement && material.binder.contains.empty();
        known = known && !nameless && !open_blend;
        pure = pure && material.kind == Kind::portland_cement &&
               is_type_one_to_three(material.standard);
    }
    pour.cement = !known ? FormCement::unknown : pure ? FormCement::portland : FormCement::blend;
    if (known) {
        pour.slag_percent = 100 * slag_kg_m3 / proportions.totals.binder_kg_m3;
        pour.fly_ash_percent = 100 * ash_kg_m3 / proportions.totals.binder_kg_m3;
    }
}

/// The slump that the water before the reducer and the dose bring together. Nothing where the data
/// sheet does not say, or where the water alone is proportioned for the slump asked.
std::optional<double> slump_of_the_dose_mm(const Requirements& asked,
                                           const Proportions& proportions, const Tables& tables) {
    const auto reducers = high_range_reducers(proportions);
    if (!asked.slump_before_reducer_mm || reducers.size() != 1) {
        return std::nullopt;
    }
    const SlumpGain gain{*reducers.front()->material, tables};
    const double percent = 100 * reducers.front()->kg_m3 / proportions.totals.binder_kg_m3;
    const auto gained_mm = gain.is_known() ? gain.gain_mm(percent) : std::nullopt;
    return gained_mm ? std::optional{*asked.slump_before_reducer_mm + *gained_mm} : std::nullopt;
}

double highest_slump_mm(const Requirements& asked, const Proportions& proportions,
                        const Tables& tables) {
    const double within_mm = slump_tolerance(asked.slump_mm, tables).within_mm.value;
    const double by_dose_mm = slump_of_the_dose_mm(asked, proportions, tables).value_or(0);
    return std::max(asked.slump_window ? asked.slump_window->high_mm : asked.slump_mm + within_mm,
                    by_dose_mm);
}

/// Without a density of all ingredients, as heavy as normal concrete gets: the safe side.
double density_kg_m3(const Proportions& proportions, const Tables& tables) {
    const Totals& totals = proportions.totals;
    return totals.fresh_density_kg_m3 && totals.volume_m3
               ? *totals.fresh_density_kg_m3 / *totals.volume_m3
               : tables.forms.assumed_density_kg_m3.value;
}

} // namespace

FormCase form_case(const Wall& wall, const Proportions& proportions, double height_m,
                   std::optional<double> rise_m_h, const Tables& tables) {
    const Requirements& asked = requirements_of(wall.mix);
    const WallPlacing& placing = wall.placing;
    FormCase pour{.form_height_m = height_m,
                  .fresh_density_kg_m3 = density_kg_m3(proportions, tables)};
    pour.rise_m_h = rise_m_h;
    pour.temperature_c = placing.concrete_c;
    pour.highest_slump_mm = highest_slump_mm(asked, proportions, tables);
    pour.slump_maximum_stated = asked.slump_window.has_value();
    pour.vibration = {placing.vibrator_depth_m, placing.external_vibration};
    pour.pumped_from_below = placing.pumped_from_below;
    pour.self_consolidating = placing.self_consolidating;
    pour.high_range_reducer = std::ranges::any_of(
        high_range_reducers(proportions), [](const Ingredient* one) { return is_dosed(*one); });
    pour.formula_asked = placing.by_formula;
    pour.redosing_on_site = placing.redosed_on_site;
    pour.retards = retards(proportions);
    describe_cement(proportions, pour);
    if (placing.flow_class) {
        pour.flow_class = "F" + std::to_string(*placing.flow_class);
    }
    pour.set_time_h = placing.end_of_set_h;
    return pour;
}

} // namespace boardmark::core
