#pragma once

#include <boardmark/core/wall/lined_face.hpp>

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace boardmark::core {

/// A place on a face or in a section: x from the left end as seen, or from the front face; z up
/// from the top of the footing, of a bench from its underside.
struct DrawnPoint {
    double x_m;
    double z_m;
};

enum class FaceJointKind {
    contraction,
    corner, ///< a bend of the run between its ends, cast in one piece
};

/// "contraction", "corner".
std::string_view name_of(FaceJointKind kind);

/// An upright line over a face.
struct FaceJoint {
    double x_m;
    FaceJointKind kind;
};

struct DrawnTie {
    double x_m;
    double z_m;
    double load_kn; ///< by the pressure that governs
};

/// A niche, or an opening through the part.
struct DrawnOpening {
    std::string name;
    double x_m;
    double z_m;
    double width_m;
    double height_m;
    std::optional<double> depth_m = {}; ///< absent: through
    bool place_stated = true;           ///< station and sill; otherwise taken as spread evenly
};

/// A cut course, or a board that stands, too narrow to look meant.
struct Sliver {
    double x_m;
    double z_m;
    double length_m; ///< along the board
    double width_m;
    bool stands = false;
};

/// One face that shows, as whoever stands before it sees it; a bent run unfolded.
struct Elevation {
    std::string part;
    Face face;
    double length_m;
    double height_m; ///< the greatest; of an underside its depth
    int alike = 1;   ///< parts that look the same
    std::vector<DrawnPoint> outline = {};
    std::vector<LaidBoard> boards = {}; ///< in the order of their piece
    std::vector<FaceJoint> joints = {}; ///< by x
    std::vector<DrawnTie> ties = {};    ///< column by column
    std::vector<double> lifts_m = {};   ///< z of the lines between lifts
    std::vector<DrawnOpening> openings = {};
    std::vector<Sliver> slivers = {};
    double chamfer_m = 0; ///< leg of the chamfers at edges and openings; 0: none
    double boards_m = 0;  ///< course; 0: without boards
};

/// The tie that carries most; the first of several. Nothing without ties.
const DrawnTie* hardest_tie(const Elevation& elevation);

} // namespace boardmark::core
