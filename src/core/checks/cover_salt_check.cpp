#include <boardmark/core/wall/wall_cover.hpp>

#include "../basis/phrases.hpp"
#include "../basis/tolerance.hpp"
#include "open_salt_check.hpp"
#include "remembered_limit.hpp"

namespace boardmark::core {

Check open_salt_check(CheckId id, const SaltExposure& salt, const Source& source) {
    return {.id = id,
            .verdict = Verdict::not_checked,
            .measure = Measure::length,
            .requirement = salt.by.empty() ? "salt at the face" : "salt at the face, " + salt.by,
            .source = source,
            .message = {"it is not stated whether salt reaches the faces: 'requirements.exposure' "
                        "({classes}) or 'requirements.site' of the mix file",
                        {word("classes", salt.open_classes)}}};
}

std::optional<double> stated_relief_mm(const Wall& wall) {
    return wall.boards && wall.boards->relief_stated ? std::optional{wall.boards->relief_mm}
                                                     : std::nullopt;
}

const char* relief_taken_as_none() {
    return "; no relief is counted, because 'boards.relief' is not stated";
}

std::optional<Check> check_cover_salt(const SaltyFace& face, const SaltExposure& salt,
                                      const CoverRules& rules) {
    if (salt.at_face == SaltAtFace::none) {
        return std::nullopt;
    }
    const TypicalFigure& asked = rules.corrosive_mm;
    Check check = open_salt_check(check_ids::cover_salt, salt, asked.source);
    if (salt.at_face == SaltAtFace::not_stated) {
        return check;
    }
    if (!face.cover_mm) {
        check.message = {"'{key}' is not stated, and salt reaches the faces; the drawings have it",
                         {word("key", face.cover_key)}};
        return check;
    }
    const double relief_mm = face.relief_mm.value_or(0);
    const double value_mm = cover_at_relief_mm(*face.cover_mm, relief_mm);
    const bool little = below(value_mm, asked.value);
    check.value = value_mm;
    check.limit = Limit{.low = asked.value, .high = std::nullopt};
    check.verdict = little || !face.relief_mm ? Verdict::watch : Verdict::holds;
    check.message = {
        little ? "cover {cover}, less {relief} of relief: {value}; where salt reaches the face the "
                 "commentary of the code advises {limit}"
               : "cover {cover}, less {relief} of relief: {value}, at least {limit} where salt "
                 "reaches the face",
        {quantity("cover", {*face.cover_mm, Measure::length}),
         quantity("relief", {relief_mm, Measure::length}),
         quantity("value", {value_mm, Measure::length}),
         quantity("limit", {asked.value, Measure::length})}};
    check.message.text += face.relief_mm ? "" : relief_taken_as_none();
    watch_what_is_from_memory(check);
    return check;
}

} // namespace boardmark::core
