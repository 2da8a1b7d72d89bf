#pragma once

#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/basis/typical_figure.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// What a level of prevention against the reaction of aggregate with alkali asks.
struct AlkaliLevel {
    std::string name;                         ///< "V" to "ZZ"
    std::optional<double> most_kg_m3;         ///< Na2O equivalent from portland cement
    std::optional<double> least_slag_percent; ///< of cementitious material, in place of that
    std::optional<double> least_ash_percent;  ///< class F fly ash, likewise
    std::string beside_level; ///< whose supplementary materials it asks besides; may be empty
};

struct AlkaliRules {
    std::vector<AlkaliLevel> levels; ///< rising severity
    Source source;
    TypicalFigure guided_to_percent; ///< alkali of a cement up to which the shares are published
};

} // namespace boardmark::core
