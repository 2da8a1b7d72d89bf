#pragma once

#include <boardmark/core/many/sweep.hpp>

#include <string>
#include <vector>

namespace boardmark::commands {

/// The variables of `--vary KEY=FROM..TO/N` and the values that they take. Throws Failure where one
/// is wrong, or is not in the mix.
///
/// @param written  one or two of them
std::vector<core::SweepAxis> sweep_axes(const std::vector<std::string>& written,
                                        const core::Mix& mix);

} // namespace boardmark::commands
