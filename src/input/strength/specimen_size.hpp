#pragma once

#include <boardmark/core/strength/strength_record.hpp>

#include <optional>
#include <string_view>

namespace boardmark::input {

/// Reads `cylinder 4 in x 8 in` or `cube 150 mm`. Nothing where the text is neither, or of a size
/// that nobody casts.
std::optional<core::SpecimenSize> read_specimen_size(std::string_view text);

} // namespace boardmark::input
