#pragma once

#include <boardmark/core/wall/wall.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

enum class CastKind { run, footing, planter, bench };

/// One part of a wall file that concrete is cast into, with what the concrete must pass through.
struct CastPart {
    CastKind kind;
    std::string name;                      ///< in the file, or "footing of" a run's
    double height_m;                       ///< of the concrete in its form
    double plan_m2;                        ///< of the form at its bottom
    double between_forms_mm;               ///< narrowest, by the nominal faces, behind niches too
    std::optional<double> slab_mm = {};    ///< depth of what is cast as a slab
    double relief_mm = 0;                  ///< that the boards take off, all lined sides together
    std::vector<std::string> assumed = {}; ///< keys that nobody stated and that make it narrower
    std::optional<double> cover_mm = {};   ///< of the bars of a footing or bench
    bool soffit = false; ///< of a bench that spans, stands out, or is not said to do neither

    /// The narrowest of both, by the nominal faces.
    double thinnest_mm() const;
};

/// Every part that is cast, in the order of runs (each before its footing), planters, benches.
std::vector<CastPart> cast_parts(const Wall& wall);

/// Depth of the deepest board joint behind the face. Stated, or none where no boards are asked for.
struct Relief {
    double mm;
    bool stated;
};
Relief relief_of(const Wall& wall);

} // namespace boardmark::core
