#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/batch/batch.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/trial/yield.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// What brings the next trial to its slump.
enum class Lever { water, dose };

/// A reducer's dose in the trial and in the next one, per 100 kg of cementitious material: of what
/// the trial held, or, where that was out of the tolerance of batching, of what the mix asks for.
struct DoseChange {
    std::string reducer;
    double found_ml_100kg;
    double next_ml_100kg;
};

/// The adjusted mix for the next trial.
struct NextTrial {
    Lever lever;
    Proportions proportions;
    std::vector<Step> adjustments;  ///< what was corrected, and why
    std::optional<DoseChange> dose; ///< where the dose is the lever
    Batch batch;                    ///< of the intended volume, at the moistures of this trial
    std::vector<Check> checks;
    std::vector<Phrase> advice; ///< what to do at the mixer, in words
};

/// Corrects a trial for its slump and air: water as it was found and corrected, cementitious
/// material at the w/cm of the mix, coarse aggregate as the trial asks, sand in what is left at the
/// target air. Where the trial held a high-range reducer its dose is corrected and the water stays.
///
/// Unresolved where no mix follows: the volumes do not close, or the aggregates carry more
/// water than there is room for
Outcome<NextTrial> next_trial(const CompleteTrial& trial, const Yield& yield,
                              const Proportions& designed, const Tables& tables);

} // namespace boardmark::core
