#pragma once

#include <boardmark/core/wall/wall_plan.hpp>

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// A form to be filled.
struct FormedWall {
    std::string name;
    double height_m;
    /// Of the whole form, bends and all: a short one is a column to the methods, whatever it is
    /// called.
    ColumnPlan plan;
    std::optional<PierPlan> pier;           ///< the shortest part of it that stands by itself
    double smallest_plan_m2;                ///< over its height, > 0
    std::optional<double> smallest_part_m2; ///< that may be filled by itself
    std::function<double(double low_m, double high_m)> volume_m3; ///< of concrete between heights
    std::optional<double> output_m3_h; ///< into it: its own, else that of all
};
FormedWall formed_wall(const WallRun& run, const WallPlacing& placing, const Tables& tables);
FormedWall formed_wall(const Planter& planter, const WallPlacing& placing);

/// All forms of the walls: runs, then planters.
std::vector<FormedWall> formed_walls(const Wall& wall, const Tables& tables);

/// The form as its lifts see it.
PouredWall poured_wall(const FormedWall& formed, const WallPlacing& placing);

/// The same, where the wall file may ask that lifts end on joints between boards.
PouredWall poured_wall(const FormedWall& formed, const Wall& wall);

/// That fresh concrete lifts forms, where a run is battered or has a box-out above its foot, or a
/// planter has a floor.
std::vector<Phrase> uplift_cautions(const Wall& wall);

/// Why the density of the concrete is assumed.
Phrase why_density_is_assumed();

/// Makes a check that holds by the mix's density a watch: the heaviest load that the class of air
/// lets in asks more than is borne.
void watch_heaviest_load(const FormCase& pour, double asked, Check& check);

/// Forces on a form; their checks are appended.
FormForces form_forces(const Wall& wall, const FormedWall& formed, const Proportions& proportions,
                       const Tables& tables, std::vector<Check>& checks);

} // namespace boardmark::core
