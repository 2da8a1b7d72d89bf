#include <boardmark/core/forms/pressure_method_names.hpp>

#include "../values/field_values.hpp"
#include "wall_fields.hpp"

namespace boardmark::input {
namespace {

using units::Dimension;

constexpr std::string_view by_formula[] = {"by formula"};
constexpr std::string_view flow_classes[] = {"F1", "F2", "F3", "F4", "F5", "F6"};

constexpr double hour_d = 1.0 / 24;

constexpr Value length(Range range) {
    return quantity(Dimension::length, range);
}
constexpr Value hours(double low, double high) {
    return quantity(Dimension::time, {.low = low * hour_d, .high = high * hour_d});
}

constexpr Field fields[] = {
    {.path = "placing",
     .shape = Shape::section,
     .example = "placing: {rise: 4 ft/h, concrete_temperature: 60 degF}",
     .meaning = "how the wall is planned to be placed; nothing here is assumed"},
    {.path = "placing.rise",
     .value = usually(quantity(Dimension::speed, {.low = 0.00005, .high = 0.05}), // 0.05 to 50 m/h
                      {.low = 0.00005, .high = 0.01}),
     .example = "rise: 4 ft/h",
     .meaning = "rate at which the concrete rises in the form"},
    {.path = "placing.output",
     .value = quantity(Dimension::volume_rate, {.low = 0.1, .high = 300}),
     .example = "output: 12 yd3/h",
     .meaning = "of the crew or the pump"},
    {.path = "placing.lift",
     .value = length({.low = 100, .high = 30e3}),
     .example = "lift: 20 in",
     .meaning = "height of one lift"},
    {.path = "placing.concrete_temperature",
     .value = quantity(Dimension::temperature, {.low = 0, .high = 50}),
     .example = "concrete_temperature: 60 degF",
     .meaning = "of the concrete in the form, not of the air"},
    {.path = "placing.air_temperature",
     .value = quantity(Dimension::temperature, {.low = -40, .high = 60}),
     .example = "air_temperature: 50 degF",
     .meaning = "of the air at the wall"},
    {.path = "placing.humidity",
     .value = usually(percentage({.low = 0, .high = 100}, 1), {.low = 10, .high = 100}),
     .example = "humidity: 60 %",
     .meaning = "relative humidity of the air"},
    {.path = "placing.wind",
     .value = quantity(Dimension::speed, {.low = 0, .high = 150}),
     .example = "wind: 12 mph",
     .meaning = "wind at the wall"},
    {.path = "placing.setting",
     .value = usually(hours(0.25, 72), {.low = 0.5 * hour_d, .high = 24 * hour_d}),
     .example = "setting: 4 h",
     .meaning = "from batching until a lift can no longer be vibrated together with the next"},
    {.path = "placing.end_of_set",
     .value = hours(0.5, 96),
     .example = "end_of_set: 7 h",
     .meaning = "from batching to the end of setting, for the pressure by DIN 18218"},
    {.path = "placing.strip_after",
     .value = hours(1, 28 * 24),
     .example = "strip_after: 72 h",
     .meaning = "after placing, the one age at which the forms of all faces are stripped"},
    {.path = "placing.strip_strength",
     .value = quantity(Dimension::stress, {.low = 0.1, .high = 100}),
     .example = "strip_strength: 400 psi",
     .meaning =
         "measured at the wall, or on specimens kept beside it, when the faces are stripped"},
    {.path = "placing.soffit_strip_after",
     .value = hours(1, 90 * 24),
     .example = "soffit_strip_after: 7 d",
     .meaning = "after placing, when forms and props of soffits are removed; 'strip_after' where "
                "left out"},
    {.path = "placing.soffit_strength",
     .value = percentage({.low = 5, .high = 100}),
     .example = "soffit_strength: 75 %",
     .meaning = "of the specified strength, that the engineer requires before the props of soffits "
                "are removed"},
    {.path = "placing.lowest_air",
     .value = quantity(Dimension::temperature, {.low = -60, .high = 60}),
     .example = "lowest_air: 28 degF",
     .meaning = "forecast for the days of protection and until the forms are stripped"},
    {.path = "placing.held_at",
     .value = quantity(Dimension::temperature, {.low = 0, .high = 40}),
     .example = "held_at: 55 degF",
     .meaning = "of the concrete at its face, edges and corners while it is protected"},
    {.path = "placing.protected_until",
     .value = hours(1, 28 * 24),
     .example = "protected_until: 72 h",
     .meaning = "after placing, under blankets or with heat"},
    {.path = "placing.loaded_after",
     .value = hours(1, 365 * 24),
     .example = "loaded_after: 28 d",
     .meaning = "after placing, when backfill or another load comes on the concrete"},
    {.path = "placing.truck",
     .value =
         usually(quantity(Dimension::volume, {.low = 0.2, .high = 20}), {.low = 0.75, .high = 15}),
     .example = "truck: 9 yd3",
     .meaning = "load of one truck"},
    {.path = "placing.round_trip",
     .value = usually(hours(0.05, 12), {.low = 0.25 * hour_d, .high = 6 * hour_d}),
     .example = "round_trip: 75 min",
     .meaning = "of one truck from plant to plant: loading, both ways, unloading, washing out"},
    {.path = "placing.vibrator",
     .shape = Shape::section,
     .example = "vibrator: {head: 2 in, depth: 3 ft}",
     .meaning = "how the concrete is compacted"},
    {.path = "placing.vibrator.head",
     .value = length({.low = 15, .high = 200}),
     .example = "head: 2 in",
     .meaning = "diameter of an internal vibrator"},
    {.path = "placing.vibrator.depth",
     .value = usually(length({.low = 50, .high = 15e3}), {.low = 150, .high = 5e3}),
     .example = "depth: 3 ft",
     .meaning = "how deep it goes into the concrete"},
    {.path = "placing.vibrator.external",
     .value = flag(),
     .example = "external: no",
     .default_text = "no",
     .meaning = "whether the forms are vibrated from outside"},
    {.path = "placing.pumped_from_below",
     .value = flag(),
     .example = "pumped_from_below: no",
     .default_text = "no",
     .meaning = "whether the concrete is pumped in at the foot of the form"},
    {.path = "placing.redosed_on_site",
     .value = flag(),
     .example = "redosed_on_site: no",
     .default_text = "no",
     .meaning = "whether a reducer is added again at the wall"},
    {.path = "placing.self_consolidating",
     .value = flag(),
     .example = "self_consolidating: no",
     .default_text = "no",
     .meaning = "whether the concrete compacts by its own weight"},
    {.path = "placing.pressure",
     .value = one_of(by_formula),
     .example = "pressure: by formula",
     .meaning = "uses the pressure formula where a reducer would make it the full head"},
    {.path = "placing.method",
     .value = one_of(core::pressure_method_names),
     .example = "method: ACI 347R-14",
     .meaning = "of form pressure, by which forms, ties and rates of rise are judged; else the "
                "highest shown"},
    {.path = "placing.form_pressure",
     .value = usually(quantity(Dimension::stress, {.low = 0.001, .high = 0.5}), // 1 to 500 kPa
                      {.low = 0.005, .high = 0.15}), // six metres of fluid concrete
     .example = "form_pressure: 800 psf",
     .meaning = "that the forms are designed for"},
    {.path = "placing.flow_class",
     .value = or_words(length({.low = 200, .high = 900}), flow_classes),
     .example = "flow_class: F4",
     .meaning = "of EN 206, or the spread on the flow table, for the pressure by DIN 18218"},
    {.path = "placing.season",
     .value = text(),
     .example = "season: spring",
     .meaning = "in your own words"},

    {.path = "mockup",
     .shape = Shape::section,
     .example = "mockup: {length: 6 ft, height: 6 ft, thickness: 12 in}",
     .meaning = "the panel that proves the face"},
    {.path = "mockup.length",
     .value = length({.low = 300, .high = 30e3}),
     .example = "length: 6 ft",
     .meaning = "of the panel"},
    {.path = "mockup.height",
     .value = length({.low = 300, .high = 30e3}),
     .example = "height: 6 ft",
     .meaning = "of the panel"},
    {.path = "mockup.thickness",
     .value = length({.low = 50, .high = 3e3}),
     .example = "thickness: 12 in",
     .meaning = "of the panel"},
    {.path = "mockup.number",
     .value = count({.low = 1, .high = 20}),
     .example = "number: 1",
     .default_text = "1",
     .meaning = "how many panels are meant to be cast"},
    {.path = "mockup.viewed_from",
     .value = text(),
     .example = "viewed_from: 10 ft at 28 days",
     .meaning = "distance, age and state at which it is judged, in your own words"},
    {.path = "mockup.signed_by",
     .value = text(),
     .example = "signed_by: designer and concrete contractor",
     .meaning = "roles that accept it"},

    {.path = "mockup.shows",
     .shape = Shape::list,
     .value = one_of(panel_features),
     .example = "shows: [tie, corner, joint, lift line, repair]",
     .meaning =
         "what it is to show, the most important first; else everything that the walls have"},

    {.path = "order",
     .shape = Shape::section,
     .example = "order: {waste: 5 %, increment: 0.25 yd3}",
     .meaning = "how the concrete is ordered"},
    {.path = "order.waste",
     .value = usually(percentage({.low = 0, .high = 30}, 0.5), {.low = 2, .high = 20}),
     .example = "waste: 5 %",
     .default_text = "0 %",
     .meaning = "of the concrete: spilt, left in the pump, forms that give"},
    {.path = "order.increment",
     .value = quantity(Dimension::volume, {.low = 0.01, .high = 5}),
     .example = "increment: 0.25 yd3",
     .meaning = "the order is rounded up to whole ones of it"},
};

} // namespace

std::span<const Field> placing_fields() {
    return fields;
}

} // namespace boardmark::input
