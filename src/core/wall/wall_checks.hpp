#pragma once

#include <boardmark/core/checks/check.hpp>

#include <string>

namespace boardmark::core {

/// A check that says which wall it is of.
Check of_wall(const std::string& wall, Check check);

} // namespace boardmark::core
