#pragma once

#include <boardmark/core/checks/check.hpp>

#include <string>

namespace boardmark::report {

/// Text in the ANSI colour of a verdict. The words themselves carry the meaning.
std::string coloured(const std::string& text, core::Verdict verdict);

} // namespace boardmark::report
