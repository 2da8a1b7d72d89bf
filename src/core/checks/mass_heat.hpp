#pragma once

#include <boardmark/core/checks/check.hpp>

#include <optional>

namespace boardmark::core {

/// The thickest section that a mix is placed into, as far as it is known.
struct HeatedSection {
    std::optional<double> thickness_mm = {}; ///< its least dimension
    std::optional<double> placed_c = {};     ///< the concrete as placed, the warmest that is known
    const char* keys_of_placed;              ///< that would tell it: "'placing.…'"
};

/// Whether a section is so thick that its middle keeps the heat of its cement.
bool is_mass_concrete(std::optional<double> thickness_mm, const Tables& tables);

/// Gives a `binder.heat` its requirement, source and sentence. Of mass concrete with the estimated
/// peak in its middle against the highest that is permitted, or the keys without which it is not
/// known.
void tell_heat(const HeatedSection& section, const Proportions& proportions, const Tables& tables,
               Check& told);

} // namespace boardmark::core
