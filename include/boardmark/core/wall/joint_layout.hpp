#pragma once

#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/wall/joint_tables.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// A part of a wall of one height and one thickness. Of a sloping top give the least height: the
/// rule by height then errs to closer joints.
struct WallStretch {
    double length_m;                        ///< > 0
    double height_m;                        ///< > 0
    double thickness_mm;                    ///< > 0, the greatest: grooves go by it
    std::optional<double> thinnest_mm = {}; ///< of a battered wall, at its top: the spacing does
};

/// A wall between two ends, from station 0, measured along its length where it bends.
struct JointedWall {
    std::vector<WallStretch> stretches;  ///< at least one, in order
    std::vector<double> openings_m = {}; ///< stations that need a joint: edges of openings
    bool corner_at_start = false;        ///< the end is a bend or a tee, not free
    bool corner_at_end = false;
    std::vector<double> corners_m = {}; ///< stations of bends between the ends
    bool closed = false;                ///< its end is its start, a corner: the walls of a planter
    bool corners_assumed = false;       ///< nobody stated where they are
    bool openings_unplaced = false;     ///< some go through the wall, and nobody stated where
    bool many_openings = false;
    std::optional<double> spacing_m = {}; ///< stated in place of the rules
    std::optional<double> groove_mm = {}; ///< both faces together, likewise
};

enum class SpacingRule { height, low_wall, thickness, practice, stated };

/// Widest panel that the rules allow, and which of them decides.
struct JointSpacing {
    double m;
    SpacingRule governed_by;
    Source source;
};

/// A stretch of a wall that ends at a corner, and stays without a joint.
struct JointlessSide {
    double from_m;
    double to_m;
};

/// Contraction joints of a wall. Aligning them with boards is left to whoever lays out the boards.
struct JointLayout {
    std::vector<JointSpacing> spacings; ///< one for each stretch
    std::vector<double> positions_m;    ///< increasing, strictly between the ends
    std::vector<double> left_out_m;     ///< steps and openings too near to an end or another joint
    std::vector<JointlessSide> without; ///< sides that should have a joint and have no room for it
    double widest_m;                    ///< panel, from joint to joint round corners too
    double groove_mm;                   ///< both faces' grooves together, the same depth each
    std::vector<Check> checks;          ///< `joints.spacing`, `joints.groove`
};

/// The closest of: some heights of the wall but not closer than 8 ft, 30 thicknesses, 25 ft (20 ft
/// with many openings).
JointSpacing joint_spacing(const WallStretch& stretch, bool many_openings,
                           const ContractionJointRules& rules);

/// Depth of both faces' grooves together: a quarter of the thickness, at least 2 in.
double groove_mm(double thickness_mm, const ContractionJointRules& rules);

/// Joints at every change of height or thickness and at every opening named; between those, equal
/// panels no wider than the spacing. A panel at a corner is half as wide as the others, and no
/// wider than 15 ft; a corner itself is cast in one piece. Joints nearer than 4 ft to another, to
/// an end or to a corner are left out, those at openings before those at steps. Stations outside
/// the wall are left out.
JointLayout joint_layout(const JointedWall& wall, const ContractionJointRules& rules);

} // namespace boardmark::core
