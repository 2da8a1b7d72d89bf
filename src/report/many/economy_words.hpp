#pragma once

#include <boardmark/core/many/economy.hpp>

#include <optional>
#include <string>

namespace boardmark::report {

/// "cost", "carbon", "binder": the word of the option.
std::string name_of(core::Objective objective);

/// A value of the objective per m3 as it is told: "142.10 USD/yd3", "548 lb/yd3".
std::string objective_text(core::Objective objective, double per_m3, const std::string& currency,
                           core::UnitSystem system);

/// The words of an objective: "cost of the materials".
std::string objective_words(core::Objective objective, core::UnitSystem system);

/// An amount in the unit of a spreadsheet or a figure, and the unit.
double objective_amount(core::Objective objective, double per_m3, core::UnitSystem system);
std::string objective_unit(core::Objective objective, const std::string& currency,
                           core::UnitSystem system);

} // namespace boardmark::report
