#pragma once

#include <boardmark/core/wall_quantities.hpp>

namespace boardmark::core {

/// Everything of a run but its ties.
PartQuantities run_quantities(const WallRun& run);

/// Everything of all planters of the name but their ties.
PartQuantities planter_quantities(const Planter& planter);

PartQuantities bench_quantities(const BenchTop& bench);

/// Rows and columns of ties in a run.
TieCount run_ties(const WallRun& run, const Ties& ties);

/// Of all planters of the name, each of whose walls is a grid along its middle line.
TieCount planter_ties(const Planter& planter, const Ties& ties);

} // namespace boardmark::core
