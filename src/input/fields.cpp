#include "fields.hpp"

namespace boardmark::input {
namespace {

using core::Role;
using units::Dimension;

constexpr Roles binder = role_bit(Role::binder);
constexpr Roles coarse = role_bit(Role::coarse);
constexpr Roles fine = role_bit(Role::fine);
constexpr Roles aggregate = coarse | fine;
constexpr Roles admixture = role_bit(Role::admixture);

constexpr Value text() { return {.form = Form::text}; }
constexpr Value flag() { return {.form = Form::flag}; }

constexpr Value number(Range range) { return {.form = Form::number, .range = range}; }
constexpr Value count(Range range) { return {.form = Form::count, .range = range}; }

constexpr Value quantity(Dimension dimension, Range range) {
    return {.form = Form::quantity, .dimensions = {dimension, std::nullopt}, .range = range};
}
constexpr Value percentage(Range range, double suspicious_below = Range{}.low) {
    return {.form = Form::quantity,
            .dimensions = {Dimension::percentage, std::nullopt},
            .range = range,
            .suspicious_below = suspicious_below};
}
constexpr Value dose() {
    return {.form = Form::quantity,
            .dimensions = {Dimension::dose, Dimension::percentage},
            .range = {.low = 0, .high = 100, .low_itself = false}};
}
constexpr Value amount() {
    return {.form = Form::quantity,
            .dimensions = {Dimension::mass, Dimension::volume},
            .range = {.low = 0}};
}
constexpr Value one_of(std::span<const std::string_view> words) {
    return {.form = Form::word, .words = words};
}
constexpr Value or_words(Value value, std::span<const std::string_view> words) {
    value.words = words;
    return value;
}

constexpr std::string_view systems[] = {"us", "si"};
constexpr std::string_view methods[] = {"ACI 211.1", "ACI 211.1-91"};
constexpr std::string_view air_words[] = {"exposure", "none"};
constexpr std::string_view finishes[] = {"board-marked", "board-formed"};
constexpr std::string_view bases[] = {"ssd", "oven-dry"};
constexpr std::string_view moisture_bases[] = {"total", "free"};
constexpr std::string_view standard_minimum[] = {"standard minimum"};
constexpr std::string_view as_needed[] = {"as needed"};
constexpr std::string_view by_exposure[] = {"by exposure"};
constexpr std::string_view reserved[] = {"volume", "water", "air", "water_includes_admixtures"};

constexpr Range strength_mpa{.low = 2, .high = 200};
constexpr Range slump_mm{.low = 0, .high = 305};
constexpr Range w_cm{.low = 0.15, .high = 1.5};
constexpr Range relative_density{.low = 0.8, .high = 8};
constexpr Range binder_kg_m3{.low = 50, .high = 1200};

constexpr Field file_fields[] = {
    {.path = "boardmark",
     .value = text(),
     .example = "boardmark: 1",
     .meaning = "version of this format"},
    {.path = "title",
     .value = text(),
     .example = "title: Quay terrace, retaining wall",
     .meaning = "what the mix is for"},
    {.path = "reporting",
     .value = one_of(systems),
     .example = "reporting: us",
     .meaning = "units of the text, and the family of tables and constants"},
    {.path = "method",
     .value = one_of(methods),
     .example = "method: ACI 211.1",
     .default_text = "ACI 211.1",
     .meaning = "method of proportioning; the 1991 edition"},

    {.path = "requirements",
     .shape = Shape::section,
     .example = "requirements: {strength: 4500 psi, slump: 4 in}",
     .meaning = "what is asked of the concrete"},
    {.path = "requirements.code",
     .value = text(),
     .example = "code: ACI 318-19",
     .meaning = "the code whose limits apply"},
    {.path = "requirements.exposure",
     .shape = Shape::list,
     .value = text(),
     .example = "exposure: [F2, S0, W1, C1]",
     .meaning = "one class of each category of the code"},
    {.path = "requirements.reinforced",
     .value = flag(),
     .example = "reinforced: yes",
     .default_text = "yes",
     .meaning = "whether the concrete holds bars"},
    {.path = "requirements.strength",
     .value = quantity(Dimension::stress, strength_mpa),
     .example = "strength: 4500 psi",
     .meaning = "specified compressive strength, cylinders"},
    {.path = "requirements.strength_age",
     .value = quantity(Dimension::time, {.low = 1, .high = 365}),
     .example = "strength_age: 28 d",
     .default_text = "28 d",
     .meaning = "age at which the strength is specified"},
    {.path = "requirements.strength_records",
     .shape = Shape::section,
     .example = "strength_records: {tests: 18, standard_deviation: 480 psi}",
     .meaning = "test records of this class of concrete"},
    {.path = "requirements.strength_records.tests",
     .value = count({.low = 1, .high = 100000}),
     .example = "tests: 18",
     .meaning = "how many tests the record holds"},
    {.path = "requirements.strength_records.standard_deviation",
     .value = quantity(Dimension::stress, {.low = 0, .high = 30}),
     .example = "standard_deviation: 480 psi",
     .meaning = "standard deviation of the tests"},
    {.path = "requirements.strength_records.strength",
     .value = quantity(Dimension::stress, strength_mpa),
     .example = "strength: 5000 psi",
     .meaning = "specified strength of the recorded concrete"},
    {.path = "requirements.strength_records.age",
     .value = quantity(Dimension::time, {.low = 0, .high = 36525}),
     .example = "age: 9 months",
     .meaning = "how old the record is"},
    {.path = "requirements.strength_curve",
     .shape = Shape::table,
     .value = quantity(Dimension::stress, strength_mpa),
     .key = number(w_cm),
     .example = "strength_curve: {0.40: 6200 psi, 0.45: 5400 psi}",
     .meaning = "strength of own trials by w/cm; used before any table"},
    {.path = "requirements.average_strength",
     .value = quantity(Dimension::stress, strength_mpa),
     .example = "average_strength: 5700 psi",
     .meaning = "used in place of the code's required average"},
    {.path = "requirements.average_strength_basis",
     .value = text(),
     .example = "average_strength_basis: \"trial batches of May\"",
     .meaning = "why another average than the code's"},
    {.path = "requirements.slump",
     .value = quantity(Dimension::length, slump_mm),
     .example = "slump: 4 in",
     .meaning = "slump at placing"},
    {.path = "requirements.slump_before_reducer",
     .value = quantity(Dimension::length, slump_mm),
     .example = "slump_before_reducer: 3 in",
     .meaning = "slump of the water alone; the high-range reducer then works for flow"},
    {.path = "requirements.slump_window",
     .value = {.form = Form::window,
               .dimensions = {Dimension::length, std::nullopt},
               .range = slump_mm},
     .example = "slump_window: 6 in to 8 in",
     .meaning = "slumps permitted at placing"},
    {.path = "requirements.air",
     .value = or_words(percentage({.low = 0, .high = 20}, 0.1), air_words),
     .example = "air: exposure",
     .default_text = "exposure",
     .meaning = "air asked for: by the exposure class, none, or a percentage"},
    {.path = "requirements.section",
     .shape = Shape::section,
     .example = "section: {thickness: 10 in, clear_bar_spacing: 5 in, clear_cover: 2 in}",
     .meaning = "what the concrete must pass through"},
    {.path = "requirements.section.thickness",
     .value = quantity(Dimension::length, {.low = 20, .high = 20000}),
     .example = "thickness: 10 in",
     .meaning = "narrowest dimension between the forms"},
    {.path = "requirements.section.clear_bar_spacing",
     .value = quantity(Dimension::length, {.low = 5, .high = 2000}),
     .example = "clear_bar_spacing: 5 in",
     .meaning = "smallest clear distance between bars"},
    {.path = "requirements.section.clear_cover",
     .value = quantity(Dimension::length, {.low = 5, .high = 500}),
     .example = "clear_cover: 2 in",
     .meaning = "concrete over the bars, from the deepest board joint"},
    {.path = "requirements.finish",
     .value = one_of(finishes),
     .example = "finish: board-marked",
     .meaning = "what the face shows"},
    {.path = "requirements.minimum_binder",
     .value = quantity(Dimension::mass_per_volume, binder_kg_m3),
     .example = "minimum_binder: 560 lb/yd3",
     .meaning = "least cementitious material that is asked for"},

    {.path = "mixture",
     .shape = Shape::section,
     .example = "mixture: {binder: {cement: 100 %}, coarse: {stone: 100 %}, fine: {sand: 100 %}}",
     .meaning = "which materials make the mix"},
    {.path = "mixture.binder",
     .shape = Shape::table,
     .value = percentage({.low = 0, .high = 100, .low_itself = false}, 1),
     .key = text(),
     .example = "binder: {cement: 75 %, slag: 25 %}",
     .meaning = "shares of the cementitious material by mass"},
    {.path = "mixture.coarse",
     .shape = Shape::table,
     .value = percentage({.low = 0, .high = 100, .low_itself = false}, 1),
     .key = text(),
     .example = "coarse: {stone: 100 %}",
     .meaning = "shares of the coarse aggregate by mass"},
    {.path = "mixture.fine",
     .shape = Shape::table,
     .value = percentage({.low = 0, .high = 100, .low_itself = false}, 1),
     .key = text(),
     .example = "fine: {sand: 100 %}",
     .meaning = "shares of the fine aggregate by mass"},
    {.path = "mixture.admixtures",
     .shape = Shape::table,
     .value = or_words(dose(), as_needed),
     .key = text(),
     .example = "admixtures: {reducer: 8 fl oz/cwt, air_agent: as needed}",
     .meaning = "doses by cementitious material"},
    {.path = "mixture.coarse_dry_rodded_density",
     .value = quantity(Dimension::mass_per_volume, {.low = 300, .high = 3500}),
     .example = "coarse_dry_rodded_density: 103 lb/ft3",
     .meaning = "dry-rodded density measured on the coarse blend"},

    {.path = "selections",
     .shape = Shape::section,
     .example = "selections: {w_cm: 0.40}",
     .meaning = "values used in place of the method's own"},
    {.path = "selections.w_cm",
     .value = or_words(number(w_cm), by_exposure),
     .example = "w_cm: 0.40",
     .meaning = "ratio of mixing water to cementitious material"},
    {.path = "selections.water",
     .value = quantity(Dimension::mass_per_volume, {.low = 60, .high = 400}),
     .example = "water: 256 lb/yd3",
     .meaning = "final mixing water"},
    {.path = "selections.binder",
     .value = quantity(Dimension::mass_per_volume, binder_kg_m3),
     .example = "binder: 640 lb/yd3",
     .meaning = "cementitious material"},
    {.path = "selections.air",
     .value = percentage({.low = 0, .high = 20}, 0.1),
     .example = "air: 6 %",
     .meaning = "air that fills the volume"},
    {.path = "selections.coarse_volume",
     .value = number({.low = 0.1, .high = 1}),
     .example = "coarse_volume: 0.62",
     .meaning = "dry-rodded volume of coarse aggregate per volume of concrete"},
    {.path = "selections.coarse_adjustment",
     .value = percentage({.low = -10, .high = 10}),
     .example = "coarse_adjustment: -5 %",
     .meaning = "change of the table's coarse volume"},
    {.path = "selections.fine_share",
     .value = percentage({.low = 0, .high = 100, .low_itself = false}, 1),
     .example = "fine_share: 44 %",
     .meaning = "fine aggregate's share of the absolute aggregate volume"},

    {.path = "proportions",
     .shape = Shape::section,
     .example = "proportions: {volume: 1 yd3, water: 253 lb, air: 6 %, ...}",
     .meaning = "amounts of a submitted mix, aggregates SSD"},
    {.path = "proportions.volume",
     .value = quantity(Dimension::volume, {.low = 0, .high = 100, .low_itself = false}),
     .example = "volume: 1 yd3",
     .meaning = "volume of concrete that the amounts make"},
    {.path = "proportions.water",
     .value = amount(),
     .example = "water: 253 lb",
     .meaning = "all water but the admixtures' liquid"},
    {.path = "proportions.water_includes_admixtures",
     .value = flag(),
     .example = "water_includes_admixtures: yes",
     .default_text = "no",
     .meaning = "whether the water counts the admixtures' liquid"},
    {.path = "proportions.air",
     .value = percentage({.low = 0, .high = 20}, 0.1),
     .example = "air: 6 %",
     .meaning = "air of the submitted mix"},
    {.path = "proportions.*",
     .value = or_words(amount(), as_needed),
     .example = "cement: 480 lb",
     .meaning = "amount of a material"},
};

constexpr Field material_fields[] = {
    {.path = "materials",
     .shape = Shape::section,
     .example = "materials: {cement: {kind: portland cement}, ...}",
     .meaning = "the materials under names of the user's, or 'from FILE'"},
    {.path = "materials.*",
     .shape = Shape::section,
     .example = "cement: {kind: portland cement}",
     .meaning = "one material"},
    {.path = "materials.*.kind",
     .value = {.form = Form::kind},
     .example = "kind: portland cement",
     .meaning = "what the material is"},
    {.path = "materials.*.standard",
     .value = text(),
     .example = "standard: ASTM C150 II",
     .meaning = "standard and type"},
    {.path = "materials.*.relative_density",
     .value = number(relative_density),
     .example = "relative_density: 2.65",
     .meaning = "density relative to water"},
    {.path = "materials.*.relative_density_basis",
     .value = one_of(bases),
     .roles = aggregate,
     .example = "relative_density_basis: oven-dry",
     .default_text = "ssd",
     .meaning = "state of the aggregate that the relative density is of"},
    {.path = "materials.*.absorption",
     .value = percentage({.low = 0, .high = 40}),
     .roles = aggregate,
     .example = "absorption: 0.7 %",
     .meaning = "water taken up, of oven-dry mass"},
    {.path = "materials.*.moisture",
     .value = percentage({.low = 0, .high = 60}),
     .roles = aggregate,
     .example = "moisture: 6.0 %",
     .meaning = "water in the stockpile today, of oven-dry mass"},
    {.path = "materials.*.moisture_basis",
     .value = one_of(moisture_bases),
     .roles = aggregate,
     .example = "moisture_basis: free",
     .default_text = "total",
     .meaning = "whether the moisture counts the absorbed water"},
    {.path = "materials.*.nominal_max_size",
     .value = quantity(Dimension::length, {.low = 4, .high = 160}),
     .roles = coarse,
     .example = "nominal_max_size: 3/4 in",
     .meaning = "nominal maximum size"},
    {.path = "materials.*.dry_rodded_density",
     .value = quantity(Dimension::mass_per_volume, {.low = 300, .high = 3500}),
     .roles = coarse,
     .example = "dry_rodded_density: 100 lb/ft3",
     .meaning = "bulk density, oven-dry and rodded"},
    {.path = "materials.*.fineness_modulus",
     .value = number({.low = 1, .high = 5}),
     .roles = fine,
     .example = "fineness_modulus: 2.8",
     .meaning = "fineness modulus"},
    {.path = "materials.*.sieves",
     .shape = Shape::table,
     .value = percentage({.low = 0, .high = 100}),
     .key = quantity(Dimension::length, {.low = 0.05, .high = 160}),
     .roles = fine,
     .example = "sieves: {4.75 mm: 98%, 2.36 mm: 85%, 1.18 mm: 68%, 0.6 mm: 47%, 0.3 mm: 18%, "
                "0.15 mm: 4%}",
     .meaning = "percent passing by sieve, in place of the fineness modulus"},
    {.path = "materials.*.typical",
     .value = flag(),
     .roles = aggregate,
     .example = "typical: yes",
     .default_text = "no",
     .meaning = "usual figures stand in for missing ones; the result is an estimate"},
    {.path = "materials.*.solids",
     .value = percentage({.low = 0, .high = 100}, 1),
     .roles = admixture,
     .example = "solids: 35 %",
     .meaning = "solids by mass; the rest is water"},
    {.path = "materials.*.water_reduction",
     .shape = Shape::table,
     .value = percentage({.low = 0, .high = 60}, 0.5),
     .key = or_words(dose(), standard_minimum),
     .roles = admixture,
     .example = "water_reduction: {4 fl oz/cwt: 8 %, 8 fl oz/cwt: 16 %}",
     .meaning = "mixing water saved by dose, or 'standard minimum'"},
    {.path = "materials.*.slump_gain",
     .shape = Shape::table,
     .value = quantity(Dimension::length, slump_mm),
     .key = dose(),
     .roles = admixture,
     .example = "slump_gain: {4 fl oz/cwt: 2 in, 8 fl oz/cwt: 4 in}",
     .meaning = "slump gained by dose at equal water"},
    {.path = "materials.*.maximum_dose",
     .value = dose(),
     .roles = admixture,
     .example = "maximum_dose: 12 fl oz/cwt",
     .meaning = "highest dose the data sheet permits"},
    {.path = "materials.*.retains",
     .shape = Shape::table,
     .value = percentage({.low = 0, .high = 100}, 1),
     .key = quantity(Dimension::time, {.low = 0, .high = 1}),
     .roles = admixture,
     .example = "retains: {30 min: 85 %, 60 min: 60 %}",
     .meaning = "slump that remains by time"},
    {.path = "materials.*.retards",
     .value = flag(),
     .roles = admixture,
     .example = "retards: yes",
     .meaning = "whether the admixture delays setting"},
    {.path = "materials.*.contains",
     .shape = Shape::table,
     .value = percentage({.low = 0, .high = 100, .low_itself = false}, 1),
     .key = {.form = Form::kind},
     .roles = binder,
     .example = "contains: {slag cement: 30 %}",
     .meaning = "what a blended cement holds besides clinker"},
    {.path = "materials.*.c3a",
     .value = percentage({.low = 0, .high = 20}),
     .roles = binder,
     .example = "c3a: 7 %",
     .meaning = "tricalcium aluminate of a cement"},
    {.path = "materials.*.alkali",
     .value = percentage({.low = 0, .high = 10}),
     .roles = binder,
     .example = "alkali: 0.55 %",
     .meaning = "alkali as Na2O equivalent"},
    {.path = "materials.*.chloride",
     .value = percentage({.low = 0, .high = 50}),
     .example = "chloride: 0.01 %",
     .meaning = "chloride by mass of the material"},
    {.path = "materials.*.price",
     .value = {.form = Form::price, .range = {.low = 0, .high = 1e9}},
     .example = "price: 165 USD/short ton",
     .meaning = "price by mass or volume"},
    {.path = "materials.*.carbon",
     .value = quantity(Dimension::mass_ratio, {.low = -10, .high = 100}),
     .example = "carbon: 0.92 kg/kg",
     .meaning = "greenhouse gas by mass, CO2 equivalent"},
    {.path = "materials.*.source",
     .value = text(),
     .example = "source: \"aggregate test report of March\"",
     .meaning = "where the figures come from"},
};

constexpr std::size_t yard_heading = 2; // boardmark and title stand in a file of materials as well

template <std::size_t First, std::size_t Second>
constexpr auto joined(const Field (&first)[First], std::size_t of_first,
                      const Field (&second)[Second]) {
    std::array<Field, First + Second> all{};
    std::size_t end = 0;
    for (std::size_t i = 0; i < of_first; ++i) {
        all[end++] = first[i];
    }
    for (const Field& field : second) {
        all[end++] = field;
    }
    return std::pair{all, end};
}

constexpr auto all_mix_fields = joined(file_fields, std::size(file_fields), material_fields);
constexpr auto all_yard_fields = joined(file_fields, yard_heading, material_fields);

} // namespace

std::span<const Field> mix_fields() {
    return std::span{all_mix_fields.first}.first(all_mix_fields.second);
}

std::span<const Field> yard_fields() {
    return std::span{all_yard_fields.first}.first(all_yard_fields.second);
}

std::span<const std::string_view> reserved_names() { return reserved; }

} // namespace boardmark::input
