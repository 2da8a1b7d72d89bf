#include <boardmark/core/method/proportion.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "../checks/open_salt_check.hpp"
#include "cast_part_checks.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// One dimension that the mix was asked for, beside the one that the walls have.
struct SectionSide {
    const char* key;
    const char* what;
    std::optional<double> asked_mm;
    std::optional<double> built_mm = {}; ///< the least that is known
    std::string missing_key = {};        ///< without which the least is not known; empty: it is
    std::string part = {};               ///< that has the least; empty: all have it
};

/// Between bars of one direction, the closest. Nothing where a direction is not stated.
std::optional<double> clear_between_bars_mm(const std::optional<Reinforcement>& bars) {
    if (!bars || !bars->vertical || !bars->horizontal) {
        return std::nullopt;
    }
    return std::min(bars->vertical->spacing_mm - bars->vertical->bar_mm,
                    bars->horizontal->spacing_mm - bars->horizontal->bar_mm);
}

bool states_own_cover(const CastPart& part) {
    return part.kind == CastKind::footing || part.kind == CastKind::bench;
}

/// The key of the wall file that states the cover of a part's bars.
std::string cover_key(const CastPart& part) {
    return part.kind == CastKind::footing ? "footing.cover"
           : part.kind == CastKind::bench ? "benches." + part.name + ".cover"
                                          : "reinforcement.cover";
}

std::optional<double> nominal_cover_mm(const CastPart& part, const Wall& wall) {
    return states_own_cover(part) ? part.cover_mm
           : wall.reinforcement   ? wall.reinforcement->cover_mm
                                  : std::nullopt;
}

/// The cover of all parts at the bottom of the deepest board joint; a footing has no boards.
SectionSide least_cover(const Wall& wall, const std::vector<CastPart>& parts,
                        std::optional<double> asked_mm) {
    SectionSide side{"clear_cover", "cover of the bars at the deepest board joint", asked_mm};
    for (const CastPart& part : parts) {
        const auto nominal_mm = nominal_cover_mm(part, wall);
        if (!nominal_mm) {
            side.missing_key = side.missing_key.empty() ? cover_key(part) : side.missing_key;
            continue;
        }
        const bool lined = part.kind != CastKind::footing;
        const double left_mm = cover_at_relief_mm(*nominal_mm, lined ? relief_of(wall).mm : 0);
        if (!side.built_mm || below(left_mm, *side.built_mm)) {
            side.built_mm = left_mm;
            side.part = part.name;
        }
    }
    return side;
}

/// The key by which the wall file says that there are bars; empty where none does.
std::string key_of_bars(const Wall& wall, const std::vector<CastPart>& parts) {
    if (wall.reinforcement) {
        return "reinforcement";
    }
    const auto covered =
        std::ranges::find_if(parts, [](const CastPart& part) { return part.cover_mm.has_value(); });
    return covered == parts.end() ? "" : cover_key(*covered);
}

void say_side(const SectionSide& side, Check& check) {
    check.value = side.asked_mm;
    check.limit = Limit{.low = std::nullopt, .high = side.built_mm};
    check.message.arguments = {word("key", side.key), word("what", side.what),
                               word("part", side.part),
                               quantity("value", {*side.asked_mm, Measure::length}),
                               quantity("limit", {*side.built_mm, Measure::length})};
}

} // namespace

Check check_section_of_mix(const Wall& wall, const std::vector<CastPart>& parts) {
    const Requirements& asked = requirements_of(wall.mix);
    const CastPart& thinnest = *std::ranges::min_element(parts, {}, &CastPart::thinnest_mm);
    Check check{.id = check_ids::section_agrees,
                .verdict = Verdict::not_checked,
                .measure = Measure::length,
                .requirement = "the mix is for these walls",
                .source = {"common practice, no source", Confidence::common_practice},
                .message = {}};
    const std::string bars = asked.reinforced ? "" : key_of_bars(wall, parts);
    if (!bars.empty()) {
        check.verdict = Verdict::fails;
        check.message = {"the mix is for plain concrete ('requirements.reinforced: no'), and the "
                         "wall file states bars: '{key}'",
                         {word("key", bars)}};
        return check;
    }
    std::vector<SectionSide> sides{{.key = "thickness",
                                    .what = "thinnest part",
                                    .asked_mm = asked.section.thickness_mm,
                                    .built_mm = thinnest.thinnest_mm(),
                                    .part = thinnest.name}};
    if (asked.reinforced) {
        const auto between_mm = clear_between_bars_mm(wall.reinforcement);
        sides.push_back(
            {.key = "clear_bar_spacing",
             .what = "clear spacing of the bars",
             .asked_mm = asked.section.clear_bar_spacing_mm,
             .built_mm = between_mm,
             .missing_key =
                 between_mm ? "" : "reinforcement.vertical', 'reinforcement.horizontal"});
        sides.push_back(least_cover(wall, parts, asked.section.clear_cover_mm));
    }
    for (const SectionSide& side : sides) {
        if (side.asked_mm && side.built_mm && above(*side.asked_mm, *side.built_mm)) {
            check.verdict = Verdict::fails;
            say_side(side, check);
            check.message.text = "the mix is for a section whose {key} is {value}, and its stone "
                                 "was checked against that; the {what} has {limit}";
            check.message.text += side.part.empty() ? "" : ": {part}";
            return check;
        }
    }
    for (const SectionSide& side : sides) {
        if (!side.asked_mm) {
            check.message = {"'requirements.section.{key}' of the mix is not stated",
                             {word("key", side.key)}};
            return check;
        }
        if (!side.missing_key.empty()) {
            check.message = {"the mix is for a {what} that the wall file does not state: '{key}'",
                             {word("key", side.missing_key), word("what", side.what)}};
            return check;
        }
    }
    check.verdict = Verdict::holds;
    say_side(sides.front(), check);
    check.message.text =
        "the mix is for a section of {value}; the thinnest part has {limit}: {part}";
    if (asked.reinforced && !relief_of(wall).stated) {
        check.verdict = Verdict::watch;
        check.message.text += relief_taken_as_none();
    }
    return check;
}

} // namespace boardmark::core
