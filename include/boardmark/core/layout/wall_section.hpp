#pragma once

#include <boardmark/core/layout/elevation.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// A bar that the section cuts: of the bars along the part.
struct CutBar {
    double x_m;
    double z_m;
    double diameter_m;
    int layer; ///< 1 at the front
};

/// A bar that stands in the plane of the section.
struct StandingBar {
    double x_m;     ///< at the bottom
    double top_x_m; ///< at the top, where the face behind is battered
    double diameter_m;
    int layer;
};

struct SectionTie {
    double z_m;
    double load_kn; ///< of the hardest loaded of its row
};

struct PressureAt {
    double z_m;
    double kpa;
};

/// A part cut across where it is highest.
struct WallSection {
    std::string part;
    double height_m;
    double width_m;                       ///< at its widest, without the footing
    std::vector<DrawnPoint> outline;      ///< closed
    std::vector<DrawnPoint> footing = {}; ///< closed; taken as centred below the part; may be empty
    std::vector<CutBar> bars = {};
    std::vector<StandingBar> standing = {};
    std::vector<SectionTie> ties = {};
    std::vector<double> lifts_m = {};
    std::vector<PressureAt> pressure = {}; ///< the envelope that governs, from the top down
    std::string pressure_method = {};
    std::optional<double> form_rating_kpa = {};
};

} // namespace boardmark::core
