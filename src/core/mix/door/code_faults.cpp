#include <boardmark/core/code/code_tables.hpp>

#include "../../basis/tolerance.hpp"
#include "faults.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

bool is_none_or_more(double limit) {
    return std::isfinite(limit) && limit >= 0;
}

bool is_absent_or_more(const std::optional<double>& limit) {
    return !limit || is_none_or_more(*limit);
}

/// A strength that a class does not ask is NaN.
bool is_strength_or_none(double strength_mpa) {
    return std::isnan(strength_mpa) || is_none_or_more(strength_mpa);
}

bool are_limits(const ClassLimits& limits) {
    return (!limits.max_w_cm || is_some(*limits.max_w_cm)) &&
           is_strength_or_none(limits.min_strength_mpa) &&
           is_strength_or_none(limits.min_strength_twin_mpa) &&
           is_absent_or_more(limits.min_cube_strength_mpa) &&
           is_absent_or_more(limits.min_cement_kg_m3) &&
           is_absent_or_more(limits.min_cement_with_additions_kg_m3);
}

bool are_absent_or_limits(const std::optional<ClassLimits>& limits) {
    return !limits || are_limits(*limits);
}

bool are_all_limits(const ExposureClass& exposure) {
    return are_limits(exposure.limits) && are_absent_or_limits(exposure.plain_limits) &&
           are_absent_or_limits(exposure.pozzolanic_limits) &&
           is_absent_or_more(exposure.chloride_percent);
}

} // namespace

void find_code_faults(const CodeTables& code, Field field, const FaultList& list) {
    if (code.classes.empty()) {
        list.impossible(field, "is a file without exposure classes: it asks nothing");
    }
    for (const ExposureClass& exposure : code.classes) {
        if (exposure.category >= code.categories.size()) {
            list.impossible(field, "has a class '" + exposure.name + "' of no category");
        }
        if (!are_all_limits(exposure)) {
            list.impossible(field, "has a class '" + exposure.name +
                                       "' with a limit that is no "
                                       "number above 0");
        }
    }
}

} // namespace boardmark::core
