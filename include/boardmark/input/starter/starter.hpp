#pragma once

#include <boardmark/core/mix/mix.hpp>

#include <string>

namespace boardmark::input {

/// A mix file to begin with: values that pass `check`, each key explained, and the keys that may be
/// added commented out beside them. Explanations and examples are those of the table of keys.
std::string starter_mix(core::UnitSystem system);

} // namespace boardmark::input
