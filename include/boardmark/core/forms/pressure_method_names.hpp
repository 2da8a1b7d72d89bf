#pragma once

#include <span>
#include <string_view>

namespace boardmark::core {

/// The names of the methods of form pressure, in the order of `pressure_methods`.
std::span<const std::string_view> pressure_method_names();

} // namespace boardmark::core
