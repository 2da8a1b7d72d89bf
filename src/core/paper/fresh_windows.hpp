#pragma once

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/mix/proportions.hpp>
#include <boardmark/core/mix/requirements.hpp>
#include <boardmark/core/pour/pour_card.hpp>

namespace boardmark::core {

/// Slumps permitted at placing: the window that is stated, else the tolerance of the slump.
TestWindow slump_window_of(const Requirements& asked, const Tables& tables);

/// Air permitted at placing.
TestWindow air_window_of(const Selection& selection, const Tables& tables);

} // namespace boardmark::core
