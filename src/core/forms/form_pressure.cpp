#include <boardmark/core/form_pressure.hpp>

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

std::vector<FormPressure> form_pressures(const FormCase& pour, const Tables& tables) {
    return {aci_form_pressure(pour, tables), ciria_form_pressure(pour, tables),
            din_form_pressure(pour, tables)};
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
