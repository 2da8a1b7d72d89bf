#pragma once

#include <array>
#include <string_view>

namespace boardmark::core {

/// The names of the methods of form pressure, in the order of `pressure_methods()`.
inline constexpr std::array<std::string_view, 3> pressure_method_names{"ACI 347R-14", "CIRIA 108",
                                                                       "DIN 18218"};

} // namespace boardmark::core
