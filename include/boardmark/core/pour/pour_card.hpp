#pragma once

#include <boardmark/core/brief/brief.hpp>
#include <boardmark/core/placing/placing_day.hpp>
#include <boardmark/core/wall/cast_part.hpp>
#include <boardmark/core/wall/wall_plan.hpp>

#include <optional>
#include <string>
#include <vector>

namespace boardmark::core {

/// How fast concrete may rise in a form on the day.
struct HighestRise {
    std::optional<double> m_h = {}; ///< absent: any rate, or not known
    bool any = false;               ///< forms and ties bear the full head
    bool planned = false;           ///< what forms or ties carry is not stated
    Phrase why;
};

/// A part that is placed on the day.
struct PouredPart {
    std::string name;
    int copies = 1;
    double concrete_m3 = 0;             ///< of all copies, net
    const FormForces* forces = nullptr; ///< of the plan; none for footings and benches
    const RunPlan* run = nullptr;       ///< likewise
    HighestRise highest = {};
    std::optional<int> vibrators = {}; ///< at work; absent without a head or a pace
};

/// Values that the fresh concrete is held to; an absent end is open.
struct TestWindow {
    std::optional<double> low = {};
    std::optional<double> asked = {};
    std::optional<double> high = {};
};

/// What the day is held to.
struct PourLimits {
    TestWindow slump_mm;
    TestWindow air_percent;
    TestWindow concrete_c = {};
    std::optional<double> w_cm = {}; ///< the lower of the exposure classes' and the strength's
    TypicalFigure discharge_h;       ///< from batching
    TypicalFigure free_fall_mm;
    TypicalFigure hose_apart_mm;
};

/// A test of the day.
struct PourTest {
    std::string name;
    Phrase when;
    TestWindow asked = {};
    Measure measure = Measure::ratio;
    Phrase note = {}; ///< beside the window; may be empty
};

/// One sheet for the day of placing. Parts point into the plan that it was made from.
struct PourCard {
    std::vector<PouredPart> parts;
    ConcreteOrder order;
    PlacingDay day;
    PourLimits limits;
    std::vector<PourTest> tests;
    std::vector<BriefSection> rules; ///< of the crew
    std::vector<Phrase> stops;       ///< when the crew stops, and then
    std::vector<Phrase> cautions;
    std::vector<Check> checks; ///< of the parts placed, and of the day
    std::vector<Check> mix_checks;
};

/// The card of one part, by its name among cast_parts(), or of everything but the footings, which
/// are placed before. Asserts that the file has the part.
PourCard pour_card(const Wall& wall, const WallPlan& plan, const Tables& tables,
                   const std::string& part = "");

} // namespace boardmark::core
