#pragma once

#include <boardmark/core/basis/phrase.hpp>

#include <vector>

namespace boardmark::core {

/// Well-formed inputs that lead to no result: what is missing and what would settle it.
struct Unresolved {
    Phrase what;
    std::vector<Phrase> ways_out; ///< in the order to try them; never empty
};

} // namespace boardmark::core
