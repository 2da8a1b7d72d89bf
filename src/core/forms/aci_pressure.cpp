#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "pressure_rules.hpp"

#include <algorithm>
#include <utility>

namespace boardmark::core {
namespace {

bool is_column(const ColumnPlan& plan, const AciFormPressure& aci) {
    return !above(std::max(plan.long_side_m, plan.short_side_m), aci.column_side_m);
}

double weight_coefficient(double density_kg_m3, const AciFormPressure& aci) {
    const double relative = density_kg_m3 / aci.reference_density_kg_m3;
    if (below(density_kg_m3, aci.light_below_kg_m3)) {
        return std::max(aci.light_least, aci.light_factor * (1 + relative));
    }
    return above(density_kg_m3, aci.heavy_above_kg_m3) ? relative : 1;
}

/// Which of the two formulas, its value without coefficients, and what it is for.
struct Bare {
    double kpa;
    Source source;
    std::string what;
    bool is_assumed = false; ///< it is a column's, for a pier that may stand there
};

double degrees_k(const FormCase& pour, const AciFormPressure& aci) {
    return *pour.temperature_c + aci.temperature_shift_k;
}

Bare column_pressure(const FormCase& pour, const AciFormPressure& aci, std::string what) {
    return {aci.base_kpa + aci.slope_kpa_k_h_m * *pour.rise_m_h / degrees_k(pour, aci),
            aci.first_source, std::move(what)};
}

Bare wall_pressure(const FormCase& pour, const AciFormPressure& aci) {
    if (below(*pour.rise_m_h, aci.slow_rise_m_h) && !above(head_m(pour), aci.low_wall_m)) {
        return column_pressure(pour, aci, "formula of low walls placed slowly");
    }
    return {aci.base_kpa + (aci.tall_constant_kpa_k + aci.tall_slope_kpa_k_h_m * *pour.rise_m_h) /
                               degrees_k(pour, aci),
            aci.tall_source, "formula of tall walls and of fast placing"};
}

Bare bare_pressure(const FormCase& pour, const AciFormPressure& aci) {
    if (pour.column && is_column(*pour.column, aci)) {
        return column_pressure(pour, aci, "formula of columns");
    }
    Bare wall = wall_pressure(pour, aci);
    if (pour.pier && is_column(pour.pier->plan, aci)) {
        Bare pier = column_pressure(pour, aci, "formula of columns for the pier of this wall");
        pier.is_assumed = pour.pier->is_assumed;
        return above(pier.kpa, wall.kpa) ? pier : wall;
    }
    return wall;
}

void compute_aci(FormPressure& result, const FormCase& pour, const Tables& tables) {
    const AciFormPressure& aci = tables.forms->aci;
    const double weight = weight_coefficient(pour.fresh_density_kg_m3, aci);
    const CementFactor cement = cement_factor(pour, aci.cement, tables);
    const Bare bare = bare_pressure(pour, aci);
    const double formula_kpa = weight * cement.value * bare.kpa;
    take_assumptions(result, assumptions(pour, tables), cement.marks);
    take_pier(result, bare.is_assumed);
    result.steps = {
        form_step("unit_weight_coefficient", {weight, Measure::ratio},
                  {"concrete of {density}",
                   {quantity("density", {pour.fresh_density_kg_m3, Measure::fresh_density})}},
                  aci.weight_source),
        form_step("chemistry_coefficient", {cement.value, Measure::ratio}, cement.reason,
                  aci.cement.source, cement.marks),
        form_step("formula_pressure", {formula_kpa, Measure::pressure},
                  {bare.what + ", rising {rise} at {temperature}",
                   {quantity("rise", {*pour.rise_m_h, Measure::rate_of_rise}),
                    quantity("temperature", {*pour.temperature_c, Measure::temperature})}},
                  bare.source)};
    take_formula(result, pour,
                 {.formula_kpa = formula_kpa,
                  .floor_kpa = aci.floor_kpa.value * weight,
                  .formula_source = bare.source,
                  .floor_source = aci.floor_kpa.source},
                 tables);
}

} // namespace

FormPressure aci_form_pressure(const FormCase& pour, const Tables& tables) {
    return pressure_by_rise("ACI 347R-14", pour, tables, compute_aci);
}

} // namespace boardmark::core
