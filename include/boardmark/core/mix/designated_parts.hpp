#pragma once

#include <boardmark/core/mix/material.hpp>

#include <string>
#include <vector>

namespace boardmark::core {

/// What the designation of a blended cement says that it holds beside portland cement.
struct DesignatedPart {
    char letter; ///< 'S' slag, 'P' pozzolan, 'L' limestone
    double percent;
};

/// Of ASTM C595: "IS(60)", "IP(25)(MS)", "IT(S25)(L10)"; whole percents. Empty where it names none.
std::vector<DesignatedPart> designated_parts(const std::string& standard);

/// How much of it `contains` states, percent.
double contained_percent(const Material& cement, char letter);

} // namespace boardmark::core
