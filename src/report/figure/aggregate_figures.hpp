#pragma once

#include <boardmark/report/mix/mix_report.hpp>

#include "../writing/flow.hpp"

namespace boardmark::report {

/// What all aggregates together hold back on each sieve between what is advised, and where they
/// stand by coarseness and workability. Nothing where not all of them state their sieves.
Flow aggregate_figures(const MixResult& result, core::UnitSystem system);

} // namespace boardmark::report
