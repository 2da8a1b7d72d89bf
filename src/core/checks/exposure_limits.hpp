#pragma once

#include <boardmark/core/basis/phrase.hpp>
#include <boardmark/core/checks/check.hpp>
#include <boardmark/core/code/code_tables.hpp>

#include "../code/counted_binder.hpp"

#include <string>
#include <vector>

namespace boardmark::core {

/// Adds to a message what other editions of the code say of a class.
void append_other_editions(const ExposureClass& exposure, Phrase& message);

/// Says what of the binder counts in doubt: by which figures, and what would settle it.
void append_counting(const CountedBinder& binder, const BinderRules& rules, Phrase& message);

/// The name for one more argument of its kind. A class may have any name, an argument only letters,
/// digits and underscores.
std::string numbered(const std::string& name, const Phrase& message);

/// "F2, C2"
std::string joined(const std::vector<std::string>& words);

} // namespace boardmark::core
