#include <boardmark/core/wall/wall_cover.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

double largest_bar_mm(const Reinforcement& bars) {
    double largest_mm = 0;
    for (const auto* grid : {&bars.vertical, &bars.horizontal}) {
        largest_mm = std::max(largest_mm, *grid ? (*grid)->bar_mm : 0);
    }
    return largest_mm;
}

} // namespace

Check check_cover(const Reinforcement& bars, const CoveredFace& face, const JointTables& joints) {
    const TypicalFigure least = least_cover_mm(face, largest_bar_mm(bars), joints);
    Check check{.id = check_ids::cover_least,
                .verdict = Verdict::not_checked,
                .measure = Measure::length,
                .requirement = "cover at the deepest board joint",
                .source = least.source,
                .message = {"the cover is not stated; the drawings have it", {}}};
    if (!bars.cover_mm) {
        return check;
    }
    const double value = cover_at_relief_mm(*bars.cover_mm, face.relief_mm);
    check.value = value;
    check.limit = Limit{.low = least.value, .high = std::nullopt};
    check.verdict = below(value, least.value) ? Verdict::fails : Verdict::holds;
    check.message = {"cover {cover}, less {relief} of relief: {value}, at least {limit}",
                     {quantity("cover", {*bars.cover_mm, Measure::length}),
                      quantity("relief", {face.relief_mm, Measure::length}),
                      quantity("value", {value, Measure::length}),
                      quantity("limit", {least.value, Measure::length})}};
    return check;
}

Check check_vibrator(const Reinforcement& bars, double thickness_mm, std::optional<double> head_mm,
                     const VibrationRules& rules) {
    const auto room_mm = room_for_vibrator_mm(bars, thickness_mm);
    Check check{.id = check_ids::vibrator_fits,
                .verdict = Verdict::not_checked,
                .measure = Measure::length,
                .requirement = "room for the vibrator head",
                .source = rules.room_for_head_mm.source,
                .message = {"the vibrator's head, the bars or their cover are not stated", {}}};
    if (!head_mm || !room_mm) {
        return check;
    }
    const double asked_mm = *head_mm + rules.room_for_head_mm.value;
    check.value = *room_mm;
    check.limit = Limit{.low = asked_mm, .high = std::nullopt};
    check.verdict = below(*room_mm, *head_mm)   ? Verdict::fails
                    : below(*room_mm, asked_mm) ? Verdict::watch
                                                : Verdict::holds;
    check.message = {
        *room_mm <= 0 ? "the bars do not fit with their cover: no vibrator head fits between them"
        : check.verdict == Verdict::fails
            ? "a vibrator head of {head} does not fit: {value} is clear between the bars"
            : "{value} is clear between the bars for a vibrator head of {head}; with {limit} it "
              "goes straight down",
        {quantity("head", {*head_mm, Measure::length}),
         quantity("value", {*room_mm, Measure::length}),
         quantity("limit", {asked_mm, Measure::length})}};
    return check;
}

} // namespace boardmark::core
