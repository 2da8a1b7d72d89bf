#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/method/method_tables.hpp>
#include <boardmark/core/mix/mix.hpp>
#include <boardmark/core/mix/proportions.hpp>

#include "mixing_water.hpp"
#include "paste.hpp"

namespace boardmark::core {

/// Where methods part: what each does in its own way. All else they share.
struct MethodSteps {
    /// The average strength to reach, recorded. Nothing yet where it depends on the air.
    Outcome<std::optional<double>> (*average_before_air)(const Mix&, const Tables&, Worksheet&);

    /// The same with the air entrained, percent; only of a method that waits for it.
    Outcome<double> (*average_with_air)(const Mix&, double, const Tables&, Worksheet&);

    /// The ratio that the average asks for, where no trials of the user's tell it.
    Outcome<double> (*ratio_by_strength)(const Mix&, const PasteDemand&, const Tables&, Worksheet&);

    /// Mixing water by the method's table, before any reduction.
    Outcome<double> (*water_kg_m3)(const Mix&, const WaterEntry&, const Tables&, Worksheet&);

    /// Coarse and fine aggregate in what the paste and the air leave of 1 m3.
    std::optional<Unresolved> (*add_aggregates)(const Mix&, const Tables&, Proportions&);

    /// Entrapped air by size of stone; nullptr where the method's volumes leave it out.
    const SizeRow* (*entrapped_air)(const MethodTables&);

    bool is_checked_by_mass;  ///< against a first estimate of the fresh density
    bool has_margin_of_cubes; ///< the margin above the strength is its own, and one for cubes
};

const MethodSteps& aci_steps();
const MethodSteps& indian_steps();
const MethodSteps& british_steps();

/// Those of the method whose tables these are.
const MethodSteps& steps_of(const MethodTables& method);

} // namespace boardmark::core
