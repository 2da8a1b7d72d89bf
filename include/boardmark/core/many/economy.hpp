#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/many/variable.hpp>
#include <boardmark/core/mix/complete_mix.hpp>
#include <boardmark/core/mix/proportions.hpp>

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

struct Tables;

/// What is to be least, of 1 m3.
enum class Objective {
    cost,   ///< of the materials, in their currency
    carbon, ///< kg of CO2 equivalent
    binder, ///< kg of cementitious material
};

/// A variable and between which values it may lie.
struct VariableBound {
    Variable variable;
    double low;
    double high; ///< > low
    bool stated = false;
};

/// What is sought.
struct EconomyOrder {
    Objective objective = Objective::cost;
    std::vector<VariableBound> bounds = {}; ///< 1 to 8, each variable once, of the mix
};

/// Most variables of a search.
constexpr std::size_t most_economy_variables = 8;

/// The figures of a mix that a search goes by; absent where they are not known.
struct EconomyFigures {
    std::optional<double> cost_per_m3;
    std::optional<double> carbon_kg_m3;
    double binder_kg_m3;

    /// The one that is to be least. Asserts that it is known.
    double of(Objective objective) const;
};

/// A mix on the way from the least cost to the least carbon.
struct FrontMix {
    std::string name;       ///< "least cost", "least carbon", "between, 1"
    std::vector<double> at; ///< a value for each variable, unrounded
    EconomyFigures figures;
};

/// A limit that keeps the best mix from being better, and what its own precision is worth.
struct LimitPrice {
    std::string id; ///< of a check; of a bound "bounds.w_cm"
    Quantity relaxed_by;
    double saves; ///< per m3, of the objective
};

/// The most economical mix that was found.
struct Economy {
    Objective objective;
    std::vector<VariableBound> bounds;
    std::string currency;               ///< of the cost; empty where it is not known
    std::optional<EconomyFigures> file; ///< of the mix as written; absent where it has none
    bool file_fails = false;
    std::optional<bool> file_within_bounds =
        true; ///< absent where a varied figure of it is not known

    std::vector<double> at; ///< rounded as a mix is ordered, or as written
    Proportions proportions;
    std::vector<Check> checks;
    bool checked_as_weighed = false; ///< also with weights rounded to the scale
    EconomyFigures figures;
    bool is_as_written = false; ///< nothing better was found

    std::vector<double> unrounded_at;
    std::optional<EconomyFigures> unrounded; ///< absent where only the mix as written holds
    std::size_t starts;                      ///< searches that were begun
    std::optional<double> worst_start;       ///< the objective where the worst of them ended
    std::size_t mixes;                       ///< that were worked out
    std::vector<std::string> active;
    std::vector<LimitPrice> prices;
    std::vector<FrontMix> front;       ///< by rising cost; empty where cost or carbon is not known
    std::vector<std::string> by_trial; ///< admixtures dosed as needed: in no figure
};

/// The bounds that hold where a file states none: the w/cm from 0.05 below the mix as written to
/// what the code permits or 0.05 above it, and the doses within the data of each reducer.
std::vector<VariableBound> usual_bounds(const CompleteMix& mix, const Proportions& written);

/// Why the objective of a mix cannot be known, naming the materials that lack a price or a carbon
/// figure; nothing where it can.
std::optional<Phrase> why_no_objective(const Proportions& written, Objective objective);

/// Searches the bounds evenly, then from the best places step by step, for the mix that has the
/// least of the objective and of which no check fails, no value lies beyond its limit (not even by
/// less than its precision, unless it does so in the mix as written), nothing is unchecked that the
/// mix as written has checked and nothing a watch that is none there. The best is rounded and
/// checked again. Own strengths are a watch at other shares of the cementitious material and at
/// more air; a density measured on the coarse blend, and what was read from a chart, is that of the
/// mix as written alone.
///
/// Unresolved where no such mix was found.
///
/// @param order  its objective can be known: `why_no_objective` has nothing against it
Outcome<Economy> economy(const CompleteMix& mix, const EconomyOrder& order, const Tables& tables);

} // namespace boardmark::core
