#pragma once

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/pour/pour_card.hpp>

namespace boardmark::core {

/// What the card is written from.
struct PourCase {
    const Wall& wall;
    const WallPlan& plan;
    const Requirements& asked;
    const Tables& tables;
    const PourCard& card; ///< as far as it is made
};

/// Parts of the day, in the order of placing.
std::vector<PouredPart> poured_parts(const Wall& wall, const WallPlan& plan,
                                     const std::string& part);

/// What they are filled with, lift by lift.
std::vector<UnloadedPart> filled_parts(const std::vector<PouredPart>& parts, const Wall& wall,
                                       const Tables& tables);

/// Gives every part its vibrators, by the quickest of its lifts.
void add_vibrators(const std::vector<UnloadedPart>& filled, std::vector<PouredPart>& parts);

PourLimits pour_limits(const PourCase& pour);
std::vector<PourTest> pour_tests(const PourCase& pour);
std::vector<Phrase> pour_stops(const PourCase& pour);

BriefSection pour_water(const PourCase& pour);
BriefSection pour_hose(const PourCase& pour);
BriefSection pour_after(const PourCase& pour);
std::vector<Phrase> pour_cautions(const PourCase& pour);

} // namespace boardmark::core
