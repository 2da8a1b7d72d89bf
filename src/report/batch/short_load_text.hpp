#pragma once

#include <boardmark/core/batch/short_load.hpp>
#include <boardmark/core/mix/mix.hpp>

#include "../writing/flow.hpp"

namespace boardmark::report {

/// What a load below the supplier's smallest one costs beside the concrete, in words.
Flow text_of_short_load(const core::ShortLoad& load, core::UnitSystem system);

} // namespace boardmark::report
