#pragma once

#include "checks.hpp"

#include <optional>

namespace boardmark::core {

/// What may make the ratio of water to what binds higher than it is counted.
struct RatioDoubts {
    /// Without the ground limestone, which not every code counts; absent where there is none.
    std::optional<double> without_limestone = {};
    /// With the water of the highest doses of reducers that are dosed as needed; infinite where
    /// such a dose is not stated; absent where nothing is dosed so.
    std::optional<double> with_highest_doses = {};
};

RatioDoubts ratio_doubts(const CheckContext& context);

/// Whether either breaks a limit that the ratio keeps.
bool may_break(const RatioDoubts& doubts, const Demand& demand);

/// Tells those that do.
void append_doubts(const RatioDoubts& doubts, const Demand& demand, Phrase& message);

} // namespace boardmark::core
