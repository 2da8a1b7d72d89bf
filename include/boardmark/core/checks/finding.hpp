#pragma once

#include <boardmark/core/basis/quantity.hpp>
#include <boardmark/core/checks/check_id.hpp>

#include <optional>

namespace boardmark::core {

enum class Verdict {
    holds,
    fails,
    watch,       ///< not broken, but near enough, or open enough, to look at
    not_checked, ///< a figure is missing; the message says which
};

/// The side on which a value must lie.
struct Limit {
    std::optional<double> low;
    std::optional<double> high;
};

/// What one check found: figures alone, nothing that a person reads. Costs no allocation.
struct Finding {
    CheckId id;
    Verdict verdict;
    std::optional<double> value = {};
    std::optional<Limit> limit = {};
    Measure measure = Measure::ratio;
};

} // namespace boardmark::core
