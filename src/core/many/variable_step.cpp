#include "variable_step.hpp"

#include "../checks/compare.hpp"

namespace boardmark::core {

double step_of(const Variable& variable, UnitSystem system) {
    constexpr double half_a_fluid_ounce_m3 = 1.478676478125e-5; // of 231/128 in3
    constexpr double hundredweight_kg = 45.359237;
    constexpr double twenty_five_ml_per_100_kg_m3_kg = 2.5e-7;
    switch (variable.figure) {
    case Varied::w_cm:
    case Varied::coarse_volume:
        return 0.01;
    case Varied::water:
    case Varied::binder:
        return amount_precision_kg_m3(system);
    case Varied::air:
        return 0.5;
    case Varied::coarse_adjustment:
    case Varied::fine_share:
    case Varied::share:
        return 1;
    case Varied::dose:
        break;
    }
    return variable.basis == DoseBasis::percent ? 0.05
           : system == UnitSystem::us           ? half_a_fluid_ounce_m3 / hundredweight_kg
                                                : twenty_five_ml_per_100_kg_m3_kg;
}

} // namespace boardmark::core
