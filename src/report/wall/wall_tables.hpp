#pragma once

#include <boardmark/report/wall/wall_report.hpp>

#include "../writing/long_table.hpp"

namespace boardmark::report {

// The sections of what `wall` found, as rows of one long table.

void add_shapes(LongTable& table, const core::Wall& wall);
void add_quantities(LongTable& table, const core::WallQuantities& quantities);
void add_boards(LongTable& table, const WallResult& result);

/// Pressures by each method and loads of the rows of ties; the caution in every row.
void add_forces(LongTable& table, const core::WallPlan& plan);

void add_placing(LongTable& table, const core::WallPlan& plan);
void add_joints_and_steel(LongTable& table, const core::WallPlan& plan);
void add_added_cost(LongTable& table, const core::AddedCost& added);

} // namespace boardmark::report
