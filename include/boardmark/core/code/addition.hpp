#pragma once

namespace boardmark::core {

/// Supplementary cementitious materials that a code caps or counts.
enum class Addition {
    fly_ash, ///< with natural pozzolans
    slag_cement,
    silica_fume,
    total,
    ash_and_fume,
};

} // namespace boardmark::core
