#pragma once

#include "../gate/node.hpp"

#include <functional>
#include <string>

namespace boardmark::input {

/// Tells a fault at its place: what is wrong, what would be right.
using TellFault = std::function<void(const Node&, std::string, std::string)>;

} // namespace boardmark::input
