#include "field_values.hpp"
#include "wall_fields.hpp"

namespace boardmark::input {
namespace {

using units::Dimension;

constexpr std::string_view directions[] = {"horizontal", "vertical"};
constexpr std::string_view tie_kinds[] = {"mild steel", "stainless steel", "glass fibre"};
constexpr std::string_view edge_kinds[] = {"chamfered", "tooled", "sharp"};

constexpr Range tie_spacing_mm{.low = 100, .high = 3e3};
constexpr Range tie_load_kn{.low = 0.5, .high = 1000};
constexpr Range bar_spacing_mm{.low = 25, .high = 1e3};

constexpr Value length(Range range) {
    return quantity(Dimension::length, range);
}

constexpr Field fields[] = {
    {.path = "boards",
     .shape = Shape::section,
     .example =
         "boards: {face_width: 5 1/2 in, thickness: 3/4 in, stock: [12 ft], saw_cut: 1/8 in}",
     .meaning = "boards that line the forms of the faces that show"},
    {.path = "boards.face_width",
     .value = length({.low = 20, .high = 1200}),
     .example = "face_width: 5 1/2 in",
     .meaning = "of one board, as it shows in the concrete"},
    {.path = "boards.thickness",
     .value = length({.low = 6, .high = 100}),
     .example = "thickness: 3/4 in",
     .meaning = "of one board"},
    {.path = "boards.course",
     .value = length({.low = 20, .high = 1200}),
     .example = "course: 5 1/2 in",
     .meaning = "height of one course; the face width where left out"},
    {.path = "boards.direction",
     .value = one_of(directions),
     .example = "direction: vertical",
     .default_text = "horizontal",
     .meaning = "how the boards run"},
    {.path = "boards.stock",
     .shape = Shape::list,
     .value = length({.low = 300, .high = 15e3}),
     .example = "stock: [8 ft, 12 ft, 16 ft]",
     .meaning = "lengths that the yard sells, from the shortest"},
    {.path = "boards.saw_cut",
     .value = length({.low = 0, .high = 12}),
     .example = "saw_cut: 1/8 in",
     .meaning = "what one cut of the saw takes"},
    {.path = "boards.spoiled",
     .value = percentage({.low = 0, .high = 60}, 0.5),
     .example = "spoiled: 8 %",
     .default_text = "0 %",
     .meaning = "of the boards bought: warped, split, of the wrong grain"},
    {.path = "boards.uses",
     .value = count({.low = 1, .high = 50}),
     .example = "uses: 2",
     .default_text = "1",
     .meaning = "how often one board lines a form"},
    {.path = "boards.relief",
     .value = length({.low = 0, .high = 100}),
     .example = "relief: 1/4 in",
     .default_text = "0 in",
     .meaning =
         "depth of the deepest board joint behind the nominal face; it takes from the cover"},
    {.path = "boards.treatment",
     .value = text(),
     .example = "treatment: wire-brushed and sealed on all sides",
     .meaning = "of the boards' faces, in your own words"},

    {.path = "ties",
     .shape = Shape::section,
     .example = "ties: {kind: stainless steel, across: 24 in, up: 24 in}",
     .meaning = "ties that hold the two sides of a form together"},
    {.path = "ties.kind",
     .value = one_of(tie_kinds),
     .example = "kind: stainless steel",
     .meaning = "what they are of"},
    {.path = "ties.across",
     .value = length(tie_spacing_mm),
     .example = "across: 24 in",
     .meaning = "spacing along the wall"},
    {.path = "ties.up",
     .value = length(tie_spacing_mm),
     .example = "up: 24 in",
     .meaning = "spacing of the rows"},
    {.path = "ties.working_load",
     .value = quantity(Dimension::force, tie_load_kn),
     .example = "working_load: 3000 lbf",
     .meaning = "what one tie may carry, by the paper of its maker"},
    {.path = "ties.breaking_load",
     .value = quantity(Dimension::force, tie_load_kn),
     .example = "breaking_load: 6000 lbf",
     .meaning = "where the paper gives that instead of a working load"},

    {.path = "edges",
     .shape = Shape::section,
     .example = "edges: {kind: chamfered, size: 3/4 in}",
     .meaning = "edges of the faces that show"},
    {.path = "edges.kind",
     .value = one_of(edge_kinds),
     .example = "kind: chamfered",
     .meaning = "how an edge is made"},
    {.path = "edges.size",
     .value = length({.low = 2, .high = 80}),
     .example = "size: 3/4 in",
     .meaning = "leg of the chamfer, radius of the tool"},

    {.path = "joints",
     .shape = Shape::section,
     .example = "joints: {spacing: 18 ft, groove: 1 1/2 in}",
     .meaning = "contraction joints, where they are given instead of following the rules"},
    {.path = "joints.spacing",
     .value = length({.low = 500, .high = 30e3}),
     .example = "spacing: 18 ft",
     .meaning = "from joint to joint, at most"},
    {.path = "joints.groove",
     .value = length({.low = 3, .high = 500}),
     .example = "groove: 1 1/2 in",
     .meaning = "depth of the grooves of both faces together"},

    {.path = "reinforcement",
     .shape = Shape::section,
     .example = "reinforcement: {vertical: {bar: No. 5, spacing: 12 in}}",
     .meaning = "bars of the runs of wall"},
    {.path = "reinforcement.layers",
     .value = count({.low = 1, .high = 2}),
     .example = "layers: 2",
     .default_text = "1",
     .meaning = "layers of bars: 1, or 2 with one near each face"},
    {.path = "reinforcement.cover",
     .value = length({.low = 10, .high = 300}),
     .example = "cover: 2 in",
     .meaning = "concrete between the nominal face and the nearest bar"},
    {.path = "reinforcement.yield_strength",
     .value = quantity(Dimension::stress, {.low = 200, .high = 900}),
     .example = "yield_strength: 60000 psi",
     .default_text = "60000 psi",
     .meaning = "of the bars"},
    {.path = "reinforcement.vertical",
     .shape = Shape::section,
     .example = "vertical: {bar: No. 5, spacing: 12 in}",
     .meaning = "vertical bars of each layer"},
    {.path = "reinforcement.vertical.bar",
     .value = text(),
     .example = "bar: No. 5",
     .meaning = "size: 'No. 3' to 'No. 11' (ASTM A615), or '16 mm' (ISO 6935-2)"},
    {.path = "reinforcement.vertical.spacing",
     .value = length(bar_spacing_mm),
     .example = "spacing: 12 in",
     .meaning = "centre to centre"},
    {.path = "reinforcement.horizontal",
     .shape = Shape::section,
     .example = "horizontal: {bar: No. 4, spacing: 10 in}",
     .meaning = "horizontal bars of each layer"},
    {.path = "reinforcement.horizontal.bar",
     .value = text(),
     .example = "bar: No. 4",
     .meaning = "size, as of the vertical bars"},
    {.path = "reinforcement.horizontal.spacing",
     .value = length(bar_spacing_mm),
     .example = "spacing: 10 in",
     .meaning = "centre to centre"},
};

} // namespace

std::span<const Field> form_fields() {
    return fields;
}

} // namespace boardmark::input
