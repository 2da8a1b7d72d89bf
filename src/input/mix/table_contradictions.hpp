#pragma once

#include <boardmark/core/code/printed_code.hpp>

#include "tell_fault.hpp"

namespace boardmark::input {

/// Tells where one row of a code says what another, or another cell of its own, says too: of two
/// only one would count, and nobody would see which.
void tell_contradictions(const core::PrintedCode& code, const Node& tables, const TellFault& tell);

} // namespace boardmark::input
