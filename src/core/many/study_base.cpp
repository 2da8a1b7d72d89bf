#include "study_base.hpp"

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/method/proportion.hpp>

#include "../method/bre/chart_readings.hpp"

namespace boardmark::core {

Mix study_base(const CompleteMix& mix, const Tables& tables) {
    Mix base = *mix;
    Proportions written{};
    if (!figures(mix, tables, written)) {
        note_entry(base.selections, written.selection);
    }
    return base;
}

std::optional<Phrase> leaves_blend_density(const Mix& written, const Mix& studied) {
    const bool is_left =
        written.blend_dry_rodded_density_kg_m3 && !studied.blend_dry_rodded_density_kg_m3;
    return is_left ? std::optional{Phrase{
                         "The dry-rodded density of the blend was measured at its shares as "
                         "written. At others the mean of the aggregates by mass stands in for it, "
                         "an estimate: measure the blend at the shares that are chosen "
                         "('mixture.coarse_dry_rodded_density').",
                         {}}}
                   : std::nullopt;
}

} // namespace boardmark::core
