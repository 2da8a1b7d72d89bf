#include <boardmark/report/wall_report.hpp>

#include "json_parts.hpp"
#include "wall_parts.hpp"

namespace boardmark::report {
namespace {

Json json_of(const core::WallRun& run) {
    Json heights = Json::array();
    for (const core::HeightAt& at : run.heights) {
        heights.push_back({{"station_m", at.station_m}, {"height_m", at.height_m}});
    }
    return {{"name", run.name},
            {"length_m", run.length_m},
            {"top", name_of(run.top)},
            {"heights", std::move(heights)},
            {"thickness_mm", run.thickness_mm},
            {"bottom_thickness_mm", run.bottom_thickness_mm},
            {"shows", name_of(run.shows)},
            {"openings", openings_of(run)}};
}

} // namespace

std::string json(const WallResult& result) {
    Json object = json_heading("wall", result.wall.title);
    object["mix"] = result.mix_file;
    object["walls"] = Json::array();
    for (const core::WallRun& run : result.wall.runs) {
        object["walls"].push_back(json_of(run));
    }
    object["checks"] = Json::array();
    object["cautions"] = Json::array();
    return written(object);
}

} // namespace boardmark::report
