#pragma once

#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/wall/wall.hpp>

#include <vector>

namespace boardmark::core {

/// What salt does to steel near the faces: `cover.salt` of each part that shows, `ties.salt` once.
/// Plain concrete has no cover; where no salt comes there are no checks.
std::vector<Check> salt_checks(const Wall& wall, const Tables& tables);

} // namespace boardmark::core
