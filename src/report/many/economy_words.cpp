#include "economy_words.hpp"

#include "../study/comparison_rows.hpp"
#include "../writing/measured.hpp"
#include "../writing/quantity_format.hpp"

namespace boardmark::report {

using core::Measure;
using core::Objective;
using core::UnitSystem;

std::string name_of(Objective objective) {
    switch (objective) {
    case Objective::cost:
        return "cost";
    case Objective::carbon:
        return "carbon";
    case Objective::binder:
        break;
    }
    return "binder";
}

std::string objective_words(Objective objective, UnitSystem system) {
    switch (objective) {
    case Objective::cost:
        return "cost of the materials";
    case Objective::carbon:
        return "CO2 equivalent of the materials";
    case Objective::binder:
        break;
    }
    return system == UnitSystem::us ? "cementitious materials" : "cementitious material";
}

double objective_amount(Objective objective, double per_m3, UnitSystem system) {
    return objective == Objective::cost ? per_unit(per_m3, system)
                                        : measured({per_m3, Measure::concentration}, system).amount;
}

std::string objective_unit(Objective objective, const std::string& currency, UnitSystem system) {
    const bool us = system == UnitSystem::us;
    return objective == Objective::cost ? currency + (us ? "/yd3" : "/m3")
                                        : measured({0, Measure::concentration}, system).unit;
}

std::string objective_text(Objective objective, double per_m3, const std::string& currency,
                           UnitSystem system) {
    constexpr int cents = 2;
    const int decimals = objective == Objective::cost ? cents : 1;
    return fixed(objective_amount(objective, per_m3, system), decimals) + " " +
           objective_unit(objective, currency, system);
}

} // namespace boardmark::report
