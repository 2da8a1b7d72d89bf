#pragma once

#include <string>

namespace boardmark::core {

/// How well a published figure is known to this project.
enum class Confidence {
    read,            ///< read in at least one copy of the work or of a work that reprints it
    from_memory,     ///< of the named work, not read again
    common_practice, ///< a rule of the trade, no source
};

/// Where a number or a rule comes from.
struct Source {
    std::string citation; ///< "ACI 318-19 Table 19.3.2.1"; empty for plain arithmetic
    Confidence confidence = Confidence::read;
};

} // namespace boardmark::core
