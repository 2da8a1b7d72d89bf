#pragma once

#include <boardmark/core/wall/complete_wall.hpp>

#include <stdexcept>

namespace boardmark::test {

/// A wall past the door of core; throws where it is faulty.
inline core::CompleteWall entered(core::Wall wall) {
    auto result = core::complete(std::move(wall));
    if (const auto* faults = std::get_if<core::Faults>(&result)) {
        throw std::runtime_error(faults->front().message);
    }
    return std::get<core::CompleteWall>(std::move(result));
}

} // namespace boardmark::test
