#pragma once

#include "arguments.hpp"

namespace boardmark::commands {

/// The option that sets the day in place of the clock.
constexpr Option today_option{"today", "YYYY-MM-DD", "the day it is (default: the clock's)"};

/// The day it is, days since 1970-01-01. Throws Failure where `--today` is no date.
int today_of(const Arguments& arguments);

} // namespace boardmark::commands
