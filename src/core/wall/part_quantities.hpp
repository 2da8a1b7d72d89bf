#pragma once

#include <boardmark/core/wall/wall_quantities.hpp>

namespace boardmark::core {

/// Everything of a run but its ties.
PartQuantities run_quantities(const WallRun& run);

/// Everything of all planters of the name but their ties.
PartQuantities planter_quantities(const Planter& planter);

PartQuantities bench_quantities(const BenchTop& bench);

} // namespace boardmark::core
