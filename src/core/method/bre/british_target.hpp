#pragma once

#include <boardmark/core/basis/outcome.hpp>
#include <boardmark/core/basis/step.hpp>
#include <boardmark/core/mix/mix.hpp>

namespace boardmark::core {

struct Tables;

/// The strength of cubes to aim at, recorded: the specified one and a margin of deviations for the
/// share of results that may be defective; more where air is entrained, which costs strength.
/// The producer's own deviation counts from 20 tests on, where the code does not set its record
/// aside by age or strength.
/// Unresolved where the strength is not of cubes, or no factor is printed for the share.
Outcome<double> british_target_mpa(const Mix& mix, double entrained_air_percent, const Tables& all,
                                   Worksheet& worksheet);

} // namespace boardmark::core
