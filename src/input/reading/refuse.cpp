#include "refuse.hpp"

namespace boardmark::input {

void refuse(const Node& node, std::string message, std::string advice, Diagnostics& diagnostics) {
    diagnostics.push_back(
        node.source->diagnostic(node.underline(), std::move(message), std::move(advice)));
}

} // namespace boardmark::input
