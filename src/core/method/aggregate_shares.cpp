#include "aggregate_shares.hpp"

#include <boardmark/core/basis/tables.hpp>

#include "../mix/aggregate_blend.hpp"
#include "fine_aggregate.hpp"

namespace boardmark::core {

std::optional<Unresolved> add_by_share_of_volume(const Mix& mix, double fine_share,
                                                 const Tables& tables,
                                                 std::vector<Ingredient>& ingredients) {
    const auto room_m3 = room_for_aggregate_m3(ingredients);
    if (!room_m3) {
        return room_m3.why();
    }
    add_blend_of_volume(mix.coarse, *room_m3 * (1 - fine_share), tables, ingredients);
    add_blend_of_volume(mix.fine, *room_m3 * fine_share, tables, ingredients);
    return std::nullopt;
}

std::optional<Unresolved> add_by_stated_share(const Mix& mix, const Tables& tables,
                                              Proportions& proportions) {
    if (!mix.blend) { // the blend has told its share
        record_fine_share(*mix.selections.fine_share_percent, proportions.worksheet);
    }
    return add_by_share_of_volume(mix, *mix.selections.fine_share_percent / 100, tables,
                                  proportions.ingredients);
}

} // namespace boardmark::core
