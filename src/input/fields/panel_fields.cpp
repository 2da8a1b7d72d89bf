#include "../values/field_values.hpp"
#include "wall_fields.hpp"

namespace boardmark::input {
namespace {

using units::Dimension;

constexpr double hour_d = 1.0 / 24;

constexpr Value length(Range range) {
    return quantity(Dimension::length, range);
}

constexpr Field fields[] = {
    {.path = "panels",
     .shape = Shape::section,
     .example = "panels: {factors: {species: [fir, spruce], release_agent: [oil, emulsion]}}",
     .meaning = "small sample panels, apart from the mock-up, for the command 'panels'"},
    {.path = "panels.factors",
     .shape = Shape::section,
     .example = "factors: {species: [fir, spruce], release_agent: [oil, emulsion]}",
     .meaning = "what differs from panel to panel; of each first the level that is meant for the "
                "wall",
     .required = true},
    {.path = "panels.factors.mix",
     .shape = Shape::list,
     .value = text(),
     .example = "mix: [flowing-wall.yaml, quay-wall.yaml]",
     .meaning = "mix files, relative to this file; else all panels are of the wall's mix"},
    {.path = "panels.factors.species",
     .shape = Shape::list,
     .value = text(),
     .example = "species: [Douglas fir, spruce]",
     .meaning = "of the boards"},
    {.path = "panels.factors.treatment",
     .shape = Shape::list,
     .value = text(),
     .example = "treatment: [wire-brushed and sealed, raw and limed]",
     .meaning = "of the boards, in your own words"},
    {.path = "panels.factors.release_agent",
     .shape = Shape::list,
     .value = text(),
     .example = "release_agent: [thin oil, wax emulsion]",
     .meaning = "on the boards, in your own words"},
    {.path = "panels.factors.consolidation",
     .shape = Shape::list,
     .value = text(),
     .example = "consolidation: [10 s every 12 in, 15 s every 8 in]",
     .meaning = "how the vibrator is used, in your own words"},
    {.path = "panels.factors.strip_after",
     .shape = Shape::list,
     .value = quantity(Dimension::time, {.low = 1 * hour_d, .high = 28}),
     .example = "strip_after: [72 h, 24 h]",
     .meaning = "after placing, when the panels are stripped"},
    {.path = "panels.questions",
     .shape = Shape::list,
     .value = text(),
     .example = "questions: [species with release_agent]",
     .meaning = "pairs of factors that may work otherwise together; what each factor changes by "
                "itself is always asked"},
    {.path = "panels.number",
     .value = count({.low = 2, .high = 64}),
     .example = "number: 8",
     .meaning = "of panels, repeats aside; else the fewest that answer"},
    {.path = "panels.repeats",
     .value = count({.low = 0, .high = 8}),
     .example = "repeats: 1",
     .default_text = "0",
     .meaning = "how often panel 1 is cast again, each from a batch of its own"},
    {.path = "panels.size",
     .shape = Shape::section,
     .example = "size: {length: 48 in, height: 36 in, thickness: 8 in}",
     .meaning = "of every small panel"},
    {.path = "panels.size.length",
     .value = length({.low = 150, .high = 10e3}),
     .example = "length: 48 in",
     .meaning = "of the panel",
     .required = true},
    {.path = "panels.size.height",
     .value = length({.low = 150, .high = 10e3}),
     .example = "height: 36 in",
     .meaning = "of the panel",
     .required = true},
    {.path = "panels.size.thickness",
     .value = length({.low = 50, .high = 3e3}),
     .example = "thickness: 8 in",
     .meaning = "of the panel",
     .required = true},
    {.path = "panels.shows",
     .shape = Shape::list,
     .value = one_of(panel_features),
     .example = "shows: [face, board joint, tie]",
     .meaning = "what a small panel is to show, the most important first; else the face and its "
                "board joints"},
    {.path = "panels.mixer",
     .value = quantity(Dimension::volume, {.low = 0.01, .high = 20}),
     .example = "mixer: 9 ft3",
     .meaning = "largest batch"},
    {.path = "panels.allowance",
     .value = percentage({.low = 0, .high = 100}, 1),
     .example = "allowance: 15 %",
     .meaning = "of concrete beyond the panels, for tests and what is spilt"},
    {.path = "panels.viewing",
     .shape = Shape::section,
     .example = "viewing: {distance: 10 ft, light: overcast, age: 28 d, by: designer}",
     .meaning = "how the panels are judged"},
    {.path = "panels.viewing.distance",
     .value = usually(length({.low = 300, .high = 100e3}), {.low = 900, .high = 30e3}),
     .example = "distance: 10 ft",
     .meaning = "from the eye to the face"},
    {.path = "panels.viewing.light",
     .value = text(),
     .example = "light: \"overcast, no low sun\"",
     .meaning = "in your own words"},
    {.path = "panels.viewing.age",
     .value = usually(quantity(Dimension::time, {.low = 1, .high = 1100}), {.low = 7, .high = 400}),
     .example = "age: 28 d",
     .meaning = "of the concrete when it is judged"},
    {.path = "panels.viewing.by",
     .value = text(),
     .example = "by: \"designer, owner and concrete contractor\"",
     .meaning = "roles that score"},
    {.path = "panels.signed_by",
     .value = text(),
     .example = "signed_by: designer",
     .meaning = "role that has the last word"},
};

} // namespace

std::span<const Field> panel_fields() {
    return fields;
}

} // namespace boardmark::input
