#pragma once

#include <optional>
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
    std::string written = {}; ///< as the file has it: "18 USD/piece of 94 lb"
};

/// A charge for concrete, not for a material.
struct Charge {
    std::string currency; ///< three capital letters
    double per_m3;        ///< ≥ 0
};

/// What the supplier asks for a load of concrete that does not fill the smallest one he sends.
struct Supply {
    double minimum_load_m3;                       ///< > 0
    std::optional<Charge> short_load_charge = {}; ///< for each m3 that is missing
};

} // namespace boardmark::core
