#pragma once

#include <boardmark/core/checks/check.hpp>

#include "checks.hpp"

#include <span>

namespace boardmark::core {

/// The check of the air by an exposure class that asks a figure, or nullptr.
const Check* air_of_class(std::span<const Check> mix_checks);

/// Air within limits of both sides.
Verdict within(double percent, Limit limit);

/// Whether a mix that holds is designed below its target. The tolerance of delivery belongs to the
/// load: a mix is designed for the air itself.
bool designed_below(double target_percent, Verdict verdict, const Proportions& proportions);

/// Whether the air is no design figure but what the volumes leave beside a fresh density that is
/// read from a chart.
bool is_left_over(const CheckContext& context);

/// Says so.
void append_left_over(const CheckContext& context, Phrase& message);

/// Says where the air at placing is not the air of the batch.
void append_loss(const Selection& selection, Phrase& message);

/// Says that the mix is designed below its {target}.
void append_design_below(bool below_target, Phrase& message);

} // namespace boardmark::core
