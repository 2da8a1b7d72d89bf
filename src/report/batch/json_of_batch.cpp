#include "json_of_batch.hpp"

namespace boardmark::report {
Json json_of(const core::Batch& batch) {
    return {{"volume_m3", batch.volume_m3},
            {"ingredients", json_of(batch.items)},
            {"free_water_kg", batch.free_water_kg},
            {"w_cm", batch.w_cm},
            {"mass_kg", batch.mass_kg},
            {"held_back_kg", batch.held_back_kg},
            {"yield_m3", number_or_null(batch.yield_m3)},
            {"relative_yield", number_or_null(batch.relative_yield())}};
}

} // namespace boardmark::report
