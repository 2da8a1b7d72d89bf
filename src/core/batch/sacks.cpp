#include <boardmark/core/batch/sacks.hpp>

#include "../basis/tolerance.hpp"
#include "batch_yield.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace boardmark::core {

std::vector<Sack> main_first(std::vector<Sack> sacks, const Proportions& proportions) {
    std::ranges::stable_sort(sacks, [&](const Sack& left, const Sack& right) {
        return ingredient_named(proportions, left.material).kg_m3 >
               ingredient_named(proportions, right.material).kg_m3;
    });
    return sacks;
}

Outcome<SackStudy> study_sacks(const Proportions& proportions, BatchOrder order,
                               double water_density_kg_m3) {
    const Sack main = order.sacks.front();
    const double of_one_sack_m3 = main.kg / ingredient_named(proportions, main.material).kg_m3;
    const double exact_sacks = order.volume_m3 / of_one_sack_m3;
    const double whole_below = std::floor(exact_sacks);
    order.whole_sacks = true;
    auto rounded = batch(proportions, order, water_density_kg_m3);
    if (!rounded) {
        return std::move(rounded).why();
    }
    SackStudy study{.main = main,
                    .exact_sacks = exact_sacks,
                    .rounded = *std::move(rounded),
                    .volume_below_m3 = std::nullopt};
    if (whole_below >= 1 && !same(exact_sacks, std::round(exact_sacks))) {
        study.volume_below_m3 = whole_below * of_one_sack_m3;
    }
    return study;
}

} // namespace boardmark::core
