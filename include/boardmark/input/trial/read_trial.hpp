#pragma once

#include <boardmark/core/trial/complete_trial.hpp>
#include <boardmark/input/gate/diagnostic.hpp>
#include <boardmark/input/mix/read_mix.hpp>
#include <boardmark/input/reading/loader.hpp>

#include <functional>
#include <optional>
#include <string>

namespace boardmark::input {

struct TrialOptions {
    const Vocabulary& vocabulary;  ///< outlives the reading
    Loader load;                   ///< gets the mix file, and what that names
    std::optional<int> today = {}; ///< days since 1970-01-01; no trial is of a later day
};

/// A trial that was read, and the words about it that no calculation needs.
struct TrialRecord {
    core::CompleteTrial trial;
    std::string mix_file;         ///< as the trial file names it
    std::string name;             ///< may be empty
    std::optional<int> date = {}; ///< days since 1970-01-01
};

/// A trial, complete and in SI, or the reasons why there is none. Warnings may stand beside it.
struct TrialReading {
    std::optional<TrialRecord> record;
    Diagnostics diagnostics;
};

/// Reads a trial file and the mix file that it names. Every error of both is found in one run;
/// nothing is thrown for a wrong text.
TrialReading read_trial(std::string text, std::string file, const TrialOptions& options);

} // namespace boardmark::input
