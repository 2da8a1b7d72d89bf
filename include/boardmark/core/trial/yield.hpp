#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/mix/proportions.hpp>
#include <boardmark/core/trial/complete_trial.hpp>

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

struct Tables;

/// What a trial batch really was.
struct Yield {
    std::map<std::string, double> weighed_kg; ///< by material, and "water": what was weighed
    double batch_mass_kg;
    double density_kg_m3;
    double volume_m3;
    double intended_volume_m3;
    double relative_yield;                        ///< volume over intended volume
    double volume_uncertainty_m3;                 ///< ± at 95 %, from the last digits written down
    std::optional<double> air_free_density_kg_m3; ///< absent where a relative density is missing
    std::optional<double> gravimetric_air_percent;
    std::optional<double> measured_air_percent;
    double air_percent; ///< measured, else gravimetric
    TimedSlump slump;   ///< nearest to the time of placing
    TrialTarget target;
    Proportions found; ///< of 1 m3 of concrete as it really yielded
    Worksheet worksheet;
};

/// Finds density, yield and the amounts per volume of a trial batch (ASTM C138).
///
/// @param designed the mix of the trial as its file has it
/// Unresolved where air was neither measured nor follows from the relative densities
Outcome<Yield> yield_of(const CompleteTrial& trial, const Proportions& designed,
                        const Tables& tables);

/// Holds the concrete as it was found against the requirements, and the trial against its targets
/// and the tolerances of batching and delivery.
std::vector<Check> assess(const CompleteTrial& trial, const Yield& yield,
                          const Proportions& designed, const Tables& tables);

} // namespace boardmark::core
