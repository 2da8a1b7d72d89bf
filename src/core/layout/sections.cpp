#include "../basis/tolerance.hpp"
#include "../wall/profile.hpp"
#include "layout_parts.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// A wall across: its front face is upright, its back may be battered.
struct Slab {
    double height_m;
    double bottom_m; ///< thickness
    double top_m;

    double back_at(double height_above_m) const {
        return bottom_m + (top_m - bottom_m) * height_above_m / height_m;
    }
};

/// Distance of a layer's bars from the face beside it, to their middle.
double middle_of(double cover_m, const std::optional<BarGrid>& outside, const BarGrid& grid) {
    return cover_m + (outside ? outside->bar_mm / 1000 : 0) + grid.bar_mm / 2000;
}

/// Bars along the wall lie outside those that stand (common practice, no source), the lowest half a
/// space above the bottom.
void put_bars(const Slab& slab, const Reinforcement& bars, WallSection& section) {
    if (!bars.cover_mm) {
        return;
    }
    const double cover_m = *bars.cover_mm / 1000;
    const auto x_of = [&](int layer, double from_face_m, double height_m) {
        if (bars.layers == 1) {
            return slab.back_at(height_m) / 2;
        }
        return layer == 1 ? from_face_m : slab.back_at(height_m) - from_face_m;
    };
    for (int layer = 1; layer <= bars.layers; ++layer) {
        if (bars.horizontal) {
            const double space_m = bars.horizontal->spacing_mm / 1000;
            const double from_face_m = middle_of(cover_m, std::nullopt, *bars.horizontal);
            for (int bar = 0; below((bar + 0.5) * space_m, slab.height_m - cover_m); ++bar) {
                const double z_m = (bar + 0.5) * space_m;
                section.bars.push_back(
                    {x_of(layer, from_face_m, z_m), z_m, bars.horizontal->bar_mm / 1000, layer});
            }
        }
        if (bars.vertical) {
            const double from_face_m = middle_of(cover_m, bars.horizontal, *bars.vertical);
            section.standing.push_back({x_of(layer, from_face_m, 0),
                                        x_of(layer, from_face_m, slab.height_m),
                                        bars.vertical->bar_mm / 1000, layer});
        }
    }
}

void put_forces(const LayoutCase& drawn, const std::string& part, WallSection& section) {
    const FormForces& forces = forces_on(drawn.plan, part);
    for (const TieRowLoad& row : forces.tie_rows) {
        section.ties.push_back({row.height_m, row.load_kn});
    }
    for (const EnvelopePoint& point : governing_pressure(forces).envelope) {
        section.pressure.push_back({section.height_m - point.depth_m, point.kpa});
    }
    section.pressure_method = governing_pressure(forces).method;
    section.form_rating_kpa = drawn.wall.placing.form_pressure_kpa;
    section.lifts_m = lift_lines_m(drawn.plan, part);
}

} // namespace

WallSection section_of(const LayoutCase& drawn, const WallRun& run) {
    const Profile profile = profile_of(run);
    const Slab slab{profile.greatest_height_m, profile.bottom_thickness_m, profile.top_thickness_m};
    WallSection section{
        .part = run.name,
        .height_m = slab.height_m,
        .width_m = std::max(slab.bottom_m, slab.top_m),
        .outline = {{0, 0}, {slab.bottom_m, 0}, {slab.top_m, slab.height_m}, {0, slab.height_m}}};
    if (run.footing) {
        const double half_m = run.footing->width_mm / 2000;
        const double middle_m = slab.bottom_m / 2;
        const double depth_m = run.footing->depth_mm / 1000;
        section.footing = {{middle_m - half_m, -depth_m},
                           {middle_m + half_m, -depth_m},
                           {middle_m + half_m, 0},
                           {middle_m - half_m, 0}};
    }
    if (drawn.wall.reinforcement) {
        put_bars(slab, *drawn.wall.reinforcement, section);
    }
    put_forces(drawn, run.name, section);
    return section;
}

WallSection section_of(const LayoutCase& drawn, const Planter& planter) {
    const double thickness_m = planter.thickness_mm / 1000;
    const double floor_m = planter.floor_mm / 1000;
    const double height_m = planter.height_m;
    const double width_m = planter.width_m;
    const Slab slab{height_m, thickness_m, thickness_m};
    WallSection section{
        .part = planter.name,
        .height_m = height_m,
        .width_m = floor_m > 0 ? width_m : thickness_m,
        .outline = {{0, 0}, {thickness_m, 0}, {thickness_m, height_m}, {0, height_m}}};
    if (drawn.wall.reinforcement) {
        put_bars(slab, *drawn.wall.reinforcement, section);
    }
    if (floor_m > 0) {
        const double inside_m = width_m - thickness_m;
        section.outline = {{0, 0},
                           {width_m, 0},
                           {width_m, height_m},
                           {inside_m, height_m},
                           {inside_m, floor_m},
                           {thickness_m, floor_m},
                           {thickness_m, height_m},
                           {0, height_m}};
        for (std::size_t i = 0, count = section.bars.size(); i < count; ++i) {
            CutBar bar = section.bars[i];
            bar.x_m = width_m - bar.x_m;
            section.bars.push_back(bar);
        }
        for (std::size_t i = 0, count = section.standing.size(); i < count; ++i) {
            StandingBar bar = section.standing[i];
            bar.x_m = width_m - bar.x_m;
            bar.top_x_m = width_m - bar.top_x_m;
            section.standing.push_back(bar);
        }
    }
    put_forces(drawn, planter.name, section);
    return section;
}

WallSection section_of(const BenchTop& bench) {
    const double depth_m = bench.depth_mm / 1000;
    const double thickness_m = bench.thickness_mm / 1000;
    return {.part = bench.name,
            .height_m = thickness_m,
            .width_m = depth_m,
            .outline = {{0, 0}, {depth_m, 0}, {depth_m, thickness_m}, {0, thickness_m}}};
}

} // namespace boardmark::core
