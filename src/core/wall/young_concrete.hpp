#pragma once

#include <boardmark/core/forms/stripping.hpp>
#include <boardmark/core/mix/proportions.hpp>
#include <boardmark/core/wall/wall.hpp>
#include <boardmark/core/wall/wall_plan.hpp>

#include <optional>
#include <vector>

namespace boardmark::core {

/// Air and concrete of a wall after placing, and what its young concrete is made of.
struct YoungConcrete {
    FormCase pour;                       ///< its cement, shares and admixtures
    std::optional<double> concrete_c;    ///< in the form, the colder of both files; where stated
    std::optional<double> placing_air_c; ///< the coldest stated
    std::optional<double> coldest_air_c; ///< of that and the forecast
    bool forecast = false;               ///< stated
    bool is_protected = false;           ///< temperature and end of the protection are stated
    StrippedLift lift;                   ///< its history until long after any rule
    std::optional<Phrase> no_curve = {}; ///< why the curve of strength by age is not its own
    bool strength_comes_slowly = false;  ///< with slag or ash above the shares for rules by time
    bool binder_known = false;           ///< what cementitious materials it holds
};

/// Hours are counted at the temperature held while the wall is protected, then in the coldest air
/// that is stated; the concrete is never taken warmer than it was placed. The heat of the cement
/// is left out.
YoungConcrete young_concrete(const Wall& wall, const Proportions& proportions,
                             const Tables& tables);

/// Why a rule that counts hours alone does not settle it; empty where everything is known and
/// nothing delays the strength.
std::vector<Phrase> doubts_of_time(const YoungConcrete& young, const CuringRules& rules);

} // namespace boardmark::core
