// Rules of the trade that only advise: common practice, no source, but for the slump up to which
// the formulas of form pressure hold, ACI 347R-14 (read in a trade article).

#include "as_printed.hpp"

#include <catch2/catch.hpp>
#include <fmt/format.h>

using namespace boardmark;
using namespace boardmark::test;
using core::Verdict;

namespace {

bool has_caution(const Solved& mix, const std::string& words) {
    return std::ranges::any_of(
        mix.proportions.worksheet.cautions,
        [&](const core::Phrase& caution) { return caution.text.find(words) != std::string::npos; });
}

/// A submitted mix in a few words.
struct Submittal {
    std::string reporting = "us";
    std::string slump = "75 mm";
    std::string amounts = "volume: 1 m3, water: 170 kg, cement: 380 kg";
    std::string size = "19 mm";
    double air_percent = 2;
};

Solved submitted(const Submittal& submittal) {
    return solve(fmt::format(R"(boardmark: 1
title: practice
reporting: {}
requirements: {{strength: 30 MPa, slump: {}}}
materials:
  cement: {{kind: portland cement}}
  stone: {{kind: coarse aggregate, nominal_max_size: {}}}
proportions: {{{}, air: {} %}}
)",
                             submittal.reporting, submittal.slump, submittal.size,
                             submittal.amounts, submittal.air_percent),
                 input::Purpose::check);
}

} // namespace

TEST_CASE("much cementitious material deserves a look for its heat") {
    // Common practice, no source: above 660 lb/yd3 (390 kg/m3)
    const auto [reporting, amounts, verdict] = GENERATE(table<std::string, std::string, Verdict>({
        {"us", "volume: 1 yd3, water: 280 lb, cement: 660 lb", Verdict::holds},
        {"us", "volume: 1 yd3, water: 280 lb, cement: 660.5 lb", Verdict::watch},
        {"si", "volume: 1 m3, water: 170 kg, cement: 390 kg", Verdict::holds},
        {"si", "volume: 1 m3, water: 170 kg, cement: 390.5 kg", Verdict::watch},
    }));
    INFO(amounts);
    CHECK(submitted({.reporting = reporting, .amounts = amounts}).check("binder.heat")->verdict ==
          verdict);
}

TEST_CASE("slump above which form pressure is the full liquid head") {
    // ACI 347R-14, validity of the wall formulas: slump not above 7 in (175 mm)
    const auto [reporting, slump, cautioned] = GENERATE(table<std::string, std::string, bool>({
        {"us", "7 in", false},
        {"us", "7.5 in", true},
        {"si", "175 mm", false},
        {"si", "175.5 mm", true},
    }));
    INFO(slump);
    const Solved mix = submitted({.reporting = reporting, .slump = slump});
    CHECK(has_caution(mix, "full liquid head") == cautioned);
}

TEST_CASE("air one point above the entrapped is entrained") {
    // Entrapped air: ACI 211.1-91 Table 6.3.3, 2 % at 3/4 in (19 mm) and 1 % at 1 1/2 in (37.5 mm);
    // the margin of one point is common practice, no source
    const auto [size, percent, entrained] = GENERATE(table<std::string, double, bool>({
        {"3/4 in", 2.0, false},
        {"3/4 in", 2.9, false},
        {"3/4 in", 3.0, true},
        {"19 mm", 2.9, false},
        {"19 mm", 3.0, true},
        {"1 1/2 in", 1.9, false},
        {"37.5 mm", 2.0, true},
    }));
    const std::string reporting = GENERATE("us", "si");
    CAPTURE(reporting, size, percent);
    const Solved mix = submitted({.reporting = reporting, .size = size, .air_percent = percent});
    CHECK(mix.proportions.selection.air_entrained == entrained);
}
