#pragma once

#include <boardmark/core/mix/proportions.hpp>

#include <optional>

namespace boardmark::core {

/// The fine aggregate's share of the absolute SSD volume of the aggregates, percent, as
/// `selections.fine_share`. Nothing where one of them has no volume, or there is none of either. In
/// the header: out of line an optional number waits, and a million mixes are judged by this one.
inline std::optional<double> fine_share_percent(const Proportions& proportions) {
    double coarse_m3 = 0;
    double fine_m3 = 0;
    for (const Ingredient& ingredient : proportions.ingredients) {
        if (ingredient.role != Role::coarse && ingredient.role != Role::fine) {
            continue;
        }
        if (!ingredient.volume_m3) {
            return std::nullopt;
        }
        (ingredient.role == Role::fine ? fine_m3 : coarse_m3) += *ingredient.volume_m3;
    }
    if (coarse_m3 == 0 || fine_m3 == 0) {
        return std::nullopt;
    }
    return 100 * fine_m3 / (coarse_m3 + fine_m3);
}

} // namespace boardmark::core
