#pragma once

#include <string>
#include <vector>

namespace boardmark::commands {

/// File names as labels, without what every one of them shares; those that stand several times get
/// a number.
std::vector<std::string> labels_of(const std::vector<std::string>& files);

} // namespace boardmark::commands
