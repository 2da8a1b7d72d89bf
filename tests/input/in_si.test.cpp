// Examples in SI units: what stands in a starter file of SI units comes from the US ones of the key
// table.

#include "input/starter/in_si.hpp"

#include <catch2/catch.hpp>

#include <string>

using boardmark::input::in_si;

TEST_CASE("US quantities of a text become SI ones of two digits") {
    // Factors: NIST SP 811 (2008), Appendix B.8; rounded here by hand.
    const auto [us, si] = GENERATE(table<std::string, std::string>({
        {"slump: 4 in", "slump: 100 mm"}, // 101.6
        {"nominal_max_size: 3/4 in", "nominal_max_size: 19 mm"},
        {"face_width: 5 1/2 in", "face_width: 140 mm"}, // 139.7
        {"saw_cut: 1/8 in", "saw_cut: 3.2 mm"},         // 3.175
        {"length: 12 ft", "length: 3.7 m"},             // 3.6576
        {"corners: {0 ft: 90 deg}", "corners: {0 m: 90 deg}"},
        {"strength: 4500 psi", "strength: 31 MPa"}, // 31.03
        {"admixtures: {reducer: 8 fl oz/cwt, air_agent: as needed}",
         "admixtures: {reducer: 520 mL/100 kg, air_agent: as needed}"}, // 521.6
        {"lowest_air: 28 degF", "lowest_air: -2 degC"},                 // -2.2
        {"live_load: 100 psf", "live_load: 4.8 kPa"},                   // 4.788
        {"window: 6 in to 8 in", "window: 150 mm to 200 mm"},           // 152.4, 203.2
        {"water: 256 lb/yd3", "water: 150 kg/m3"},                      // 151.9
        {"volume: 0.2500 ft3", "volume: 7.1 L"},                        // 7.079
    }));
    INFO(us);
    CHECK(in_si(us) == si);
}

TEST_CASE("what is no US quantity stays as it is") {
    const auto text = GENERATE(as<std::string>{}, "", "w_cm: 0.40", "vertical: {bar: No. 5}",
                               "date: 2026-03-02", "name: T-07", "price: 165 USD/short ton",
                               "sieves: {4.75 mm: 98%}", "code: ACI 318-19", "30 min", "5 inner");
    CHECK(in_si(text) == text);
}
