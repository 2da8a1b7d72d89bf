#include "fresh_windows.hpp"

#include "../checks/trial_checks.hpp"

#include <algorithm>

namespace boardmark::core {

TestWindow slump_window_of(const Requirements& asked, const Tables& tables) {
    if (asked.slump_window) {
        return {asked.slump_window->low_mm, asked.slump_mm, asked.slump_window->high_mm};
    }
    const double within_mm = slump_tolerance(asked.slump_mm, tables).within_mm.value;
    return {std::max(0.0, asked.slump_mm - within_mm), asked.slump_mm, asked.slump_mm + within_mm};
}

TestWindow air_window_of(const Selection& selection, const Tables& tables) {
    const double air_percent = selection.air_at_placing_percent;
    const double within_percent = tables.code->air.tolerance_percent;
    return {std::max(0.0, air_percent - within_percent), air_percent, air_percent + within_percent};
}

} // namespace boardmark::core
