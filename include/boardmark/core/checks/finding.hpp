#pragma once

#include <boardmark/core/basis/optional_number.hpp>
#include <boardmark/core/basis/quantity.hpp>
#include <boardmark/core/checks/check_id.hpp>

namespace boardmark::core {

enum class Verdict {
    holds,
    fails,
    watch,       ///< not broken, but near enough, or open enough, to look at
    not_checked, ///< a figure is missing; the message says which
};

/// The side on which a value must lie; with neither there is no limit.
struct Limit {
    OptionalNumber low;
    OptionalNumber high;

    bool is_any() const { return low || high; }
};

/// What one check found: figures alone, nothing that a person reads. Costs no allocation.
struct Finding {
    CheckId id;
    Verdict verdict;
    OptionalNumber value = {};
    Limit limit = {};
    Measure measure = Measure::ratio;
};

} // namespace boardmark::core
