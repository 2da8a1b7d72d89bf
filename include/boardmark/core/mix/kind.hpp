#pragma once

#include <span>
#include <string_view>

namespace boardmark::core {

/// What a material is; the words of the mix file's `kind`.
enum class Kind {
    portland_cement,
    portland_limestone_cement,
    blended_cement,
    white_cement,
    slag_cement,
    fly_ash,
    silica_fume,
    natural_pozzolan,
    metakaolin,
    ground_limestone,
    coarse_aggregate,
    fine_aggregate,
    high_range_water_reducer,
    water_reducer,
    air_entraining_admixture,
    retarder,
    accelerator,
    pigment,
};

/// The part an ingredient plays in the concrete.
enum class Role { water, binder, coarse, fine, admixture, air };

struct KindName {
    Kind kind;
    std::string_view name; ///< "portland cement"
    Role role;
};

/// Every kind with its name and role.
std::span<const KindName> all_kinds();

/// Whether a value is one of the kinds: a number that was cast to one may be none.
bool is_kind(Kind kind);

std::string_view name_of(Kind kind);
std::string_view name_of(Role role);
Role role_of(Kind kind);

/// Portland cement in the sense of the codes: portland, portland-limestone, blended or white.
bool is_cement(Kind kind);

/// A water reducer of either range.
bool reduces_water(Kind kind);

} // namespace boardmark::core
