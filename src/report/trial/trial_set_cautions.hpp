#pragma once

#include <boardmark/report/trial/trial_set_report.hpp>

#include <string>
#include <vector>

namespace boardmark::report {

/// "w/cm 0.36"
std::string label_of(const core::TrialMix& mix);

/// A caution and the mixes of a set that it is for.
struct SetCaution {
    std::string phrase; ///< before its numbers are filled in
    std::string text;   ///< with those of the first mix
    std::vector<std::string> labels = {};
    std::vector<std::string> likewise = {}; ///< mixes for which the numbers differ
    bool of_all = false;                    ///< and alike for all
};

/// "w/cm 0.36 (likewise w/cm 0.40): ", or nothing where it is of all.
std::string whose(const SetCaution& caution);

/// The cautions of all mixes, each once, in the order they come.
std::vector<SetCaution> cautions_of(const core::TrialSet& set, core::UnitSystem system);

/// The mixes that are solved and break a requirement.
std::vector<const core::TrialMix*> failing(const core::TrialSet& set);

/// Any batch of the set: its order at the mixer is that of all, which differ in w/cm only.
/// nullptr where none was batched.
const core::Batch* first_batch(const core::TrialSet& set);

} // namespace boardmark::report
