#pragma once

#include "arguments.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace boardmark::commands {

/// The part that `--wall` names, which must be one of these; empty without the option. Throws
/// Failure where it is none of them.
std::string part_option(const Arguments& arguments, const std::vector<std::string_view>& names);

} // namespace boardmark::commands
