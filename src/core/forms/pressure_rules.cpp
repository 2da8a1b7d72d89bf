#include "pressure_rules.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"

#include <algorithm>
#include <limits>

namespace boardmark::core {
namespace {

/// A liquid down to where the greatest pressure is reached, that pressure from there on.
void draw_envelope(FormPressure& result, const FormCase& pour) {
    const double depth_m = head_m(pour);
    const double gradient_kpa_m =
        std::max(result.kpa, result.head_kpa) / depth_m; // pumping presses harder than the head
    result.hydrostatic_depth_m = std::min(depth_m, result.kpa / gradient_kpa_m);
    result.envelope = {{0, 0}, {result.hydrostatic_depth_m, result.kpa}};
    if (below(result.hydrostatic_depth_m, depth_m)) {
        result.envelope.push_back({depth_m, result.kpa});
    }
}

void gather_marks(FormPressure& result) {
    for (const Step& step : result.steps) {
        for (const Mark mark : step.marks) {
            if (std::ranges::count(result.marks, mark) == 0) {
                result.marks.push_back(mark);
            }
        }
    }
}

void finish(FormPressure& result, const FormCase& pour, const Tables& tables) {
    for (Phrase& remark : low_form_remark(pour, tables)) {
        result.remarks.push_back(std::move(remark));
    }
    draw_envelope(result, pour);
    gather_marks(result);
}

Step head_step(const FormPressure& result, const FormCase& pour) {
    return form_step("liquid_head", {result.head_kpa, Measure::pressure},
                     {"{depth} of concrete at {density}, as a liquid",
                      {quantity("depth", {head_m(pour), Measure::line_length}),
                       quantity("density", {pour.fresh_density_kg_m3, Measure::fresh_density})}},
                     {});
}

} // namespace

FormPressure pressure_by_rise(std::string method, const FormCase& pour, const Tables& tables,
                              RiseFormula formula) {
    FormPressure result{.method = std::move(method)};
    result.data_suffice = pour.rise_m_h && pour.temperature_c && pour.highest_slump_mm;
    result.why = full_head_reasons(pour, tables);
    if (result.why.empty()) {
        formula(result, pour, tables);
    } else {
        take_full_head(result, pour, tables);
    }
    return result;
}

Step form_step(std::string name, Quantity value, Phrase reason, const Source& source, Marks marks) {
    return {.quantity = std::move(name),
            .value = value.value,
            .measure = value.measure,
            .provenance = source.citation.empty() ? Provenance::computed : Provenance::table,
            .reason = std::move(reason),
            .source = source,
            .marks = with_confidence(std::move(marks), source)};
}

double head_m(const FormCase& pour) {
    return std::min(pour.pour_height_m.value_or(pour.form_height_m), pour.form_height_m);
}

double head_kpa(const FormCase& pour) {
    if (!is_some(pour.form_height_m) || !is_some(head_m(pour)) ||
        !is_some(pour.fresh_density_kg_m3)) {
        return std::numeric_limits<double>::quiet_NaN(); // which no check lets pass
    }
    return weight_kn_m3(pour.fresh_density_kg_m3) * head_m(pour);
}

void take_formula(FormPressure& result, const FormCase& pour, const FormulaPressure& formula,
                  const Tables& tables) {
    result.valid = true;
    result.head_kpa = head_kpa(pour);
    result.formula_kpa = formula.formula_kpa;
    const double asked_kpa = std::max(formula.formula_kpa, formula.floor_kpa);
    // A formula may end at the head itself, as CIRIA 108 does where C1 sqrt(R) exceeds the height.
    const bool shallow = !below(asked_kpa, result.head_kpa);
    const bool low = above(formula.floor_kpa, formula.formula_kpa);
    result.kpa = std::min(asked_kpa, result.head_kpa);
    result.governed_by = shallow ? PressureGovernor::head
                         : low   ? PressureGovernor::floor
                                 : PressureGovernor::formula;
    result.source = shallow ? Source{} : low ? formula.floor_source : formula.formula_source;
    if (formula.floor_kpa > 0) {
        result.steps.push_back(form_step("floor", {formula.floor_kpa, Measure::pressure},
                                         {"least pressure that the method allows", {}},
                                         formula.floor_source));
    }
    result.steps.push_back(head_step(result, pour));
    finish(result, pour, tables);
}

void take_full_head(FormPressure& result, const FormCase& pour, const Tables& tables) {
    result.governed_by = PressureGovernor::liquid_head;
    result.head_kpa = head_kpa(pour);
    result.kpa = result.head_kpa;
    result.steps = {head_step(result, pour)};
    if (pour.pumped_from_below) {
        const FormFigure& factor = tables.forms->pumped_factor;
        result.kpa *= factor.value;
        result.source = factor.source;
        result.steps.push_back(form_step("pumped_factor", {factor.value, Measure::ratio},
                                         {"the least on the liquid head of concrete pumped from "
                                          "below, for the pressure of the pump",
                                          {}},
                                         factor.source));
    }
    finish(result, pour, tables);
}

} // namespace boardmark::core
