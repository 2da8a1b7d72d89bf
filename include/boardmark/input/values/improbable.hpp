#pragma once

#include <boardmark/core/basis/phrase.hpp>
#include <boardmark/input/gate/diagnostic.hpp>

#include <vector>

namespace boardmark::input {

/// The warnings among the diagnostics as cautions of a result: what the file says is possible, but
/// a figure is hardly true. Each repeats the figure.
std::vector<core::Phrase> improbable_figures(const Diagnostics& diagnostics);

/// Puts those that the cautions of a result do not tell yet before them.
void add_improbable_figures(const Diagnostics& diagnostics, std::vector<core::Phrase>& cautions);

} // namespace boardmark::input
