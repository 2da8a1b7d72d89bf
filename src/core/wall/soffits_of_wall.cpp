#include <boardmark/core/basis/tables.hpp>

#include "../basis/tolerance.hpp"
#include "placed_box.hpp"
#include "stripping_checks.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

constexpr double standard_gravity = 9.80665;

/// Whether concrete stands above it anywhere; an opening that reaches the top has no head.
bool has_head(const Opening& opening, const Profile& profile) {
    return std::ranges::any_of(boxes_of(opening, profile), [&](const FaceBox& box) {
        return std::ranges::any_of(over_head(box, profile),
                                   [](const OverHead& over) { return above(over.most_m, 0); });
    });
}

/// Whether the concrete above leans out farther than it stands on what is behind a niche (common
/// practice, no source); the head of a shallower one goes with its face.
bool leans_out(const Opening& opening, const WallRun& run) {
    const double thinnest_mm = std::min(run.thickness_mm, run.bottom_thickness_mm);
    return !opening.depth_mm || above(*opening.depth_mm, thinnest_mm / 2);
}

/// The head with the widest opening below it.
std::optional<Soffit> head_of(const WallRun& run, double density_kg_m3) {
    const Profile profile = profile_of(run);
    const Opening* widest = nullptr;
    for (const Opening& opening : run.openings) {
        const bool wider = !widest || opening.width_mm > widest->width_mm;
        if (leans_out(opening, run) && wider && has_head(opening, profile)) {
            widest = &opening;
        }
    }
    if (!widest) {
        return std::nullopt;
    }
    return Soffit{.part = run.name,
                  .kind = SoffitKind::beam,
                  .span_m = widest->width_mm / 1000,
                  .dead_load_kpa = density_kg_m3 * standard_gravity * greatest_height_m(run) / 1000,
                  .opening = widest->name};
}

bool has_span(const BenchTop& bench) {
    return bench.span_m && *bench.span_m > 0;
}

Soffit underside_of(const BenchTop& bench, double density_kg_m3) {
    return {.part = bench.name,
            .kind = SoffitKind::slab,
            .span_m = has_span(bench) ? bench.span_m : std::nullopt,
            .stands_out = bench.overhang_mm > 0,
            .live_load_kpa = bench.live_load_kpa,
            .dead_load_kpa = density_kg_m3 * standard_gravity * bench.thickness_mm / 1e6};
}

} // namespace

std::vector<Soffit> soffits_of(const Wall& wall, const YoungConcrete& young, const Tables& tables) {
    const double density_kg_m3 =
        std::max(young.pour.fresh_density_kg_m3, tables.forms->assumed_density_kg_m3.value);
    std::vector<Soffit> soffits;
    for (const WallRun& run : wall.runs) {
        if (auto head = head_of(run, density_kg_m3)) {
            soffits.push_back(std::move(*head));
        }
    }
    for (const BenchTop& bench : wall.benches) {
        const bool rests_on_all = bench.span_m && !has_span(bench) && bench.overhang_mm == 0;
        if (!rests_on_all) {
            soffits.push_back(underside_of(bench, density_kg_m3));
        }
    }
    return soffits;
}

} // namespace boardmark::core
