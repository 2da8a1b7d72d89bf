#pragma once

#include <boardmark/core/trial/trial_tables.hpp>
#include <boardmark/core/trial/yield.hpp>

#include <span>
#include <vector>

namespace boardmark::core {

/// The tolerance of a nominal slump.
const SlumpTolerance& slump_tolerance(double target_mm, const Tables& tables);

/// Slump, air, temperature and yield of a trial against its targets and their tolerances. Where a
/// class states the least air and the most, these count, and the air has no tolerance besides.
std::vector<Check> check_fresh_tests(const Trial& trial, const Yield& yield,
                                     std::span<const Check> of_mix, const Tables& tables);

/// A measure of the density test that is smaller than its standard asks for the stone.
std::vector<Check> check_measure(const Trial& trial, const Proportions& designed,
                                 const Tables& tables);

/// Doses of admixtures against the highest that their data sheet permits; where none is stated, a
/// dose above all that its data know is watched.
std::vector<Check> check_doses(const Proportions& proportions, const Tables& tables);

/// What was weighed against what the mix asks to weigh for the intended volume.
std::vector<Check> check_batching(const Trial& trial, const Yield& yield,
                                  const Proportions& designed, const Tables& tables);

} // namespace boardmark::core
