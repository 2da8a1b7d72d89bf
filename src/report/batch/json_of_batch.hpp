#pragma once

#include <boardmark/core/batch/batch.hpp>

#include "../writing/json_values.hpp"

namespace boardmark::report {

/// What belongs to every batch: volume, items, free water, w/cm, mass, yield.
Json json_of(const core::Batch& batch);

} // namespace boardmark::report
