#pragma once

#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/batch/batch.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/mix/complete_mix.hpp>
#include <boardmark/core/mix/proportions.hpp>

#include <optional>
#include <variant>
#include <vector>

namespace boardmark::core {

struct Tables;

/// One mix of a trial set, carried through to its checks and its batch.
struct SolvedTrial {
    Proportions proportions;
    std::optional<Batch> batch; ///< where one is ordered
    std::vector<Check> checks;  ///< of the batch as weighed where there is one
};

/// One mix of a trial set.
struct TrialMix {
    double w_cm;
    std::variant<SolvedTrial, Unresolved> outcome;

    const SolvedTrial* solved() const { return std::get_if<SolvedTrial>(&outcome); }
};

/// Mixes that differ in w/cm alone, at one slump and one air: their strengths draw the line from
/// which a ratio is selected.
struct TrialSet {
    std::string method;          ///< by which they are found: "ACI 211.1-91"
    std::string procedure;       ///< of that method, "absolute volume"
    std::vector<TrialMix> mixes; ///< as the ratios come
    std::vector<Phrase> advice;  ///< what to do with them
};

/// Why a mix makes no trial set, or nothing where it does: it fixes what the set must vary.
std::optional<Unresolved> fixed_for_a_set(const Selections& selections);

/// The trial set of a mix at some ratios. A ratio that breaks a limit, or a least amount of binder,
/// is carried through all the same: the line needs it, and its checks say so.
///
/// @param mix one for which fixed_for_a_set() finds nothing
/// @param ratios increasing
TrialSet trial_set(const CompleteMix& mix, const std::vector<double>& ratios,
                   const std::optional<BatchOrder>& order, const Tables& tables);

} // namespace boardmark::core
