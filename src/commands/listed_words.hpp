#pragma once

#include <boardmark/input/fields/schema.hpp>

namespace boardmark::commands {

/// The codes, their classes and names of strengths, by the keys under which a file writes them.
input::ListedWords listed_words();

} // namespace boardmark::commands
