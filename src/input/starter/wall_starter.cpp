#include "starter_lines.hpp"

namespace boardmark::input {
namespace {

// A wall of twelve whole courses whose lifts end at board joints, in forms that bear the full head.
constexpr StarterLine wall_lines[] = {
    {"boardmark", "1"},
    {"title", "\"Name of the job and of the wall\""},
    {"mix", "mix.yaml"},
    {"reporting", "us", "si"},

    {"walls"},
    {"walls.garden wall"},
    {"walls.garden wall.length", "36 ft", "11 m"},
    {"walls.garden wall.height", "5 ft 6 in", "1680 mm"},
    {"walls.garden wall.thickness", "12 in", "300 mm"},
    {"walls.garden wall.shows", "one face"},

    {"boards"},
    {"boards.face_width", "5 1/2 in", "140 mm"},
    {"boards.thickness", "3/4 in", "20 mm"},
    {"boards.direction", "horizontal"},
    {"boards.stock", "[8 ft, 12 ft, 16 ft]", "[2400 mm, 3600 mm, 4800 mm]"},
    {"boards.saw_cut", "1/8 in", "3 mm"},
    {"boards.spoiled", "8 %"},
    {"boards.uses", "1"},
    {"boards.relief", "1/4 in", "6 mm"},

    {"ties"},
    {"ties.kind", "stainless steel"},
    {"ties.across", "18 in", "450 mm"},
    {"ties.up", "22 in", "560 mm"},
    {"ties.first", "11 in", "280 mm"},
    {"ties.working_load", "3000 lbf", "14 kN"},
    {"ties.cone", "1 in", "25 mm"},
    {"ties.plug", "yes"},

    {"edges"},
    {"edges.kind", "chamfered"},
    {"edges.size", "3/4 in", "20 mm"},

    {"layout"},
    {"layout.courses_from", "both"},
    {"layout.lifts", "on board joints"},

    {"reinforcement"},
    {"reinforcement.layers", "2"},
    {"reinforcement.cover", "2 1/2 in", "65 mm"},
    {"reinforcement.yield_strength", "60000 psi", "500 MPa"},
    {"reinforcement.vertical", "{bar: No. 5, spacing: 12 in}", "{bar: 16 mm, spacing: 300 mm}"},
    {"reinforcement.horizontal", "{bar: No. 5, spacing: 12 in}", "{bar: 16 mm, spacing: 300 mm}"},

    {"placing"},
    {"placing.rise", "5 ft/h", "1.5 m/h"},
    {"placing.output", "6 yd3/h", "4.5 m3/h"},
    {"placing.lift", "20 in", "500 mm"},
    {"placing.concrete_temperature", "60 degF", "16 degC"},
    {"placing.air_temperature", "58 degF", "15 degC"},
    {"placing.lowest_air", "52 degF", "11 degC"},
    {"placing.humidity", "60 %"},
    {"placing.wind", "5 mph", "8 km/h"},
    {"placing.setting", "4 h"},
    {"placing.truck", "3 yd3", "2.5 m3"},
    {"placing.round_trip", "70 min"},
    {"placing.vibrator", "{head: 1 1/2 in, depth: 3 ft}", "{head: 38 mm, depth: 0.9 m}"},
    {"placing.form_pressure", "900 psf", "45 kPa"},
    {"placing.strip_after", "72 h"},
    {"placing.season", "spring"},

    {"mockup"},
    {"mockup.length", "6 ft", "2 m"},
    {"mockup.height", "5 ft 6 in", "1680 mm"},
    {"mockup.thickness", "12 in", "300 mm"},
    {"mockup.viewed_from", "\"10 ft, dry, at 28 days\"", "\"3 m, dry, at 28 days\""},
    {"mockup.signed_by", "designer and concrete contractor"},

    {"order"},
    {"order.waste", "5 %"},
    {"order.increment", "0.25 yd3", "0.25 m3"},
};

constexpr std::string_view wall_heading =
    "# A wall file to begin with. Every figure is an example: replace it by your drawings'.\n"
    "#   boardmark starter mix > mix.yaml   is its concrete\n"
    "#   boardmark wall wall.yaml           plans it; 'draw' draws it, 'brief' is for the "
    "contractor\n";

} // namespace

StarterFile wall_starter() {
    return {wall_heading, wall_lines, wall_fields()};
}

} // namespace boardmark::input
