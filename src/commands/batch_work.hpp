#pragma once

#include <boardmark/core/batch/batch.hpp>
#include <boardmark/core/batch/charges.hpp>
#include <boardmark/core/batch/site_water.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/report/batch/batch_report.hpp>

#include "batch_options.hpp"
#include "worked_mix.hpp"

#include <optional>
#include <vector>

namespace boardmark::commands {

/// All that `batch` computes.
struct BatchWork {
    core::Charging charging = {};
    core::Batch each = {};                ///< one charge
    core::Batch whole = {};               ///< all charges together
    std::vector<core::Check> checks = {}; ///< of the weights
    std::optional<report::SackResult> sacks = {};
    std::optional<core::SiteWater> site_water = {};
    std::vector<core::Phrase> improbable = {}; ///< of the options; also among the cautions
};

/// Works out what the options ask of a mix; unresolved where no batch follows. Throws Failure where
/// an option does not fit the mix.
core::Outcome<BatchWork> work(const WorkedMix& mix, const BatchOptions& asked);

} // namespace boardmark::commands
