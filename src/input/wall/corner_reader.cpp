#include <boardmark/core/wall/run_shape.hpp>

#include "wall_sections.hpp"

namespace boardmark::input {

void read_corners(const Section& section, core::WallRun& run) {
    run.corners = section.count("corners", 0);
    const Reading* corners = section.find("corners");
    if (!corners || !corners->sound) {
        return;
    }
    const std::string place = dotted(section.path("corners"));
    for (const Pair& pair : corners->pairs) {
        const double station_m = pair.key.number / 1000;
        if (!run.corners_at.empty() && station_m <= run.corners_at.back().station_m) {
            section.context().refuse(*pair.key.node, place + ": the stations do not increase",
                                     "write them from the beginning of the run to its end");
        }
        if (run.length_m > 0 && station_m > run.length_m + core::shape_tolerance_m) {
            section.context().refuse(*pair.key.node,
                                     place + ": station " + pair.key.text +
                                         " lies beyond the end of the run, which is " +
                                         *section.text("length") + " long",
                                     "stations are measured along the run, round its bends");
        }
        run.corners_at.push_back({.station_m = station_m, .turn_deg = pair.value.number});
    }
    if (!corners->value) {
        run.corners = static_cast<int>(run.corners_at.size());
    }
}

} // namespace boardmark::input
