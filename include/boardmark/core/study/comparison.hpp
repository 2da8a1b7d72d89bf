#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/mix/complete_mix.hpp>
#include <boardmark/core/mix/footprint.hpp>
#include <boardmark/core/mix/proportions.hpp>
#include <boardmark/core/strength/expected_strength.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// Slump of a mix that is compared.
struct ComparedSlump {
    std::optional<double> mm; ///< absent where slump no longer measures the flow
    bool estimate = false;
    Phrase reason = {}; ///< where it comes from
    Source source = {};
};

/// What is asked of a mix as far as cost and carbon decide only between mixes of one such demand.
struct ComparedDemand {
    std::string code = {};        ///< empty where no class is asked
    long strength_tenths_mpa = 0; ///< to a tenth of a MPa
    Specimen specimen = Specimen::cylinder;
    double strength_age_d = 0;
    std::vector<std::string> exposure = {};
    bool reinforced = true;
    std::string chloride_class = {};
    long slump = 0;                      ///< in quarter inches, as slump is read
    std::vector<long> slump_window = {}; ///< likewise; empty where none is stated
    std::optional<long> air = {};        ///< stated, in tenths of a percent; absent: by the classes
    std::optional<long> least_binder = {}; ///< kg/m3
    bool board_marked = false;
    std::vector<std::optional<long>> section = {}; ///< thickness, clear spacing and cover, mm

    bool operator==(const ComparedDemand&) const = default;
};

/// What they do not have in common: "strength", "slump".
std::vector<std::string> differences(const ComparedDemand& one, const ComparedDemand& other);

/// One column of a comparison: a mix with what it is worth, or why there is none.
struct ComparedMix {
    std::string label;
    std::optional<Unresolved> unresolved = {};
    std::optional<Proportions> proportions = {};
    std::vector<Check> checks = {};
    ComparedSlump slump = {};
    std::optional<ExpectedStrength> strength = {};
    std::optional<double> temperature_rise_k = {}; ///< of a thick section
    std::optional<Cost> cost = {};
    std::optional<Phrase> no_cost = {};             ///< why there is no cost
    std::optional<double> reducer_cost_per_m3 = {}; ///< part of the cost
    std::optional<PartialSum> carbon = {};
    std::vector<Phrase> remarks = {};
    std::vector<Step> reasons = {}; ///< where its figures come from
    std::optional<Supply> supply = {};
    bool gives_slump = true;     ///< whether its slump is the one asked
    bool proves_strength = true; ///< whether the strength expected is known to reach the average
    bool may_miss_slump = false; ///< whether its water or doses need not bring the slump shown
    bool is_whole = true;        ///< whether its volumes are known to make 1 m3
    ComparedDemand asked = {};   ///< to tell unlike requirements

    /// Whether its volumes can be added up: of a submittal without its aggregates or their relative
    /// densities nobody knows whether it makes 1 m3.
    bool states_volume() const { return proportions && proportions->totals.volume_m3; }

    /// Whether it may be chosen as far as the checks could tell.
    bool may_be_chosen() const {
        return states_volume() && !proportions->estimate && !any_fails(checks) && gives_slump &&
               proves_strength;
    }
};

/// A mix of a file as a column, proportioned or accepted.
ComparedMix compared(std::string label, const AnyCompleteMix& mix, const Tables& tables);

/// The same with a slump that was found otherwise, held against other requirements than its own:
/// those of the mix as written.
ComparedMix compared(std::string label, const AnyCompleteMix& mix, const ComparedSlump& slump,
                     const Requirements& asked, const Tables& tables);

/// The first column of that study: the mix without its reducer at the w/cm of the mix as written,
/// whose proportions are given.
ComparedMix without_high_range_reducer(const CompleteMix& mix, const Proportions& written,
                                       const Tables& tables);

/// What the high-range reducer of a mix buys: `without reducer`, `less water`, `less binder`, `more
/// flow`. A column that cannot be made says why. Asserts that the mix holds such a reducer.
///
/// Unresolved where the mix as written has no proportions
Outcome<std::vector<ComparedMix>> reducer_study(const CompleteMix& mix, const Tables& tables);

/// What decides between the columns, in words: limits first, then cost and carbon.
std::vector<Phrase> summary_of(const std::vector<ComparedMix>& columns);

/// Whether a mix holds a high-range water reducer.
bool holds_high_range_reducer(const Mix& mix);

} // namespace boardmark::core
