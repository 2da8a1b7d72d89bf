#pragma once

#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/wall/joint_tables.hpp>
#include <boardmark/core/wall/wall.hpp>

#include <optional>
#include <vector>

namespace boardmark::core {

/// A reinforced wall whose steel is held against the code. Thickness at its thinnest for the
/// vibrator and the cover, at its thickest for the least steel: call for each thickness.
struct ReinforcedWall {
    double thickness_mm;
    Reinforcement bars;      ///< cover to the nominal face
    bool exposed = true;     ///< a face shows: tighter practice is advised
    bool high_shear = false; ///< in-plane shear above half of the concrete's: the engineer knows
    std::optional<double> thinnest_mm = {}; ///< where the bars must fit; the thickness otherwise
};

/// Least steel of a wall, both layers together, mm2 per m of wall.
struct LeastSteel {
    double vertical_mm2_m;
    double horizontal_mm2_m;
    Source source;
};

/// Steel of one direction, all layers together, mm2/m.
double steel_mm2_m(const BarGrid& bars, int layers);

/// Least steel by ACI 318-19 Table 11.6.1 on the gross section. A direction whose bars are not
/// stated counts as having other than small bars, which asks for more.
LeastSteel least_steel(const ReinforcedWall& wall, const WallSteelRules& rules);

/// The tighter practice for exposed faces: low end of 0.0030 to 0.0050, horizontal.
double exposed_steel_mm2_m(double thickness_mm, const WallSteelRules& rules);

/// Widest spacing of one layer of bars that gives an amount, in `layers` equal layers, mm: not yet
/// held against the limits of spacing.
double spacing_for_mm(double area_mm2_m, double bar_area_mm2, int layers);

/// What all layers take of the thickness with the cover outside them, mm; what is not stated
/// counts as nothing.
double room_for_layers_mm(const Reinforcement& bars);

/// `steel.vertical`, `steel.horizontal`, `steel.spacing`, `steel.layers`, which fails too where the
/// layers with their cover do not fit into the thinnest place. What is not stated is `not checked`,
/// what is taken for granted a `watch`. A code minimum controls neither strength nor whether cracks
/// come.
std::vector<Check> check_wall_steel(const ReinforcedWall& wall, const WallSteelRules& rules);

} // namespace boardmark::core
