#pragma once

#include <boardmark/core/basis/typical_figure.hpp>

#include <vector>

namespace boardmark::core {

/// Joint spacing in heights of walls below a height.
struct HeightSpacing {
    double below_m;
    double heights;
};

struct ContractionJointRules {
    std::vector<HeightSpacing> by_height; ///< increasing
    Source height_source;
    TypicalFigure spacing_solid_m;
    TypicalFigure spacing_many_openings_m;
    TypicalFigure spacing_in_thicknesses;
    TypicalFigure low_wall_spacing_m; ///< closest that the height of a wall asks for
    TypicalFigure least_apart_m;      ///< of joints from each other, from ends and corners
    TypicalFigure first_from_corner_m;
    TypicalFigure corner_share; ///< of the spacing, likewise
    TypicalFigure groove_share; ///< of the thickness, both faces together
    TypicalFigure groove_least_mm;
};

/// Least steel of both directions, as a part of the gross section.
struct SteelRatios {
    double vertical;
    double horizontal;
    Source source;
};

struct WallSteelRules {
    SteelRatios small_bars;
    SteelRatios other_bars;
    SteelRatios high_shear;
    SteelRatios exposed_face;      ///< tighter practice, its low end
    SteelRatios exposed_face_most; ///< and its high end
    TypicalFigure small_bar_mm;    ///< largest bar that counts as small
    TypicalFigure small_bar_yield_mpa;
    TypicalFigure spacing_in_thicknesses;
    TypicalFigure spacing_most_mm;
    TypicalFigure two_layers_above_mm;
};

/// Least cover of bars.
struct CoverRules {
    TypicalFigure against_earth_mm;
    TypicalFigure weather_large_mm; ///< bars above `small_bar_mm`
    TypicalFigure weather_small_mm;
    TypicalFigure inside_mm;
    TypicalFigure corrosive_mm;
};

struct PlumbRules {
    double share_percent;
    double most_mm;
    double edge_share_percent; ///< exposed edges and joint grooves
    double edge_most_mm;
    double up_to_mm; ///< height for which the rule is printed
    Source source;
};

/// Joints, steel and tolerances of walls.
struct JointTables {
    ContractionJointRules contraction;
    WallSteelRules steel;
    CoverRules cover;
    PlumbRules plumb;
};

} // namespace boardmark::core
