#pragma once

#include <boardmark/core/mix/complete_mix.hpp>

#include "read_mix_file.hpp"

#include <string>

namespace boardmark::commands {

/// The mix of a study: one that holds the reducer whose worth is asked. Throws Failure where it
/// holds submitted amounts or no such reducer.
const core::CompleteMix& mix_with_reducer(const ReadMix& read, const std::string& file);

} // namespace boardmark::commands
