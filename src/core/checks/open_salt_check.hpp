#pragma once

#include <boardmark/core/wall/salt_at_face.hpp>

namespace boardmark::core {

/// A check of salt that nothing has been found for yet; its message says that the exposure is open.
Check open_salt_check(CheckId id, const SaltExposure& salt, const Source& source);

/// Depth of the deepest board joint; nothing where no boards state it.
std::optional<double> stated_relief_mm(const Wall& wall);

/// What a message adds where the depth of the relief was not stated.
const char* relief_taken_as_none();

} // namespace boardmark::core
