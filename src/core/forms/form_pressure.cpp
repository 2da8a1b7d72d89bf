
#include "../basis/tolerance.hpp"
#include "pressure_rules.hpp"

#include <algorithm>

namespace boardmark::core {

std::string_view name_of(PressureGovernor governor) {
    switch (governor) {
    case PressureGovernor::formula:
        return "formula";
    case PressureGovernor::floor:
        return "floor";
    case PressureGovernor::liquid_head:
        return "liquid_head";
    case PressureGovernor::head:
        return "head";
    }
    return "";
}

std::span<const PressureMethod> pressure_methods() {
    static constexpr PressureMethod methods[] = {aci_form_pressure, ciria_form_pressure,
                                                 din_form_pressure};
    return methods;
}

std::vector<FormPressure> form_pressures(const FormCase& pour, const Tables& tables) {
    std::vector<FormPressure> pressures;
    for (const PressureMethod method : pressure_methods()) {
        pressures.push_back(method(pour, tables));
    }
    return pressures;
}

void take_assumptions(FormPressure& result, std::vector<Phrase> assumed,
                      const Marks& cement_marks) {
    result.assumed = std::move(assumed);
    if (std::ranges::count(cement_marks, Mark::estimate) > 0) {
        result.assumed.push_back({"the cementitious material, or whether an admixture delays "
                                  "setting, is not stated: the highest coefficient is taken",
                                  {}});
    }
    result.remarks = result.assumed;
}

void take_pier(FormPressure& result, bool is_assumed) {
    if (is_assumed) {
        result.assumed.push_back({"the places of its bends or openings are not stated: a part "
                                  "between them counts as a column, for it may be one",
                                  {}});
        result.remarks.push_back(result.assumed.back());
    }
}

bool is_pumped(const FormPressure& pressure) {
    return above(pressure.kpa, pressure.head_kpa);
}

const char* pump_is_open() {
    return "; that is the least for concrete pumped from below: the pressure of the pump is not "
           "stated, and it may be more";
}

double pressure_at(const FormPressure& pressure, double depth_m) {
    if (depth_m <= 0) {
        return 0;
    }
    return depth_m >= pressure.hydrostatic_depth_m
               ? pressure.kpa
               : pressure.kpa * depth_m / pressure.hydrostatic_depth_m;
}

const Phrase& form_caution() {
    static const Phrase caution{
        "Pressure and tie results are for planning; a qualified person designs the formwork.", {}};
    return caution;
}

} // namespace boardmark::core
