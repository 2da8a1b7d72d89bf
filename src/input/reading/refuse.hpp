#pragma once

#include <boardmark/input/gate/diagnostic.hpp>

#include "../gate/node.hpp"

#include <string>

namespace boardmark::input {

/// Tells a fault at the place of a node, and what to write instead.
void refuse(const Node& node, std::string message, std::string advice, Diagnostics& diagnostics);

} // namespace boardmark::input
