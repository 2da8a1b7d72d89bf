#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace boardmark::core {

/// Which side of a part a face is. Of a planter the outer faces in turn, of a bench the free
/// underside besides; ends are those of a run, the rises of its steps and the ends of benches.
enum class Face { front, right, back, left, underside, end };

/// "front", "right", "back", "left", "underside", "end".
std::string_view name_of(Face face);

/// A board where it lies on a face: x along the face from its left end as seen, z up from its
/// bottom. It may reach past the face, where it is cut to a slope, a step or an opening.
struct LaidBoard {
    double x_m;
    double z_m;
    double length_m; ///< along the board
    double width_m;  ///< of the course that it covers, ripped at the top or an end
    bool stands = false;
    int piece = 0;         ///< of the cutting list, from 1; it lines as many forms as boards serve
    double cut_from_m = 0; ///< stock length
};

/// One face that shows and its boards.
struct LinedFace {
    std::string part;
    Face face;
    int number = 1; ///< of parts that are alike
    std::vector<LaidBoard> boards;
};

/// The boards of a face of that length as they lie on the face behind it.
void mirror(double length_m, std::vector<LaidBoard>& boards);

} // namespace boardmark::core
