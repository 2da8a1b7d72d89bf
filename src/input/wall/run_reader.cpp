#include <boardmark/core/wall/run_shape.hpp>
#include <boardmark/core/wall/wall_contradictions.hpp>

#include "wall_sections.hpp"

#include <algorithm>

namespace boardmark::input {
namespace {

/// One run of wall that is being read.
struct RunReader {
    const Section& section;
    core::WallRun run;

    void read() {
        section.demand({"length", "height", "thickness"});
        run.length_m = section.metres("length").value_or(0);
        run.thickness_mm = section.number("thickness").value_or(0);
        read_corners(section, run);
        run.shows =
            section.text("shows") == "both faces" ? core::ShownFaces::both : core::ShownFaces::one;
        read_batter();
        read_heights();
        read_footing();
        run.output_m3_h = section.number("output");
        run.openings = read_openings(section.below("openings"), run);
    }

    void read_batter() {
        const auto bottom = section.number("bottom_thickness");
        run.bottom_thickness_mm = bottom.value_or(run.thickness_mm);
        if (bottom && core::is_thinner_at_foot(run)) {
            section.refuse("bottom_thickness",
                           ": a wall cannot be thinner at its foot than at its top",
                           "'thickness' is that of the top; exchange the two");
        }
    }

    void read_heights() {
        const Reading* height = section.find("height");
        if (!height || !height->sound) {
            return;
        }
        const auto top = section.text("top");
        run.top = top == "stepped"   ? core::Top::stepped
                  : top == "sloping" ? core::Top::sloping
                                     : core::Top::level;
        const bool by_station = !height->value;
        if (!by_station) {
            read_one_height();
        } else if (run.top == core::Top::level && (top || !section.has("top"))) {
            section.context().refuse(*height->key,
                                     dotted(section.path("height")) +
                                         ": heights by station need 'top', which says how one "
                                         "height changes to the next",
                                     "add 'top: stepped' or 'top: sloping'");
        } else if (run.top != core::Top::level) {
            read_heights_by_station(*height);
        }
    }

    void read_one_height() {
        if (run.top != core::Top::level) {
            section.refuse("top", ": a single height has neither steps nor a slope",
                           "give heights by station, as in 'height: {0 ft: 6 ft, 12 ft: 4 ft}', or "
                           "delete 'top'");
        }
        run.top = core::Top::level;
        run.heights = {{.station_m = 0, .height_m = *section.metres("height")}};
    }

    void read_heights_by_station(const Reading& height) {
        const std::string place = dotted(section.path("height"));
        if (height.pairs.size() < 2) {
            section.context().refuse(*height.key, place + " has a single station",
                                     "write one height without its station, and no 'top'");
        }
        for (const Pair& pair : height.pairs) {
            const double station_m = pair.key.number / 1000;
            if (run.heights.empty() && station_m > 0) {
                section.context().refuse(
                    *pair.key.node,
                    place +
                        ": the first station is not 0; the height where the run begins is missing",
                    "begin with '0 ft' or '0 m'");
            } else if (!run.heights.empty() && station_m <= run.heights.back().station_m) {
                section.context().refuse(*pair.key.node, place + ": the stations do not increase",
                                         "write them from the beginning of the run to its end");
            }
            refuse_beyond_end(pair, place);
            run.heights.push_back({.station_m = station_m, .height_m = pair.value.number / 1000});
        }
    }

    /// A step at the very end has no length; a slope may end there.
    void refuse_beyond_end(const Pair& pair, const std::string& place) const {
        const double station_m = pair.key.number / 1000;
        const double last_m =
            run.length_m +
            (run.top == core::Top::sloping ? core::shape_tolerance_m : -core::shape_tolerance_m);
        if (run.length_m > 0 && station_m > last_m) {
            section.context().refuse(
                *pair.key.node,
                place + ": station " + pair.key.text +
                    (station_m > run.length_m + core::shape_tolerance_m ? " lies beyond"
                                                                        : " lies at") +
                    " the end of the run, which is " + *section.text("length") + " long",
                run.top == core::Top::stepped ? "the last step begins before the end"
                                              : "the slope ends at the end of the run");
        }
    }

    void read_footing() {
        const Section footing = section.below("footing");
        if (!footing.stands()) {
            return;
        }
        footing.demand({"width", "depth"});
        run.footing = core::Footing{.width_mm = footing.number("width").value_or(0),
                                    .depth_mm = footing.number("depth").value_or(0),
                                    .cover_mm = footing.number("cover")};
        if (footing.number("width") && core::is_narrower_than_wall(*run.footing, run)) {
            footing.refuse("width", " is below the wall's thickness",
                           "a footing is at least as wide as what stands on it");
        }
    }
};

} // namespace

std::vector<core::WallRun> read_runs(const FileContext& context) {
    const Section walls{context, {"walls"}};
    std::vector<core::WallRun> runs;
    if (walls.stands() && walls.names().empty() &&
        context.document.find({"walls"})->node->entries.empty()) {
        context.refuse(*context.document.find({"walls"})->key, "walls: no wall is described",
                       context.add_example({"walls", "*"}));
    }
    for (const std::string_view name : walls.names()) {
        const Section section = walls.below(name);
        if (section.stands()) {
            RunReader reader{section, core::WallRun{.name = std::string{name},
                                                    .length_m = 0,
                                                    .heights = {},
                                                    .thickness_mm = 0,
                                                    .bottom_thickness_mm = 0}};
            reader.read();
            runs.push_back(std::move(reader.run));
        }
    }
    return runs;
}

} // namespace boardmark::input
