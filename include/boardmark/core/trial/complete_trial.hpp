#pragma once

#include <boardmark/core/mix/complete.hpp>
#include <boardmark/core/trial/trial.hpp>

namespace boardmark::core {

/// A trial of which the yield can be found.
using CompleteTrial = Complete<Trial>;

/// The way of a trial into the computation: a complete one, or every fault of it, field by field.
///
/// What is demanded: numbers finite and in the range that their member states; every material of
/// the mix weighed once, and none beside them, an admixture by mass or by volume, the rest by mass;
/// some cementitious material; moisture and absorption of the aggregates; a density and a slump.
/// What of it cannot be concrete is no fault: `yield_of` tells it with the ways out.
std::variant<CompleteTrial, Faults> complete(Trial trial);

/// All faults of a trial; none of a complete one.
Faults faults_of(const Trial& trial);

} // namespace boardmark::core
