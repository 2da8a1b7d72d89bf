#pragma once

#include <boardmark/core/many/economy.hpp>
#include <boardmark/core/mix/complete_mix.hpp>
#include <boardmark/core/mix/vocabulary.hpp>
#include <boardmark/core/risk/scatter.hpp>
#include <boardmark/input/gate/diagnostic.hpp>
#include <boardmark/input/reading/loader.hpp>

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace boardmark::input {

/// What the mix is read for; it decides which figures must be there.
enum class Purpose {
    check,
    proportion,
    batch,
    trial, ///< batched already: the moistures may stand in the trial file
};

using core::Vocabulary;

struct ReadOptions {
    Purpose purpose;
    const Vocabulary& vocabulary; ///< outlives the reading
    Loader load;
    std::map<std::string, double> moisture_percent = {}; ///< by material, in place of the file's
    bool needs_cylinders = false; ///< a strength of cubes is refused, whatever the purpose
    bool to_be_selected = false; ///< submitted amounts are refused, whatever the purpose
};

/// A mix, complete and in SI, or the reasons why there is none. Warnings may stand beside a mix.
struct MixReading {
    std::optional<core::AnyCompleteMix> mix;
    Diagnostics diagnostics;
    core::Scatter scatter = {}; ///< of what goes into a batch; sound where there is a mix
    std::vector<core::VariableBound> bounds = {}; ///< of a search; sound where there is a mix
};

/// Reads a mix file. Every error of the file is found in one run; nothing is thrown for a wrong
/// text.
///
/// @param text the bytes of the file, any at all
/// @param file its name, for the diagnostics
MixReading read_mix(std::string text, std::string file, const ReadOptions& options);

} // namespace boardmark::input
