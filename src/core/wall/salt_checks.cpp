#include "salt_checks.hpp"

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/method/proportion.hpp>
#include <boardmark/core/wall/cast_part.hpp>
#include <boardmark/core/wall/salt_at_face.hpp>

#include "../checks/open_salt_check.hpp"
#include "behind_niche.hpp"
#include "wall_checks.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// Cover of a part that shows: a bench states its own, runs and planters share that of the bars.
std::optional<double> cover_mm(const Wall& wall, const CastPart& part) {
    return part.kind == CastKind::bench ? part.cover_mm
           : wall.reinforcement         ? wall.reinforcement->cover_mm
                                        : std::nullopt;
}

void add_cover(const Wall& wall, const CastPart& part, const SaltExposure& salt,
               const CoverRules& rules, std::vector<Check>& checks) {
    const bool own = part.kind == CastKind::bench;
    const SaltyFace face{.cover_mm = cover_mm(wall, part),
                         .relief_mm = stated_relief_mm(wall),
                         .cover_key =
                             own ? "benches." + part.name + ".cover" : "reinforcement.cover"};
    if (auto check = check_cover_salt(face, salt, rules)) {
        const auto run = std::ranges::find(wall.runs, part.name, &WallRun::name);
        if (run != wall.runs.end() && wall.reinforcement) {
            hold_cover_behind_niches(*run, *wall.reinforcement, Verdict::watch, *check);
        }
        checks.push_back(of_wall(part.name, std::move(*check)));
    }
}

} // namespace

std::vector<Check> salt_checks(const Wall& wall, const Tables& tables) {
    const Requirements& asked = requirements_of(wall.mix);
    const SaltExposure salt = salt_exposure(asked, tables.code);
    std::vector<Check> checks;
    if (asked.reinforced) {
        for (const CastPart& part : cast_parts(wall)) {
            if (part.kind != CastKind::footing) {
                add_cover(wall, part, salt, tables.joints->cover, checks);
            }
        }
    }
    if (auto check = check_tie_salt(wall, salt, tables)) {
        checks.push_back(std::move(*check));
    }
    return checks;
}

} // namespace boardmark::core
