#pragma once

#include <boardmark/core/wall/wall.hpp>

#include "../../mix/door/fault_list.hpp"

namespace boardmark::core {

// What a wall may measure at all. Only bounds of what is possible; common practice, no source.
constexpr Bounds above_nothing{.low = 0, .high = out_of_all_reach, .low_itself = false};

/// Heights, thicknesses, corners, footing and openings of one run.
void find_run_faults(const WallRun& run, const FaultList& list);

void find_planter_faults(const Planter& planter, const FaultList& list);

void find_bench_faults(const BenchTop& bench, const FaultList& list);

/// Boards, ties, edges, joints and bars.
void find_form_faults(const WallWork& work, const FaultList& list);

/// Factors, levels, pairs and measures of small sample panels.
void find_panel_faults(const PanelWishes& panels, const FaultList& list);

/// Placing, mock-up and sample panels, order and prices.
void find_work_faults(const WallWork& work, const FaultList& list);

} // namespace boardmark::core
