#pragma once

#include <string>

namespace boardmark::page {

/// Keeps a file in memory under its name, in place of one that was kept under it.
void hold(const std::string& name, std::string bytes);

/// Keeps none of the files any more.
void hold_nothing();

/// The bytes of a file that is kept; empty where there is none.
const std::string& held(const std::string& name);

} // namespace boardmark::page
