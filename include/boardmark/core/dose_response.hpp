#pragma once

#include <boardmark/core/comparison.hpp>
#include <boardmark/core/mix.hpp>
#include <boardmark/core/tables.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// What one dose of a high-range reducer does in each of its two uses.
struct DosePoint {
    double ml_100kg;
    ComparedMix less_water;  ///< at the cementitious material of the mix without reducer
    ComparedMix less_binder; ///< at its w/cm
};

/// The response of a mix to the dose of its reducer.
struct DoseResponse {
    std::string reducer;
    std::vector<DosePoint> points; ///< from no dose to the last of the reducer's curve
    /// The first point from which `less water` breaks no limit; absent where none does or all do.
    std::optional<std::size_t> limits_hold_from;
    /// The point at which `less binder` is cheapest: beyond it cost rises. Absent where a price is
    /// missing.
    std::optional<std::size_t> cheapest;
};

/// Goes over the water reduction of the mix's high-range reducer in steps. Asserts that the mix
/// holds one.
///
/// @throws Unresolved where the reducer has no curve, or the mix without it cannot be made
DoseResponse dose_response(const Mix& mix, const Tables& tables);

} // namespace boardmark::core
