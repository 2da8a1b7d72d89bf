#include "wall_sections.hpp"

#include <algorithm>

namespace boardmark::input {
namespace {

core::Planter read_planter(const Section& section, std::string_view name) {
    section.demand({"length", "width", "height", "thickness"});
    core::Planter planter{.name = std::string{name},
                          .length_m = section.metres("length").value_or(0),
                          .width_m = section.metres("width").value_or(0),
                          .height_m = section.metres("height").value_or(0),
                          .thickness_mm = section.number("thickness").value_or(0),
                          .floor_mm = section.number("floor").value_or(0),
                          .count = section.count("count", 1),
                          .output_m3_h = section.number("output")};
    for (const char* across : {"length", "width"}) {
        const auto outside_mm = section.number(across);
        if (outside_mm && *outside_mm <= 2 * planter.thickness_mm) {
            section.refuse("thickness",
                           std::string{": two walls of it leave no room for soil in the "} + across,
                           "check it against the outside " + std::string{across});
        }
    }
    const auto height_mm = section.number("height");
    if (height_mm && planter.floor_mm >= *height_mm) {
        section.refuse("floor", " is not below the planter's height",
                       "the height is the outside one, with the floor");
    }
    return planter;
}

core::BenchTop read_bench(const Section& section, std::string_view name) {
    section.demand({"length", "depth", "thickness"});
    const auto depth_mm = section.number("depth");
    constexpr double kpa_in_mpa = 1000;
    const auto live_load_mpa = section.number("live_load");
    const core::BenchTop bench{
        .name = std::string{name},
        .length_m = section.metres("length").value_or(0),
        .depth_mm = depth_mm.value_or(0),
        .thickness_mm = section.number("thickness").value_or(0),
        .overhang_mm = section.number("overhang").value_or(0),
        .span_m = section.metres("span"),
        .live_load_kpa = live_load_mpa ? std::optional{kpa_in_mpa * *live_load_mpa} : std::nullopt,
        .count = section.count("count", 1),
        .cover_mm = section.number("cover")};
    if (bench.length_m > 0 && bench.span_m.value_or(0) > bench.length_m) {
        section.refuse("span", " is more than the bench's length",
                       "it is clear, from support to support");
    }
    if (depth_mm && bench.overhang_mm > *depth_mm) {
        section.refuse("overhang", " is more than the bench's depth",
                       "it is the part of the depth that overhangs");
    }
    return bench;
}

/// Checks and stations are told by the names of parts, so no two may share one.
void refuse_name_of_another(const FileContext& context, const Path& path) {
    for (const char* kind : {"walls", "planters", "benches"}) {
        if (kind == path[0]) {
            return;
        }
        const Path other{kind, path.back()};
        if (context.document.find(other)) {
            context.refuse(*context.document.find(path)->key,
                           dotted(path) + ": '" + dotted(other) + "' has this name already",
                           "give each part a name of its own; results name parts by it");
            return;
        }
    }
}

/// The footing of a run is a part too, named after it.
void refuse_name_of_a_footing(const FileContext& context, const core::WallWork& wall) {
    for (const core::WallRun& run : wall.runs) {
        const std::string footing = "footing of " + run.name;
        for (const char* kind : {"walls", "planters", "benches"}) {
            const Path path{kind, footing};
            if (const auto* named = run.footing ? context.document.find(path) : nullptr) {
                context.refuse(*named->key,
                               dotted(path) + ": the footing of '" + run.name +
                                   "' has this name already",
                               "give each part a name of its own; results name parts by it");
            }
        }
    }
}

} // namespace

void read_parts(const FileContext& context, core::WallWork& wall) {
    const Section planters{context, {"planters"}};
    for (const std::string_view name : planters.names()) {
        if (planters.below(name).stands()) {
            refuse_name_of_another(context, {"planters", name});
            wall.planters.push_back(read_planter(planters.below(name), name));
        }
    }
    const Section benches{context, {"benches"}};
    for (const std::string_view name : benches.names()) {
        if (benches.below(name).stands()) {
            refuse_name_of_another(context, {"benches", name});
            wall.benches.push_back(read_bench(benches.below(name), name));
        }
    }
    refuse_name_of_a_footing(context, wall);
    const Section embedments{context, {"embedments"}};
    for (const std::string_view name : embedments.names()) {
        if (embedments.below(name).stands()) {
            embedments.below(name).demand({"count"});
            wall.embedments.push_back(
                {std::string{name}, embedments.below(name).count("count", 0)});
        }
    }
}

} // namespace boardmark::input
