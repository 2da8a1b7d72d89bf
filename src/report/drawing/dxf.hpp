#pragma once

#include "view.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace boardmark::report {

/// What a drawing file measures in.
enum class ModelUnit { mm, inch };

/// Views in their real size below each other, lines of words above them, as a DXF file of release
/// 12: lines, polylines, circles and text on layers that are named after what they show.
std::string dxf_of(const std::vector<View>& views, const std::vector<std::string>& heading,
                   ModelUnit unit);

} // namespace boardmark::report
