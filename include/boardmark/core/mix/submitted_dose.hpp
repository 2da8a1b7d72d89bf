#pragma once

#include <boardmark/core/mix/mix.hpp>

namespace boardmark::core {

/// A submitted amount against the highest dose of its data sheet.
enum class HeldDose {
    within,
    above,
    not_comparable, ///< one is of volume, one of mass, and no relative density leads across
};

/// Amounts that are converted are held as far as the density of water goes.
///
/// @param binder_kg_m3 all cementitious material, > 0
HeldDose held_to_maximum(const SubmittedAmount& amount, const Dose& maximum, double binder_kg_m3);

} // namespace boardmark::core
