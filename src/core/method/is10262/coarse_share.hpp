#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/mix/mix.hpp>

namespace boardmark::core {

struct MethodTables;

/// With what the share of stone is found.
struct CoarseShareEntry {
    double size_mm;
    double w_cm;
};

/// Coarse aggregate's share of all aggregate by absolute volume, recorded.
/// Unresolved where the sand's zone is not stated or the table does not reach the size.
Outcome<double> indian_coarse_share(const Mix& mix, const CoarseShareEntry& entry,
                                    const MethodTables& method, Worksheet& worksheet);

} // namespace boardmark::core
