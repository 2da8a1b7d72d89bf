#pragma once

#include <boardmark/core/basis/source.hpp>

#include <string>
#include <vector>

namespace boardmark::core {

/// The mass by which a code counts chloride.
enum class ChlorideOf {
    cementitious_to_cement, ///< all cementitious material, additions up to the mass of cement
    cement,
    cement_and_counted, ///< with the additions that count in the water/cement ratio
    concrete,           ///< kg per m3 of concrete
};

/// A class of chloride content for concrete that is not prestressed.
struct ChlorideClass {
    std::string name; ///< "Cl 0.40"; empty where the code has one limit and no name for it
    double most;      ///< percent, or kg/m3 of concrete
    Source source;
};

/// How a code limits chloride from the materials.
struct ChlorideRules {
    ChlorideOf of = ChlorideOf::cementitious_to_cement;
    bool acid_soluble = false;          ///< else water-soluble; the two are never compared
    std::vector<ChlorideClass> classes; ///< beside what exposure classes say, from the strictest
    std::vector<ChlorideClass> without_bars = {}; ///< the same for concrete without bars

    const std::vector<ChlorideClass>& classes_for(bool reinforced) const {
        return reinforced ? classes : without_bars;
    }
};

} // namespace boardmark::core
