#include <boardmark/core/mix/kind.hpp>

#include <algorithm>
#include <array>

namespace boardmark::core {
namespace {

constexpr std::array kinds{
    KindName{Kind::portland_cement, "portland cement", Role::binder},
    KindName{Kind::portland_limestone_cement, "portland-limestone cement", Role::binder},
    KindName{Kind::blended_cement, "blended cement", Role::binder},
    KindName{Kind::white_cement, "white cement", Role::binder},
    KindName{Kind::slag_cement, "slag cement", Role::binder},
    KindName{Kind::fly_ash, "fly ash", Role::binder},
    KindName{Kind::silica_fume, "silica fume", Role::binder},
    KindName{Kind::natural_pozzolan, "natural pozzolan", Role::binder},
    KindName{Kind::metakaolin, "metakaolin", Role::binder},
    KindName{Kind::ground_limestone, "ground limestone", Role::binder},
    KindName{Kind::coarse_aggregate, "coarse aggregate", Role::coarse},
    KindName{Kind::fine_aggregate, "fine aggregate", Role::fine},
    KindName{Kind::high_range_water_reducer, "high-range water reducer", Role::admixture},
    KindName{Kind::water_reducer, "water reducer", Role::admixture},
    KindName{Kind::air_entraining_admixture, "air-entraining admixture", Role::admixture},
    KindName{Kind::retarder, "retarder", Role::admixture},
    KindName{Kind::accelerator, "accelerator", Role::admixture},
    KindName{Kind::pigment, "pigment", Role::admixture},
};

constexpr bool stand_in_order() {
    for (std::size_t i = 0; i < kinds.size(); ++i) {
        if (static_cast<std::size_t>(kinds[i].kind) != i) {
            return false;
        }
    }
    return true;
}
static_assert(stand_in_order(), "a kind is looked up by its place");

const KindName& entry(Kind kind) {
    return kinds[static_cast<std::size_t>(kind)];
}

} // namespace

std::span<const KindName> all_kinds() {
    return kinds;
}

bool is_kind(Kind kind) {
    return std::ranges::find(kinds, kind, &KindName::kind) != kinds.end();
}

std::string_view name_of(Kind kind) {
    return entry(kind).name;
}

Role role_of(Kind kind) {
    return entry(kind).role;
}

std::string_view name_of(Role role) {
    switch (role) {
    case Role::water:
        return "water";
    case Role::binder:
        return "binder";
    case Role::coarse:
        return "coarse";
    case Role::fine:
        return "fine";
    case Role::admixture:
        return "admixture";
    case Role::air:
        return "air";
    }
    return "";
}

bool is_cement(Kind kind) {
    return kind == Kind::portland_cement || kind == Kind::portland_limestone_cement ||
           kind == Kind::blended_cement || kind == Kind::white_cement;
}

bool reduces_water(Kind kind) {
    return kind == Kind::high_range_water_reducer || kind == Kind::water_reducer;
}

} // namespace boardmark::core
