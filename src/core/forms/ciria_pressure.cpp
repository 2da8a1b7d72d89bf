#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "pressure_rules.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

bool is_column(const ColumnPlan& plan, const CiriaFormPressure& ciria) {
    return below(std::max(plan.long_side_m, plan.short_side_m), ciria.column_side_m);
}

/// The coefficient of the shape, the greater one where a part of a wall is a column.
struct Shape {
    double value;
    std::string what;
    bool is_assumed = false;
};

Shape shape_of(const FormCase& pour, const CiriaFormPressure& ciria) {
    if (pour.column && is_column(*pour.column, ciria)) {
        return {ciria.column, "a column"};
    }
    if (pour.pier && is_column(pour.pier->plan, ciria)) {
        return {ciria.column, "a column, as the pier of this wall is", pour.pier->is_assumed};
    }
    return {ciria.wall, "a wall"};
}

/// The formula; where the rise alone reaches past the form's height, the head of the pour.
double formula_kpa(const FormCase& pour, double shape, double cement_and_temperature) {
    const double weight = weight_kn_m3(pour.fresh_density_kg_m3);
    const double by_rise_m = shape * std::sqrt(*pour.rise_m_h);
    if (by_rise_m > pour.form_height_m) {
        return weight * head_m(pour);
    }
    return weight *
           (by_rise_m + cement_and_temperature * std::sqrt(pour.form_height_m - by_rise_m));
}

void compute_ciria(FormPressure& result, const FormCase& pour, const Tables& tables) {
    const CiriaFormPressure& ciria = tables.forms->ciria;
    const Shape shape = shape_of(pour, ciria);
    const CementFactor cement = cement_factor(pour, ciria.cement, tables);
    const double temperature =
        std::pow(ciria.temperature_numerator / (*pour.temperature_c + ciria.temperature_shift), 2);
    const double kpa = formula_kpa(pour, shape.value, cement.value * temperature);
    take_assumptions(result, assumptions(pour, tables), cement.marks);
    take_pier(result, shape.is_assumed);
    result.steps = {
        form_step("c1", {shape.value, Measure::ratio}, {shape.what, {}}, ciria.source),
        form_step("c2", {cement.value, Measure::ratio}, cement.reason, ciria.cement.source,
                  cement.marks),
        form_step("k", {temperature, Measure::ratio},
                  {"concrete at {temperature}",
                   {quantity("temperature", {*pour.temperature_c, Measure::temperature})}},
                  ciria.source),
        form_step("formula_pressure", {kpa, Measure::pressure},
                  {"a form of {height}, rising {rise}",
                   {quantity("height", {pour.form_height_m, Measure::line_length}),
                    quantity("rise", {*pour.rise_m_h, Measure::rate_of_rise})}},
                  ciria.source)};
    take_formula(
        result, pour,
        {.formula_kpa = kpa, .floor_kpa = 0, .formula_source = ciria.source, .floor_source = {}},
        tables);
}

} // namespace

FormPressure ciria_form_pressure(const FormCase& pour, const Tables& tables) {
    return pressure_by_rise("CIRIA 108", pour, tables, compute_ciria);
}

} // namespace boardmark::core
