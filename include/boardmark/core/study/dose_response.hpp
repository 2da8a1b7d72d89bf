#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/mix/complete_mix.hpp>
#include <boardmark/core/study/comparison.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

struct Tables;

/// What one dose of a high-range reducer does in each of its two uses.
struct DosePoint {
    double ml_100kg;
    ComparedMix less_water;  ///< at the cementitious material of the mix without reducer
    ComparedMix less_binder; ///< at its w/cm
};

/// The response of a mix to the dose of its reducer.
struct DoseResponse {
    std::string reducer;
    /// From no dose to the last of the reducer's curve, or to the highest that its sheet permits.
    std::vector<DosePoint> points;
    bool ends_at_maximum = false; ///< the curve goes on beyond what the data sheet permits
    /// The first point from which `less water` fails nothing and keeps the limits of w/cm and
    /// strength, unrounded; absent where none does or all do.
    std::optional<std::size_t> limits_hold_from;
    bool limits_hold_at_last = false; ///< of `less water`
    /// The point at which `less binder` is cheapest of those that may be chosen and keep the limits
    /// of w/cm and strength, unrounded. Absent where a price is missing or there is none of them.
    std::optional<std::size_t> cheapest;
    /// That of every point, by the water alone, where the mix as written asks for more flow.
    std::optional<double> slump_of_water_mm = std::nullopt;

    /// How many points of `less binder` fail.
    std::size_t failing_less_binder() const;

    /// How many points of `less binder` are never the cheapest: those too that may not be chosen
    /// though no check fails.
    std::size_t not_chosen_less_binder() const;
};

/// Goes over the water reduction of the mix's high-range reducer in steps. Asserts that the mix
/// holds one.
///
/// Unresolved where the reducer has no curve, or the mix without it cannot be made
Outcome<DoseResponse> dose_response(const CompleteMix& mix, const Tables& tables);

} // namespace boardmark::core
