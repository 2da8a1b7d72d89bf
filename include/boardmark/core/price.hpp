#pragma once

#include <string>

namespace boardmark::core {

/// What a price counts by.
enum class PriceBasis {
    mass,   ///< per kg of the material as delivered
    volume, ///< per m3 of it
};

struct Price {
    std::string currency; ///< three capital letters, "USD"
    double amount;        ///< ≥ 0, for one kg or one m3
    PriceBasis basis;
};

} // namespace boardmark::core
