#pragma once

#include <boardmark/core/mix/mix.hpp>
#include <boardmark/core/risk/risk.hpp>

#include <string>

namespace boardmark::report {

/// "water/cement ratio", "air at placing"
std::string quantity_words(core::RiskQuantity quantity);

/// A share of 0 to 1 in percent: two digits where it is small, "0 %" only where it is nothing.
std::string percent_text(double share);

/// A figure of a distribution, a digit finer than the trade writes, so that scatter shows.
std::string scattered_text(double value, core::Measure measure, core::UnitSystem system);

/// Where the deviation of an input comes from.
std::string origin_text(const core::ScatteredInput& input);

} // namespace boardmark::report
