#pragma once

#include <boardmark/core/basis/phrase.hpp>

#include <string>

namespace boardmark::input {

/// A phrase of core whose arguments are words alone, as the text of a diagnostic.
std::string plain(const core::Phrase& phrase);

} // namespace boardmark::input
