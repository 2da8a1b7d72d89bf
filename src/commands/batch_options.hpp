#pragma once

#include <boardmark/core/batch.hpp>

#include "arguments.hpp"

#include <map>
#include <string>

namespace boardmark::commands {

/// What the options of `batch` ask for.
struct BatchOptions {
    double net_volume_m3;
    double allowance_percent;
    core::BatchOrder order; ///< with the allowance inside its volume
    std::map<std::string, double> moisture_percent;
};

/// Reads the options of `batch`. Throws Failure where one is wrong.
BatchOptions read_batch_options(const Arguments& arguments);

} // namespace boardmark::commands
