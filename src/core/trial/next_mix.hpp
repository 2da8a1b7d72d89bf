#pragma once

#include <boardmark/core/mix/mix.hpp>
#include <boardmark/core/trial/yield.hpp>

#include <string>

namespace boardmark::core {

struct Tables;

/// The mix of the next trial but for its water: the ratio of the mix file, the target air, the
/// coarse aggregate as the trial asks, the admixtures at the doses that the trial held. Not proven
/// complete.
///
/// @param dosed_binder_kg_m3 what the doses found count over, see `dosed_binder_kg_m3()`
Mix mix_of(const Trial& trial, const Yield& yield, const Proportions& designed,
           double dosed_binder_kg_m3);

/// Cementitious material over which the doses of a trial count, kg in 1 m3 as it yielded: what it
/// held; where that is out of the tolerance of batching, what the mix asks for. The dose over a
/// short amount of cement, given to the full one, would be a multiple of it.
double dosed_binder_kg_m3(const Yield& yield, const Proportions& designed, const Tables& tables);

/// The ratio that the mix file asks for: where its least binder lowered it, the one before that.
double ratio_before_minimum(const AnyCompleteMix& mix, const Selection& selection);

/// Doses an admixture in percent of the cementitious material.
void set_dose(Mix& mix, const std::string& admixture, double percent);

} // namespace boardmark::core
