#pragma once

#include <boardmark/core/mix/mix.hpp>
#include <boardmark/core/trial/yield.hpp>

#include <string>

namespace boardmark::core {

/// The mix of the next trial but for its water: the ratio of the mix file, the target air, the
/// coarse aggregate as the trial asks, the admixtures at the doses that the trial held. Not proven
/// complete.
Mix mix_of(const Trial& trial, const Yield& yield, const Proportions& designed);

/// The ratio that the mix file asks for: where its least binder lowered it, the one before that.
double ratio_before_minimum(const AnyCompleteMix& mix, const Selection& selection);

/// Doses an admixture in percent of the cementitious material.
void set_dose(Mix& mix, const std::string& admixture, double percent);

} // namespace boardmark::core
