#pragma once

#include <boardmark/core/batch/short_load.hpp>
#include <boardmark/core/mix/mix.hpp>

#include <string>

namespace boardmark::report {

/// What a load below the supplier's smallest one costs beside the concrete, in words.
std::string text_of_short_load(const core::ShortLoad& load, core::UnitSystem system);

} // namespace boardmark::report
