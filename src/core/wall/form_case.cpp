#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/mix/designation.hpp>
#include <boardmark/core/wall/concrete_temperatures.hpp>
#include <boardmark/core/wall/wall_plan.hpp>

#include "../checks/trial_checks.hpp"
#include "../method/slump_gain.hpp"
#include "../mix/high_range_reducer.hpp"
#include "flow_of_pour.hpp"

#include <algorithm>
#include <vector>

namespace boardmark::core {
namespace {

/// Whether any admixture delays setting. Those of which nobody asked leave it open: a method then
/// takes the highest coefficient. Entraining air, speeding up and colouring delay nothing unless
/// the file says that they do.
std::optional<bool> retards(const Proportions& proportions) {
    bool open = false;
    for (const Ingredient* ingredient : of_role(proportions, Role::admixture)) {
        const Material& material = *ingredient->material;
        const bool by_type =
            material.kind == Kind::retarder || admixture_type(material.standard).retards;
        const bool harmless = material.kind == Kind::air_entraining_admixture ||
                              material.kind == Kind::accelerator || material.kind == Kind::pigment;
        if (!ingredient->goes_in()) {
            continue;
        }
        if (by_type || material.admixture.retards == true) {
            return true;
        }
        open = open || (!harmless && !material.admixture.retards);
    }
    return open ? std::nullopt : std::optional{false};
}

/// Portland cement whose standard names no type known here, ASTM C1157 among them, which limits no
/// composition: it may be any.
bool is_of_unknown_type(const Material& material) {
    return material.kind == Kind::portland_cement &&
           cement_type(material.standard) == CementType::not_told;
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
        const bool open_blend =
            material.kind == Kind::blended_cement && material.binder.contains.empty();
        known = known && !is_of_unknown_type(material) && !open_blend;
        pure = pure && material.kind == Kind::portland_cement && material.binder.contains.empty() &&
               cement_type(material.standard) == CementType::one_to_three;
    }
    pour.cement = !known ? FormCement::unknown : pure ? FormCement::portland : FormCement::blend;
    if (known) {
        pour.slag_percent = 100 * slag_kg_m3 / proportions.totals.binder_kg_m3;
        pour.fly_ash_percent = 100 * ash_kg_m3 / proportions.totals.binder_kg_m3;
    }
}

/// The slump that the water before the reducer and the dose bring together.
struct DoseSlump {
    std::optional<double> mm = {}; ///< absent: none is asked, or it is not known
    bool is_open = false;          ///< not known: doses without a gain, or more than one of them
};

/// Where the water alone is proportioned for the slump asked no dose brings any; a dose as needed
/// brings what is asked.
DoseSlump slump_of_the_dose(const Requirements& asked, const Proportions& proportions,
                            const Tables& tables) {
    if (!asked.slump_before_reducer_mm) {
        return {};
    }
    std::vector<const Ingredient*> dosed = high_range_reducers(proportions);
    std::erase_if(dosed, [](const Ingredient* one) { return one->by_trial || one->kg_m3 <= 0; });
    if (dosed.empty()) {
        return {};
    }
    const SlumpGain gain{*dosed.front()->material, tables};
    const double percent = 100 * dosed.front()->kg_m3 / proportions.totals.binder_kg_m3;
    const auto gained_mm =
        gain.is_known() && dosed.size() == 1 ? gain.gain_mm(percent) : std::nullopt;
    return gained_mm ? DoseSlump{*asked.slump_before_reducer_mm + *gained_mm}
                     : DoseSlump{.is_open = true};
}

double highest_slump_mm(const Requirements& asked, const DoseSlump& by_dose, const Tables& tables) {
    const double within_mm = slump_tolerance(asked.slump_mm, tables).within_mm.value;
    return std::max(asked.slump_window ? asked.slump_window->high_mm : asked.slump_mm + within_mm,
                    by_dose.mm.value_or(0));
}

/// Without a density of all ingredients, as heavy as normal concrete gets: the safe side.
double density_kg_m3(const Proportions& proportions, const Tables& tables) {
    const Totals& totals = proportions.totals;
    return totals.fresh_density_kg_m3 && totals.volume_m3
               ? *totals.fresh_density_kg_m3 / *totals.volume_m3
               : tables.forms->assumed_density_kg_m3.value;
}

/// The same concrete with the least air that a load may have: the air that it lacks is concrete.
double heaviest_kg_m3(const Proportions& proportions, double density, const Tables& tables) {
    const Selection& selection = proportions.selection;
    if (!selection.air_entrained || !proportions.totals.fresh_density_kg_m3) {
        return density;
    }
    // Where a class states the least air, a load may be as far below the mix as the most is above.
    const AirRules& rules = tables.code->air;
    const double below_percent = rules.states_least()
                                     ? std::max(rules.tolerance_percent, rules.above_percent)
                                     : rules.tolerance_percent;
    const double least_percent = selection.air_at_placing_percent - below_percent;
    return density * (100 - std::max(0.0, least_percent)) / (100 - selection.air_percent);
}

} // namespace

FormCase form_case(const Wall& wall, const Proportions& proportions, double height_m,
                   std::optional<double> rise_m_h, const Tables& tables) {
    const Requirements& asked = requirements_of(wall.mix);
    const WallPlacing& placing = wall.placing;
    FormCase pour{.form_height_m = height_m,
                  .fresh_density_kg_m3 = density_kg_m3(proportions, tables)};
    pour.heaviest_kg_m3 = heaviest_kg_m3(proportions, pour.fresh_density_kg_m3, tables);
    pour.rise_m_h = rise_m_h;
    const ConcreteTemperatures temperatures = concrete_temperatures(wall, proportions);
    if (temperatures.concrete_stated) {
        pour.temperature_c = temperatures.concrete->colder.value_c;
    }
    const DoseSlump by_dose = slump_of_the_dose(asked, proportions, tables);
    pour.slump_of_dose_open = by_dose.is_open;
    if (!by_dose.is_open) {
        pour.highest_slump_mm = highest_slump_mm(asked, by_dose, tables);
    }
    pour.slump_maximum_stated = asked.slump_window.has_value();
    pour.vibration = {placing.vibrator_depth_m, placing.external_vibration};
    pour.pumped_from_below = placing.pumped_from_below;
    pour.self_consolidating = placing.self_consolidating;
    pour.high_range_reducer = std::ranges::any_of(
        high_range_reducers(proportions), [](const Ingredient* one) { return one->goes_in(); });
    pour.formula_asked = placing.by_formula;
    pour.redosing_on_site = placing.redosed_on_site;
    pour.retards = retards(proportions);
    describe_cement(proportions, pour);
    if (const auto stated = stated_flow_class(placing, tables.forms->flow)) {
        pour.flow_class = "F" + std::to_string(governing_flow_class(*stated, pour.highest_slump_mm,
                                                                    tables.forms->flow));
    }
    pour.set_time_h = placing.end_of_set_h;
    return pour;
}

} // namespace boardmark::core
