#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/basis/source.hpp>
#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/code/code_tables.hpp>
#include <boardmark/core/mix/mix.hpp>
#include <boardmark/core/mix/proportions.hpp>

#include "../code/stated_classes.hpp"

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

struct Tables;

/// What a ratio by strength is asked for.
struct StrengthDemand {
    double average_mpa;
    bool air_entrained;
};

/// The ratio at which an average strength is expected, recorded with its reason.
/// Unresolved where neither an own curve nor the tables reach the strength.
Outcome<double> w_cm_by_strength(const Requirements& requirements, StrengthDemand demand,
                                 const Tables& tables, Worksheet& worksheet);

/// The lowest ratio that the stated classes allow, as the code means it: where it counts additions
/// by k, of water to cement and counted additions.
struct ExposureRatio {
    double w_cm;
    const Source* source; ///< of the first class that asks for it
};
std::optional<ExposureRatio> w_cm_by_exposure(const StatedClasses& classes);

/// The classes that share the lowest limit: "F3, C2".
std::string classes_at(const ExposureRatio& lowest, const StatedClasses& classes);

} // namespace boardmark::core
