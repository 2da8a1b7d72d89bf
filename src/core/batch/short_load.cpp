#include <boardmark/core/batch/short_load.hpp>

#include "../basis/tolerance.hpp"

namespace boardmark::core {

std::optional<double> ShortLoad::cost() const {
    if (short_m3 <= 0) {
        return 0;
    }
    return charge ? std::optional{loads * short_m3 * charge->per_m3} : std::nullopt;
}

ShortLoad short_load(const Supply& supply, const Charging& charging) {
    const bool is_short = below(charging.each_m3, supply.minimum_load_m3);
    return {.loads = charging.count,
            .each_m3 = charging.each_m3,
            .minimum_m3 = supply.minimum_load_m3,
            .short_m3 = is_short ? supply.minimum_load_m3 - charging.each_m3 : 0,
            .charge = supply.short_load_charge};
}

} // namespace boardmark::core
