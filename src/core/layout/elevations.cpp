#include "../basis/tolerance.hpp"
#include "../wall/placed_box.hpp"
#include "layout_parts.hpp"

#include <algorithm>

namespace boardmark::core {
namespace {

/// The boards of the first of parts that are alike.
std::vector<LaidBoard> boards_on(const LayoutCase& drawn, const Elevation& elevation) {
    const auto& faces = drawn.plan.boards.faces;
    const auto lined = std::ranges::find_if(faces, [&](const LinedFace& face) {
        return face.part == elevation.part && face.face == elevation.face && face.number == 1;
    });
    std::vector<LaidBoard> boards = lined == faces.end() ? std::vector<LaidBoard>{} : lined->boards;
    std::ranges::stable_sort(boards, {}, &LaidBoard::piece);
    return boards;
}

/// What every face has: its boards, slivers and chamfers.
void finish(const LayoutCase& drawn, Elevation& elevation) {
    elevation.boards = boards_on(drawn, elevation);
    elevation.boards_m = drawn.wall.boards ? drawn.wall.boards->course_mm / 1000 : 0;
    elevation.slivers = slivers_of(drawn, elevation);
    const auto& edges = drawn.wall.edges;
    elevation.chamfer_m = edges && edges->kind == EdgeKind::chamfered ? edges->size_mm / 1000 : 0;
}

/// The outline of a run, counter-clockwise from its lower left corner.
std::vector<DrawnPoint> outline_of(const Profile& profile) {
    std::vector<DrawnPoint> outline{{0, 0}, {profile.whole().to_m, 0}};
    const auto add = [&](DrawnPoint point) {
        const DrawnPoint& last = outline.back();
        if (!same(last.x_m, point.x_m) || !same(last.z_m, point.z_m)) {
            outline.push_back(point);
        }
    };
    for (auto stretch = profile.stretches.rbegin(); stretch != profile.stretches.rend();
         ++stretch) {
        add({stretch->to_m, stretch->to_height_m});
        add({stretch->from_m, stretch->from_height_m});
    }
    return outline;
}

std::vector<FaceJoint> joints_on(const LayoutCase& drawn, const WallRun& run) {
    std::vector<FaceJoint> joints;
    for (const double station_m : run_plan_of(drawn.plan, run.name).joints.positions_m) {
        joints.push_back({station_m, FaceJointKind::contraction});
    }
    for (const Corner& corner : run.corners_at) {
        if (above(corner.station_m, 0) && below(corner.station_m, run.length_m)) {
            joints.push_back({corner.station_m, FaceJointKind::corner});
        }
    }
    std::ranges::sort(joints, {}, &FaceJoint::x_m);
    return joints;
}

double tie_load(const FormPressure& pressure, const TiePlace& tie) {
    return tie_load_kn({pressure_at(pressure, tie.deepest_m), tie.area_m2});
}

/// The ties between two stations of a layout, in a face's own x.
struct TieStretch {
    double from_m;
    double to_m;
    double x_of_from_m;
};
std::vector<DrawnTie> ties_on(const LayoutCase& drawn, const std::string& part,
                              const TieStretch& stretch) {
    const FormForces& forces = forces_on(drawn.plan, part);
    std::vector<DrawnTie> ties;
    for (const TiePlace& tie : forces.ties.ties) {
        if (tie.station_m >= stretch.from_m && tie.station_m < stretch.to_m) {
            ties.push_back({tie.station_m - stretch.from_m + stretch.x_of_from_m, tie.height_m,
                            tie_load(governing_pressure(forces), tie)});
        }
    }
    return ties;
}

/// The same face as seen from behind; niches stay at the front.
Elevation behind(const LayoutCase& drawn, Elevation elevation) {
    const double length_m = elevation.length_m;
    elevation.face = Face::back;
    for (DrawnPoint& point : elevation.outline) {
        point.x_m = length_m - point.x_m;
    }
    std::ranges::reverse(elevation.outline); // and its lower left corner comes first again
    std::rotate(elevation.outline.begin(), elevation.outline.end() - 2, elevation.outline.end());
    for (FaceJoint& joint : elevation.joints) {
        joint.x_m = length_m - joint.x_m;
    }
    std::ranges::reverse(elevation.joints);
    for (DrawnTie& tie : elevation.ties) {
        tie.x_m = length_m - tie.x_m;
    }
    std::erase_if(elevation.openings,
                  [](const DrawnOpening& opening) { return opening.depth_m.has_value(); });
    for (DrawnOpening& opening : elevation.openings) {
        opening.x_m = length_m - opening.x_m - opening.width_m;
    }
    finish(drawn, elevation);
    return elevation;
}

} // namespace

std::vector<Elevation> elevations_of(const LayoutCase& drawn, const WallRun& run) {
    const Profile profile = profile_of(run);
    Elevation front{.part = run.name,
                    .face = Face::front,
                    .length_m = run.length_m,
                    .height_m = profile.greatest_height_m};
    front.outline = outline_of(profile);
    front.joints = joints_on(drawn, run);
    front.ties = ties_on(drawn, run.name, {0, run.length_m, 0});
    front.lifts_m = lift_lines_m(drawn.plan, run.name);
    for (const PlacedBox& placed : placed_boxes(run, profile)) {
        const Opening& opening = placed.opening;
        front.openings.push_back(
            {.name = opening.name,
             .x_m = placed.box.from_m,
             .z_m = placed.box.low_m,
             .width_m = placed.box.width_m(),
             .height_m = placed.box.height_m(),
             .depth_m = opening.depth_mm ? std::optional{*opening.depth_mm / 1000} : std::nullopt,
             .place_stated = opening.sill_m && !opening.at_m.empty()});
    }
    std::vector<Elevation> elevations;
    finish(drawn, front);
    elevations.push_back(std::move(front));
    if (run.shows == ShownFaces::both) {
        elevations.push_back(behind(drawn, elevations.front()));
    }
    return elevations;
}

std::vector<Elevation> elevations_of(const LayoutCase& drawn, const Planter& planter) {
    const double thickness_m = planter.thickness_mm / 1000;
    std::vector<Elevation> elevations;
    double outside_m = 0; // stations of joints run round the outside
    double middle_m = 0;  // those of ties round the middle line
    for (const auto& [face, length_m] :
         {std::pair{Face::front, planter.length_m}, std::pair{Face::right, planter.width_m},
          std::pair{Face::back, planter.length_m}, std::pair{Face::left, planter.width_m}}) {
        Elevation elevation{.part = planter.name,
                            .face = face,
                            .length_m = length_m,
                            .height_m = planter.height_m,
                            .alike = planter.count};
        elevation.outline = {
            {0, 0}, {length_m, 0}, {length_m, planter.height_m}, {0, planter.height_m}};
        for (const double station_m : run_plan_of(drawn.plan, planter.name).joints.positions_m) {
            if (above(station_m, outside_m) && below(station_m, outside_m + length_m)) {
                elevation.joints.push_back({station_m - outside_m, FaceJointKind::contraction});
            }
        }
        elevation.ties = ties_on(drawn, planter.name,
                                 {middle_m, middle_m + length_m - thickness_m, thickness_m / 2});
        elevation.lifts_m = lift_lines_m(drawn.plan, planter.name);
        finish(drawn, elevation);
        elevations.push_back(std::move(elevation));
        outside_m += length_m;
        middle_m += length_m - thickness_m;
    }
    return elevations;
}

std::vector<Elevation> elevations_of(const LayoutCase& drawn, const BenchTop& bench) {
    std::vector<Elevation> elevations;
    for (const auto& [face, height_mm] : {std::pair{Face::front, bench.thickness_mm},
                                          std::pair{Face::underside, bench.overhang_mm}}) {
        if (height_mm <= 0) {
            continue;
        }
        const double height_m = height_mm / 1000;
        Elevation elevation{.part = bench.name,
                            .face = face,
                            .length_m = bench.length_m,
                            .height_m = height_m,
                            .alike = bench.count};
        elevation.outline = {
            {0, 0}, {bench.length_m, 0}, {bench.length_m, height_m}, {0, height_m}};
        finish(drawn, elevation);
        elevations.push_back(std::move(elevation));
    }
    return elevations;
}

} // namespace boardmark::core
