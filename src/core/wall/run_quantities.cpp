#include "part_quantities.hpp"
#include "profile.hpp"

#include <algorithm>
#include <cmath>

namespace boardmark::core {
namespace {

/// A vertical piece of wall seen from its end: an end of the run, or the rise of a step.
struct EndFace {
    double low_m;
    double high_m;
};

std::vector<EndFace> end_faces(const Profile& profile) {
    std::vector<EndFace> ends{{0, profile.stretches.front().from_height_m},
                              {0, profile.stretches.back().to_height_m}};
    for (std::size_t next = 1; next < profile.stretches.size(); ++next) {
        const double before_m = profile.stretches[next - 1].to_height_m;
        const double after_m = profile.stretches[next].from_height_m;
        if (before_m != after_m) {
            ends.push_back({std::min(before_m, after_m), std::max(before_m, after_m)});
        }
    }
    return ends;
}

int faces_that_show(const WallRun& run) {
    return run.shows == ShownFaces::both ? 2 : 1;
}

/// How much longer the slanted face of a battered run is than upright.
double slant(const Profile& profile) {
    return std::hypot(1.0, (profile.bottom_thickness_m - profile.top_thickness_m) /
                               profile.greatest_height_m);
}

/// The upright edges of an end for each of its height, on all faces that show.
double edges_upward(const WallRun& run, const Profile& profile) {
    return run.shows == ShownFaces::both ? 1 + slant(profile) : 1;
}

void add_ends(const WallRun& run, const Profile& profile, PartQuantities& part) {
    for (const EndFace& end : end_faces(profile)) {
        const double area_m2 = profile.section_m2(end.high_m) - profile.section_m2(end.low_m);
        part.form_face_m2 += area_m2;
        part.shown_m2 += area_m2;
        part.top_edge_m += profile.thickness_at(end.high_m);
        part.edges_m += edges_upward(run, profile) * (end.high_m - end.low_m);
    }
}

void add_top(const WallRun& run, const Profile& profile, PartQuantities& part) {
    for (const Stretch& stretch : profile.stretches) {
        const double length_m =
            std::hypot(stretch.to_m - stretch.from_m, stretch.to_height_m - stretch.from_height_m);
        const double thickness_m = (profile.thickness_at(stretch.from_height_m) +
                                    profile.thickness_at(stretch.to_height_m)) /
                                   2;
        part.open_top_m2 += length_m * thickness_m;
        part.top_edge_m += faces_that_show(run) * length_m;
    }
}

/// Sides, head and sill of one box-out; one that stands on the footing has no sill. A box that
/// reaches above the top has no head there.
double reveal_m2(const Opening& opening, const Profile& profile, const FaceBox& box) {
    const double head_m = std::min(box.high_m, profile.height_at((box.from_m + box.to_m) / 2));
    const bool has_head = box.high_m < profile.height_at((box.from_m + box.to_m) / 2);
    const double sill_width_m = box.low_m > 0 ? box.width_m() : 0;
    const double head_width_m = has_head ? box.width_m() : 0;
    if (opening.depth_mm) {
        const double upright_m = 2 * std::max(head_m - box.low_m, 0.0);
        return *opening.depth_mm / 1000 * (upright_m + sill_width_m + head_width_m);
    }
    double area_m2 = sill_width_m * profile.thickness_at(box.low_m) +
                     head_width_m * profile.thickness_at(box.high_m);
    for (const double station_m : {box.from_m, box.to_m}) {
        const double top_m = std::min(box.high_m, profile.height_at(station_m));
        area_m2 += std::max(profile.section_m2(top_m) - profile.section_m2(box.low_m), 0.0);
    }
    return area_m2;
}

void add_opening(const WallRun& run, const Opening& opening, const Profile& profile,
                 PartQuantities& part) {
    const bool through = !opening.depth_mm;
    const double slanted = slant(profile);
    for (const FaceBox& box : boxes_of(opening, profile)) {
        const double face_m2 = profile.face_m2(box);
        const double volume_m3 =
            through ? profile.volume_m3(box) : face_m2 * *opening.depth_mm / 1000;
        part.concrete_m3 -= volume_m3;
        part.box_outs_m3 += volume_m3;
        // A niche's back is formed like the face it replaces; a hole has neither face.
        part.form_face_m2 +=
            reveal_m2(opening, profile, box) - (through ? face_m2 * (1 + slanted) : 0);
        const bool in_both = through && run.shows == ShownFaces::both;
        part.shown_m2 -= face_m2 * (in_both ? 1 + slanted : 1);
        const double across_m = box.width_m() * (box.low_m > 0 ? 2 : 1);
        const double upright_m = 2 * box.height_m();
        part.edges_m += across_m + upright_m + (in_both ? across_m + upright_m * slanted : 0);
    }
}

} // namespace

PartQuantities run_quantities(const WallRun& run) {
    const Profile profile = profile_of(run);
    const FaceBox whole = profile.whole();
    const double upright_m2 = profile.face_m2(whole);
    const double both_m2 = upright_m2 * (1 + slant(profile));
    PartQuantities part;
    part.name = run.name;
    part.concrete_m3 = profile.volume_m3(whole);
    part.form_face_m2 = both_m2;
    part.shown_m2 = run.shows == ShownFaces::both ? both_m2 : upright_m2;
    add_ends(run, profile, part);
    add_top(run, profile, part);
    part.edges_m += part.top_edge_m + run.corners * profile.greatest_height_m;
    for (const Opening& opening : run.openings) {
        add_opening(run, opening, profile, part);
    }
    if (run.footing) {
        const double width_m = run.footing->width_mm / 1000;
        const double depth_m = run.footing->depth_mm / 1000;
        part.footing_m3 = width_m * depth_m * run.length_m;
        part.footing_form_m2 = 2 * (run.length_m + width_m) * depth_m;
    }
    return part;
}

} // namespace boardmark::core
