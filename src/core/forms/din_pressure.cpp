#include <boardmark/core/basis/tables.hpp>

#include "../basis/interpolation.hpp"
#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "pressure_rules.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

const DinClass* class_of(const FormCase& pour, const DinFormPressure& din) {
    const std::string name =
        pour.self_consolidating ? std::string{"SCC"} : pour.flow_class.value_or("");
    const auto found = std::ranges::find(din.classes, name, &DinClass::name);
    return found == din.classes.end() ? nullptr : &*found;
}

/// K1; a setting that ends before the first printed time counts as that one.
std::optional<TableValue> set_factor(const DinClass& consistency, double set_time_h,
                                     const DinFormPressure& din) {
    const auto position = locate(din.set_times_h, std::max(set_time_h, din.set_times_h.front()));
    if (!position) {
        return std::nullopt;
    }
    return TableValue{interpolate(consistency.set_factors, *position), position->between()};
}

std::vector<Phrase> missing(const FormCase& pour, const DinFormPressure& din) {
    std::vector<Phrase> phrases;
    if (!class_of(pour, din)) {
        phrases.push_back({"the consistency class (F1 to F6) is not stated", {}});
    }
    if (!pour.set_time_h) {
        phrases.push_back({"the end of setting at the temperature in the form is not stated", {}});
    }
    return phrases;
}

/// Of fluid classes it is not settled whether K1 multiplies the base as well.
Phrase two_readings(double kept_kpa, double lower_kpa) {
    return {"sources disagree whether slower setting raises the whole formula of fluid concrete or "
            "only its part for the rise, {kept} or {lower}: the higher is used",
            {quantity("kept", {kept_kpa, Measure::pressure}),
             quantity("lower", {lower_kpa, Measure::pressure})}};
}

void compute_din(FormPressure& result, const FormCase& pour, const DinClass& consistency,
                 const TableValue& set, const Tables& tables) {
    const DinFormPressure& din = tables.forms->din;
    // Lighter concrete than the print's is given no reduction.
    const double weight =
        std::max(1.0, weight_kn_m3(pour.fresh_density_kg_m3) / din.weight_kn_m3.value);
    const double kpa =
        set.value * weight * (consistency.base_kpa + consistency.slope_kpa_h_m * *pour.rise_m_h);
    take_assumptions(result, assumptions(pour, tables));
    if (consistency.fluid && above(set.value, 1)) {
        const double lower_kpa = weight * (consistency.base_kpa +
                                           set.value * consistency.slope_kpa_h_m * *pour.rise_m_h);
        result.remarks.push_back(two_readings(kpa, lower_kpa));
    }
    result.steps = {
        form_step("k1", {set.value, Measure::ratio},
                  {"class {class}, setting ends after {hours} h at the temperature in the form",
                   {word("class", consistency.name),
                    quantity("hours", {*pour.set_time_h, Measure::ratio})}},
                  din.set_source, set.marks()),
        form_step("weight_factor", {weight, Measure::ratio},
                  {"concrete of {density}",
                   {quantity("density", {pour.fresh_density_kg_m3, Measure::fresh_density})}},
                  din.weight_kn_m3.source),
        form_step("formula_pressure", {kpa, Measure::pressure},
                  {"class {class}, rising {rise}",
                   {word("class", consistency.name),
                    quantity("rise", {*pour.rise_m_h, Measure::rate_of_rise})}},
                  din.source)};
    take_formula(result, pour,
                 {.formula_kpa = kpa,
                  .floor_kpa = consistency.least_kpa,
                  .formula_source = din.source,
                  .floor_source = din.source},
                 tables);
}

} // namespace

FormPressure din_form_pressure(const FormCase& pour, const Tables& tables) {
    const DinFormPressure& din = tables.forms->din;
    FormPressure result{.method = "DIN 18218"};
    const DinClass* consistency = class_of(pour, din);
    result.why = missing(pour, din);
    result.data_suffice = result.why.empty() && pour.rise_m_h && pour.temperature_c;
    for (Phrase& reason :
         full_head_reasons(pour, tables, {.fluid_concrete = consistency && consistency->fluid})) {
        result.why.push_back(std::move(reason));
    }
    const bool sets = pour.set_time_h && is_some(*pour.set_time_h); // else full head, told above
    const auto set =
        consistency && sets ? set_factor(*consistency, *pour.set_time_h, din) : std::nullopt;
    if (consistency && sets && !set) {
        result.why.push_back({"setting ends later than {limit} h, beyond the method",
                              {quantity("limit", {din.set_times_h.back(), Measure::ratio})}});
    }
    if (result.why.empty()) {
        compute_din(result, pour, *consistency, *set, tables);
    } else {
        take_full_head(result, pour, tables);
    }
    return result;
}

} // namespace boardmark::core
