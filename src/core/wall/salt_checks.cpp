#include "salt_checks.hpp"

#include <boardmark/core/proportion.hpp>
#include <boardmark/core/salt_at_face.hpp>

#include "wall_checks.hpp"

namespace boardmark::core {
namespace {

void add_cover(const Wall& wall, const std::string& part, const SaltExposure& salt,
               const CoverRules& rules, std::vector<Check>& checks) {
    const SaltyFace face{
        .cover_mm = wall.reinforcement ? wall.reinforcement->cover_mm : std::nullopt,
        .relief_mm = wall.boards ? std::optional{wall.boards->relief_mm} : std::nullopt};
    if (auto check = check_cover_salt(face, salt, rules)) {
        checks.push_back(of_wall(part, std::move(*check)));
    }
}

} // namespace

std::vector<Check> salt_checks(const Wall& wall, const Tables& tables) {
    const Requirements& asked = requirements_of(wall.mix);
    const SaltExposure salt = salt_exposure(asked);
    std::vector<Check> checks;
    if (asked.reinforced) {
        for (const WallRun& run : wall.runs) {
            add_cover(wall, run.name, salt, tables.joints.cover, checks);
        }
        for (const Planter& planter : wall.planters) {
            add_cover(wall, planter.name, salt, tables.joints.cover, checks);
        }
    }
    if (auto check = check_tie_salt(wall, salt, tables)) {
        checks.push_back(std::move(*check));
    }
    return checks;
}

} // namespace boardmark::core
