#pragma once

#include <boardmark/core/code/code_tables.hpp>
#include <boardmark/core/mix/proportions.hpp>

#include <string>
#include <vector>

namespace boardmark::core {

/// The binder ingredients' materials.
std::vector<const Material*> binder_materials(const Proportions& proportions);

/// Adds to a message what other editions of the code say of a class.
void append_other_editions(const ExposureClass& exposure, Phrase& message);

/// "F2, C2"
std::string joined(const std::vector<std::string>& words);

} // namespace boardmark::core
