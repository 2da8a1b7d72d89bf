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
    std::optional<double> fume_factor = {}; ///< least silica fume, percent for each kg/m3 of alkali
};

/// How the reaction's risk follows from the aggregate, where the concrete stands.
struct AlkaliRisk {
    bool salted;                   ///< alkali comes in service, of deicers or the sea
    std::vector<double> by_reactivity; ///< in the order of AlkaliRules::reactivities
};

/// Which level of prevention a risk asks.
struct AlkaliPrevention {
    double risk;
    std::vector<std::string> by_structure; ///< in the order of AlkaliRules::structures; "none": such
                                           ///< a structure is not built with the aggregate
};

struct AlkaliRules {
    std::vector<AlkaliLevel> levels; ///< rising severity
    Source source;
    TypicalFigure guided_to_percent; ///< alkali of a cement up to which the shares are published
    std::vector<std::string> reactivities = {}; ///< of aggregate, rising
    std::vector<std::string> structures = {};   ///< classes of structure, rising severity
    std::vector<AlkaliRisk> risks = {};
    std::vector<AlkaliPrevention> prevention = {}; ///< rising risk
    Source prevention_source = {};
    double least_fume_percent = 0;
};

} // namespace boardmark::core
