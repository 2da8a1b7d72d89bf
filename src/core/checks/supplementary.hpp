#pragma once

#include <boardmark/core/code/code_tables.hpp>
#include <boardmark/core/mix/proportions.hpp>

namespace boardmark::core {

/// Percent of all cementitious material by mass, what is inside blended cements counted.
struct Supplementary {
    double ash = 0; ///< fly ash and natural pozzolans
    double slag = 0;
    double fume = 0;

    double total() const { return ash + slag + fume; }

    /// What a cap on an addition counts.
    double of(Addition addition) const;
};

Supplementary supplementary_of(const Proportions& proportions);

/// What a cement states to contain beside portland cement, percent of it.
double contained_percent(const Material& cement);

/// Portland cement in the binder, percent of all of it: without what cements contain besides.
double cement_percent(const Proportions& proportions);

/// Ground limestone beside the cement in 1 m3: ACI 318 does not list it as cementitious (from
/// memory), so that no limit may hold only because it is counted.
double ground_limestone_kg_m3(const Proportions& proportions);

/// Whether a binder is silica fume or states that it contains some.
bool holds_silica_fume(const Proportions& proportions);

/// A blended cement whose make-up the file does not state, or nullptr.
const Material* unknown_blend(const Proportions& proportions);

} // namespace boardmark::core
