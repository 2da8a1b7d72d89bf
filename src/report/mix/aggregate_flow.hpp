#pragma once

#include <boardmark/report/mix/mix_report.hpp>

#include "../writing/flow.hpp"
#include "../writing/json_values.hpp"

namespace boardmark::report {

/// All aggregates together: their parts, factors, and what passes and stays on each sieve. Nothing
/// where not all of them state their sieves.
Flow aggregate_flow(const MixResult& result, core::UnitSystem system);

/// The same as an object.
Json json_of_aggregate(const MixResult& result);

} // namespace boardmark::report
