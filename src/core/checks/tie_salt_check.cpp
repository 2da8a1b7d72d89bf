#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/method/proportion.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "open_salt_check.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// What a tie of mild steel needs before the face: the rule's depth, and never less than the bars.
double least_depth_mm(const Wall& wall, const FormFigure& rule) {
    const double cover_mm = wall.reinforcement ? wall.reinforcement->cover_mm.value_or(0) : 0;
    return std::max(cover_mm, rule.value);
}

/// Nothing covers the end of a tie at the face, or at the end of a hole that stays open.
Phrase uncovered(const Ties& ties) {
    if (!ties.cone_mm || *ties.cone_mm == 0) {
        return {ties.cone_mm
                    ? "ties of mild steel end at the face: they rust and stain it; set them "
                      "back {limit} behind the deepest relief and close the holes"
                    : "ties of mild steel, taken to end at the face because 'ties.cone' is not "
                      "stated: they would rust and stain it; {limit} behind the deepest relief and "
                      "a closed hole are required",
                {}};
    }
    return {ties.plug ? "the holes at the ends of the ties stay open: mild steel rusts in them; "
                        "close them, with {limit} from the deepest relief to the end"
                      : "'ties.plug' does not say that the holes at the ends of the mild steel "
                        "ties are closed: in open holes they rust; {limit} from the deepest relief "
                        "to the end is required as well",
            {}};
}

void judge_mild_steel(const Wall& wall, const FormFigure& rule, Check& check) {
    const Ties& ties = *wall.ties;
    const double limit_mm = least_depth_mm(wall, rule);
    const bool closed = ties.plug == true && ties.cone_mm.value_or(0) > 0;
    const auto stated_mm = stated_relief_mm(wall);
    const double relief_mm = stated_mm.value_or(0);
    const double value_mm = closed ? *ties.cone_mm - relief_mm : 0;
    const bool near = below(value_mm, limit_mm);
    const bool cover_open = requirements_of(wall.mix).reinforced &&
                            !(wall.reinforcement && wall.reinforcement->cover_mm);
    check.value = value_mm;
    check.limit = Limit{.low = limit_mm, .high = std::nullopt};
    check.verdict = near || cover_open || !stated_mm ? Verdict::watch : Verdict::holds;
    if (!closed) {
        check.message = uncovered(ties);
    } else {
        check.message = {"ties of mild steel end {cone} behind the face, less {relief} of relief: "
                         "{value}, at least {limit} where salt reaches it",
                         {quantity("cone", {*ties.cone_mm, Measure::length}),
                          quantity("relief", {relief_mm, Measure::length}),
                          quantity("value", {value_mm, Measure::length})}};
        check.message.text +=
            near ? ": set them deeper, or use stainless steel or glass fibre" : "";
        check.message.text += stated_mm ? "" : relief_taken_as_none();
        check.message.text += cover_open ? "; they must not come nearer to the face than the bars "
                                           "either, and 'reinforcement.cover' is not stated"
                                         : "";
    }
    check.message.arguments.push_back(quantity("limit", {limit_mm, Measure::length}));
}

} // namespace

std::optional<Check> check_tie_salt(const Wall& wall, const SaltExposure& salt,
                                    const Tables& tables) {
    if (salt.at_face == SaltAtFace::none) {
        return std::nullopt;
    }
    const FormFigure& rule = tables.forms->mild_steel_from_face_mm;
    Check check = open_salt_check(check_ids::ties_salt, salt, rule.source);
    if (!wall.ties) {
        check.message = {
            "'ties.kind' is not stated: what the ties are made of decides whether they rust", {}};
        return check;
    }
    if (wall.ties->kind != TieKind::mild_steel) {
        check.verdict = Verdict::holds;
        check.message = {wall.ties->kind == TieKind::stainless_steel
                             ? "ties of stainless steel, which need no cover against rust"
                             : "ties of glass fibre, which do not rust",
                         {}};
        return check;
    }
    if (salt.at_face == SaltAtFace::reaches) {
        judge_mild_steel(wall, rule, check);
    }
    return check;
}

} // namespace boardmark::core
