#pragma once

#include <boardmark/core/basis/typical_figure.hpp>

#include <map>
#include <string>
#include <vector>

namespace boardmark::core {

/// Slag cement's heat up to a share of the cementitious material.
struct SlagHeat {
    double up_to_percent;
    double factor;
};

/// Heat of hydration as a part of portland cement's.
struct HeatTables {
    TypicalFigure rise_k_of_100_kg_m3;    ///< of portland cement, in a thick section
    std::map<std::string, double> factor; ///< by kind, fly ash with its class: "fly ash F"
    std::vector<SlagHeat> slag;           ///< increasing shares
    TypicalFigure mass_peak_c;            ///< highest in the middle of mass concrete
    TypicalFigure mass_difference_k;      ///< most, between its middle and its faces
};

} // namespace boardmark::core
