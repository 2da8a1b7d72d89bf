#pragma once

// What the tests of codes share: a submitted mix that is held against any of them.

#include <boardmark/report/writing/words.hpp>

#include "as_printed.hpp"

#include <fmt/format.h>

namespace boardmark::test {

/// A submitted mix of 1 m3 with no chloride, whose parts the tests change.
struct HeldMix {
    std::string code = "EN 206";
    std::string exposure = "XC4";
    std::string strength = "60 MPa";
    double water_kg = 150;
    double cement_kg = 400;
    double ash_kg = 0;
    double slag_kg = 0;
    double fume_kg = 0;
    double air_percent = 6;
    std::string size = "20 mm";
    std::string cement_standard = "EN 197-1 CEM I 42.5 N";
    std::string cement_kind = "portland cement";
    std::string more = ""; ///< further requirements, each with a comma before it
};

inline std::string text_of(const HeldMix& mix) {
    return fmt::format(R"(boardmark: 1
title: codes
reporting: si
requirements: {{code: {}, exposure: [{}], strength: {}, slump: 100 mm{}}}
materials:
  cement: {{kind: {}, standard: {}, chloride: 0 %}}
  ash: {{kind: fly ash, standard: EN 450-1 N, chloride: 0 %}}
  slag: {{kind: slag cement, standard: EN 15167-1, chloride: 0 %}}
  fume: {{kind: silica fume, standard: EN 13263-1, chloride: 0 %}}
  stone: {{kind: coarse aggregate, nominal_max_size: {}, chloride: 0 %}}
  sand: {{kind: fine aggregate, chloride: 0 %}}
proportions: {{volume: 1 m3, water: {} kg, cement: {} kg, ash: {} kg, slag: {} kg, fume: {} kg, air: {} %, stone: 1000 kg, sand: 700 kg}}
)",
                       mix.code, mix.exposure, mix.strength, mix.more, mix.cement_kind,
                       mix.cement_standard, mix.size, mix.water_kg, mix.cement_kg, mix.ash_kg,
                       mix.slag_kg, mix.fume_kg, mix.air_percent);
}

inline Solved hold(const HeldMix& mix) {
    return solve(text_of(mix), input::Purpose::check);
}

/// The bounds of a check, or 0 where there is no such check.
inline double most_of(const Solved& mix, const std::string& id) {
    const core::Check* check = mix.check(id);
    return check && check->limit ? check->limit->high.value_or(0) : 0;
}
inline double least_of(const Solved& mix, const std::string& id) {
    const core::Check* check = mix.check(id);
    return check && check->limit ? check->limit->low.value_or(0) : 0;
}

} // namespace boardmark::test
