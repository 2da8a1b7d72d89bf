#include "wall_fields.hpp"

#include "field_values.hpp"

#include <vector>

namespace boardmark::input {
namespace {

using units::Dimension;

constexpr std::string_view systems[] = {"us", "si"};
constexpr std::string_view tops[] = {"level", "stepped", "sloping"};
constexpr std::string_view faces[] = {"one face", "both faces"};

constexpr Range height_mm{.low = 100, .high = 30e3};
constexpr Range thickness_mm{.low = 50, .high = 3e3};
constexpr Range station_mm{.low = 0, .high = 1e6};
constexpr Range length_mm{.low = 300, .high = 1e6};
constexpr Range part_mm{.low = 10, .high = 100e3};
constexpr Range pieces{.low = 1, .high = 1000};

constexpr Value length(Range range) {
    return quantity(Dimension::length, range);
}

constexpr Field fields[] = {
    {.path = "boardmark",
     .value = text(),
     .example = "boardmark: 1",
     .meaning = "version of this format",
     .required = true},
    {.path = "title",
     .value = text(),
     .example = "title: Quay terrace, retaining wall and planter",
     .meaning = "whose walls these are",
     .required = true},
    {.path = "mix",
     .value = text(),
     .example = "mix: flowing-wall.yaml",
     .meaning = "the mix file of the concrete, relative to this file",
     .required = true},
    {.path = "reporting",
     .value = one_of(systems),
     .example = "reporting: us",
     .meaning = "units of the text; those of the mix file where left out"},

    {.path = "walls",
     .shape = Shape::section,
     .example = "walls: {retaining wall: {length: 60 ft, height: 6 ft, thickness: 12 in}}",
     .meaning = "runs of wall, each by a name of your own",
     .required = true},
    {.path = "walls.*",
     .shape = Shape::section,
     .example = "retaining wall: {length: 60 ft, height: 6 ft, thickness: 12 in}",
     .meaning = "one run, straight or bent"},
    {.path = "walls.*.length",
     .value = length(length_mm),
     .example = "length: 60 ft",
     .meaning = "along the run",
     .required = true},
    {.path = "walls.*.height",
     .shape = Shape::value_or_table,
     .value = length(height_mm),
     .key = length(station_mm),
     .example = "height: 6 ft",
     .meaning = "above the footing; or heights by station along the run: {0 ft: 6 ft, 12 ft: 4 ft}",
     .required = true},
    {.path = "walls.*.top",
     .value = one_of(tops),
     .example = "top: stepped",
     .default_text = "level",
     .meaning = "how it goes from station to station: 'stepped' holds a height up to the next "
                "station, 'sloping' goes straight to it"},
    {.path = "walls.*.thickness",
     .value = length(thickness_mm),
     .example = "thickness: 12 in",
     .meaning = "thickness; of a battered wall that at its top, where it is highest",
     .required = true},
    {.path = "walls.*.bottom_thickness",
     .value = length(thickness_mm),
     .example = "bottom_thickness: 16 in",
     .meaning = "of a battered wall, at the footing; the thickness where left out"},
    {.path = "walls.*.shows",
     .value = one_of(faces),
     .example = "shows: both faces",
     .default_text = "one face",
     .meaning = "how many of its faces show, and carry the print of the boards"},
    {.path = "walls.*.corners",
     .value = count({.low = 0, .high = 100}),
     .example = "corners: 1",
     .default_text = "0",
     .meaning = "bends of the run"},
    {.path = "walls.*.footing",
     .shape = Shape::section,
     .example = "footing: {width: 4 ft, depth: 12 in}",
     .meaning = "strip below the run, where its concrete counts"},
    {.path = "walls.*.footing.width",
     .value = length({.low = 100, .high = 20e3}),
     .example = "width: 4 ft",
     .meaning = "across the run",
     .required = true},
    {.path = "walls.*.footing.depth",
     .value = length({.low = 50, .high = 5e3}),
     .example = "depth: 12 in",
     .meaning = "from its underside to its top",
     .required = true},
    {.path = "walls.*.openings",
     .shape = Shape::section,
     .example = "openings: {lamp niche: {width: 18 in, height: 12 in, depth: 6 in}}",
     .meaning = "box-outs of the run, each by a name of your own"},
    {.path = "walls.*.openings.*",
     .shape = Shape::section,
     .example = "lamp niche: {width: 18 in, height: 12 in, depth: 6 in, sill: 3 ft, at: [12 ft]}",
     .meaning = "a niche, or an opening through the wall"},
    {.path = "walls.*.openings.*.width",
     .value = length(part_mm),
     .example = "width: 18 in",
     .meaning = "along the run",
     .required = true},
    {.path = "walls.*.openings.*.height",
     .value = length(part_mm),
     .example = "height: 12 in",
     .meaning = "from its lower to its upper edge",
     .required = true},
    {.path = "walls.*.openings.*.depth",
     .value = length({.low = 5, .high = 3e3}),
     .example = "depth: 6 in",
     .meaning = "of a niche, from the face; left out where it goes through the wall"},
    {.path = "walls.*.openings.*.sill",
     .value = length({.low = 0, .high = 30e3}),
     .example = "sill: 3 ft",
     .meaning = "of its lower edge above the footing"},
    {.path = "walls.*.openings.*.at",
     .shape = Shape::list,
     .value = length(station_mm),
     .example = "at: [12 ft, 30 ft, 48 ft]",
     .meaning = "stations of the left edges of all that are alike"},
    {.path = "walls.*.openings.*.count",
     .value = count(pieces),
     .example = "count: 3",
     .default_text = "1",
     .meaning = "how many are alike, where their stations are not known yet"},

    {.path = "planters",
     .shape = Shape::section,
     .example =
         "planters: {corner planter: {length: 12 ft, width: 5 ft, height: 2 ft, thickness: 8 in}}",
     .meaning = "boxes of four walls, each by a name of your own"},
    {.path = "planters.*",
     .shape = Shape::section,
     .example = "corner planter: {length: 12 ft, width: 5 ft, height: 2 ft, thickness: 8 in}",
     .meaning = "one kind of planter; its outer faces show"},
    {.path = "planters.*.length",
     .value = length(length_mm),
     .example = "length: 12 ft",
     .meaning = "outside",
     .required = true},
    {.path = "planters.*.width",
     .value = length(length_mm),
     .example = "width: 5 ft",
     .meaning = "outside",
     .required = true},
    {.path = "planters.*.height",
     .value = length(height_mm),
     .example = "height: 2 ft",
     .meaning = "outside, with its floor",
     .required = true},
    {.path = "planters.*.thickness",
     .value = length({.low = 50, .high = 1e3}),
     .example = "thickness: 8 in",
     .meaning = "of its walls",
     .required = true},
    {.path = "planters.*.floor",
     .value = length({.low = 0, .high = 1e3}),
     .example = "floor: 6 in",
     .default_text = "0 in",
     .meaning = "thickness of its floor; none: open to the ground"},
    {.path = "planters.*.count",
     .value = count(pieces),
     .example = "count: 2",
     .default_text = "1",
     .meaning = "how many are alike"},

    {.path = "benches",
     .shape = Shape::section,
     .example = "benches: {long bench: {length: 18 ft, depth: 20 in, thickness: 5 in}}",
     .meaning = "slabs to sit on, each by a name of your own"},
    {.path = "benches.*",
     .shape = Shape::section,
     .example = "long bench: {length: 18 ft, depth: 20 in, thickness: 5 in}",
     .meaning = "one kind of bench top; its front, ends and free underside show"},
    {.path = "benches.*.length",
     .value = length(length_mm),
     .example = "length: 18 ft",
     .meaning = "along the seat",
     .required = true},
    {.path = "benches.*.depth",
     .value = length({.low = 100, .high = 3e3}),
     .example = "depth: 20 in",
     .meaning = "front to back",
     .required = true},
    {.path = "benches.*.thickness",
     .value = length({.low = 40, .high = 1e3}),
     .example = "thickness: 5 in",
     .meaning = "of the slab",
     .required = true},
    {.path = "benches.*.overhang",
     .value = length({.low = 0, .high = 3e3}),
     .example = "overhang: 4 in",
     .default_text = "0 in",
     .meaning = "of the depth, what stands free of the support"},
    {.path = "benches.*.count",
     .value = count(pieces),
     .example = "count: 1",
     .default_text = "1",
     .meaning = "how many are alike"},

    {.path = "embedments",
     .shape = Shape::section,
     .example = "embedments: {lamp box: {count: 3}}",
     .meaning = "what is cast in, each by a name of your own"},
    {.path = "embedments.*",
     .shape = Shape::section,
     .example = "lamp box: {count: 3}",
     .meaning = "a box, a sleeve, an anchor"},
    {.path = "embedments.*.count",
     .value = count(pieces),
     .example = "count: 3",
     .meaning = "how many",
     .required = true},
};

} // namespace

std::span<const Field> wall_fields() {
    static const std::vector<Field> all = [] {
        std::vector<Field> joined(std::begin(fields), std::end(fields));
        for (const auto part : {form_fields(), placing_fields(), price_fields()}) {
            joined.insert(joined.end(), part.begin(), part.end());
        }
        return joined;
    }();
    return all;
}

} // namespace boardmark::input
