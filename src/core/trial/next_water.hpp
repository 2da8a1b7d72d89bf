#pragma once

#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/trial/yield.hpp>

namespace boardmark::core {

struct Tables;

/// Water of the next trial where water is the lever: found, corrected for slump and air.
Step water_by_slump_and_air(const Yield& yield, const Tables& tables);

/// Water of the next trial under a high-range reducer: it stays, or goes back to the mix file's
/// where the trial held another amount; it corrects only the slump before the reducer.
Step water_under_reducer(const Trial& trial, const Yield& yield, const Proportions& designed,
                         const Tables& tables);

/// The mix file's water, where the reducer was left out of the trial.
Step water_of_design(const Proportions& designed);

/// A step that an adjustment computes.
Step adjusted(std::string name, Quantity value, Phrase reason, const Source& source = {});

} // namespace boardmark::core
