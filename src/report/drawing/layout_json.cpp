#include "layout_json.hpp"

namespace boardmark::report {
namespace {

Json json_of(const std::vector<core::DrawnPoint>& outline) {
    Json points = Json::array();
    for (const core::DrawnPoint& point : outline) {
        points.push_back({point.x_m, point.z_m});
    }
    return points;
}

Json json_of(const core::LaidBoard& board) {
    return {{"x", board.x_m},
            {"z", board.z_m},
            {"length_m", board.length_m},
            {"width_m", board.width_m},
            {"cut_from_m", board.cut_from_m},
            {"piece", board.piece}};
}

Json json_of(const core::DrawnOpening& opening) {
    return {{"name", opening.name},
            {"x", opening.x_m},
            {"z", opening.z_m},
            {"width_m", opening.width_m},
            {"height_m", opening.height_m},
            {"depth_m", number_or_null(opening.depth_m)},
            {"place_stated", opening.place_stated}};
}

Json json_of(const core::Sliver& sliver) {
    return {{"x", sliver.x_m},
            {"z", sliver.z_m},
            {"length_m", sliver.length_m},
            {"width_m", sliver.width_m}};
}

/// How its boards run; nothing without boards.
Json direction_of(const core::Elevation& elevation) {
    return elevation.boards.empty()
               ? Json(nullptr)
               : Json(elevation.boards.front().stands ? "vertical" : "horizontal");
}

Json json_of(const core::FaceJoint& joint) {
    return {{"x", joint.x_m}, {"kind", core::name_of(joint.kind)}};
}

Json lines_at(const std::vector<double>& heights_m) {
    Json lines = Json::array();
    for (const double height_m : heights_m) {
        lines.push_back({{"z", height_m}});
    }
    return lines;
}

Json json_of(const core::DrawnTie& tie) {
    return {{"x", tie.x_m}, {"z", tie.z_m}, {"load_kn", tie.load_kn}};
}

Json json_of(const core::CutBar& bar) {
    return {{"x", bar.x_m}, {"z", bar.z_m}, {"diameter_m", bar.diameter_m}, {"layer", bar.layer}};
}

Json json_of(const core::StandingBar& bar) {
    return {{"x", bar.x_m},
            {"top_x", bar.top_x_m},
            {"diameter_m", bar.diameter_m},
            {"layer", bar.layer}};
}

Json json_of(const core::SectionTie& tie) {
    return {{"z", tie.z_m}, {"load_kn", tie.load_kn}};
}

Json json_of(const core::PressureAt& point) {
    return {{"z", point.z_m}, {"kpa", point.kpa}};
}

template <class Entries>
Json drawn_list(const Entries& entries) {
    Json list = Json::array();
    for (const auto& entry : entries) {
        list.push_back(json_of(entry));
    }
    return list;
}

Json json_of(const core::Elevation& elevation) {
    return {{"part", elevation.part},
            {"face", core::name_of(elevation.face)},
            {"alike", elevation.alike},
            {"length_m", elevation.length_m},
            {"height_m", elevation.height_m},
            {"outline", json_of(elevation.outline)},
            {"board_direction", direction_of(elevation)},
            {"boards", drawn_list(elevation.boards)},
            {"joints", drawn_list(elevation.joints)},
            {"ties", drawn_list(elevation.ties)},
            {"lifts", lines_at(elevation.lifts_m)},
            {"openings", drawn_list(elevation.openings)},
            {"embedments", Json::array()}, // the file states how many, not where
            {"slivers", drawn_list(elevation.slivers)}};
}

Json json_of(const core::WallSection& section) {
    return {{"part", section.part},
            {"outline", json_of(section.outline)},
            {"footing", json_of(section.footing)},
            {"bars", drawn_list(section.bars)},
            {"standing_bars", drawn_list(section.standing)},
            {"ties", drawn_list(section.ties)},
            {"lifts", lines_at(section.lifts_m)},
            {"pressure", drawn_list(section.pressure)},
            {"form_rating_kpa", number_or_null(section.form_rating_kpa)}};
}

} // namespace

Json json_of(const std::vector<core::Elevation>& elevations) {
    Json list = Json::array();
    for (const core::Elevation& elevation : elevations) {
        list.push_back(json_of(elevation));
    }
    return list;
}

Json json_of(const std::vector<core::WallSection>& sections) {
    Json list = Json::array();
    for (const core::WallSection& section : sections) {
        list.push_back(json_of(section));
    }
    return list;
}

} // namespace boardmark::report
