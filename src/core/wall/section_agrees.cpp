#include <boardmark/core/method/proportion.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "cast_part_checks.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// One dimension that the mix was asked for, beside the one that the walls have.
struct SectionSide {
    const char* key;
    const char* what;
    std::optional<double> asked_mm;
    std::optional<double> built_mm;
    const char* built_key;
};

/// Between bars of one direction, the closest. Nothing where a direction is not stated.
std::optional<double> clear_between_bars_mm(const std::optional<Reinforcement>& bars) {
    if (!bars || !bars->vertical || !bars->horizontal) {
        return std::nullopt;
    }
    return std::min(bars->vertical->spacing_mm - bars->vertical->bar_mm,
                    bars->horizontal->spacing_mm - bars->horizontal->bar_mm);
}

std::optional<double> clear_cover_mm(const Wall& wall) {
    return wall.reinforcement ? wall.reinforcement->cover_mm : std::nullopt;
}

void say_side(const SectionSide& side, const CastPart& thinnest, Check& check) {
    check.value = side.asked_mm;
    check.limit = Limit{.low = std::nullopt, .high = side.built_mm};
    check.message.arguments = {word("key", side.key), word("what", side.what),
                               word("part", thinnest.name),
                               quantity("value", {*side.asked_mm, Measure::length}),
                               quantity("limit", {*side.built_mm, Measure::length})};
}

} // namespace

Check check_section_of_mix(const Wall& wall, const std::vector<CastPart>& parts) {
    const Requirements& asked = requirements_of(wall.mix);
    const CastPart& thinnest = *std::ranges::min_element(parts, {}, &CastPart::thinnest_mm);
    std::vector<SectionSide> sides{{"thickness", "thinnest part", asked.section.thickness_mm,
                                    thinnest.thinnest_mm(), "thickness"}};
    if (asked.reinforced) {
        sides.push_back({"clear_bar_spacing", "clear spacing of the bars",
                         asked.section.clear_bar_spacing_mm,
                         clear_between_bars_mm(wall.reinforcement),
                         "reinforcement.vertical', 'reinforcement.horizontal"});
        sides.push_back({"clear_cover", "cover of the bars", asked.section.clear_cover_mm,
                         clear_cover_mm(wall), "reinforcement.cover"});
    }
    Check check{.id = check_ids::section_agrees,
                .verdict = Verdict::not_checked,
                .measure = Measure::length,
                .requirement = "the mix is for these walls",
                .source = {"common practice, no source", Confidence::common_practice},
                .message = {}};
    for (const SectionSide& side : sides) {
        if (side.asked_mm && side.built_mm && above(*side.asked_mm, *side.built_mm)) {
            check.verdict = Verdict::fails;
            say_side(side, thinnest, check);
            check.message.text = "the mix is for a section whose {key} is {value}, and its stone "
                                 "was checked against that; the {what} has {limit}";
            if (&side == &sides.front()) {
                check.message.text += ": {part}";
            }
            return check;
        }
    }
    for (const SectionSide& side : sides) {
        if (!side.asked_mm) {
            check.message = {"'requirements.section.{key}' of the mix is not stated",
                             {word("key", side.key)}};
            return check;
        }
        if (!side.built_mm) {
            check.message = {"the mix is for a {what} that the wall file does not state: '{key}'",
                             {word("key", side.built_key), word("what", side.what)}};
            return check;
        }
    }
    check.verdict = Verdict::holds;
    say_side(sides.front(), thinnest, check);
    check.message.text =
        "the mix is for a section of {value}; the thinnest part has {limit}: {part}";
    return check;
}

} // namespace boardmark::core
