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

} // namespace boardmark::core
