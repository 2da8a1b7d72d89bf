#include "../values/field_values.hpp"

namespace boardmark::input {
namespace {

using units::Dimension;

constexpr std::string_view systems[] = {"us", "si"};
constexpr std::string_view codes[] = {"ACI 318-19", "EN 206"};
constexpr std::string_view assessments[] = {"conformity", "identity"};
constexpr std::string_view purposes[] = {"production", "trial"};

constexpr Range strength_mpa{.low = 0.5, .high = 250};
constexpr Range age_d{.low = 0.25, .high = 1100};

constexpr Field fields[] = {
    {.path = "boardmark",
     .value = text(),
     .example = "boardmark: 1",
     .meaning = "version of this format",
     .required = true},
    {.path = "title",
     .value = text(),
     .example = "title: Quay terrace, cylinders of the spring",
     .meaning = "whose results these are",
     .required = true},
    {.path = "reporting",
     .value = one_of(systems),
     .example = "reporting: us",
     .meaning = "units of the text, and the family of code constants",
     .required = true},
    {.path = "code",
     .value = one_of(codes),
     .example = "code: ACI 318-19",
     .meaning = "whose rules of acceptance hold",
     .required = true},
    {.path = "assessment",
     .value = one_of(assessments),
     .example = "assessment: identity",
     .default_text = "conformity",
     .meaning = "by EN 206: the producer's conformity, or identity of a delivery on site"},
    {.path = "strength",
     .value = text(),
     .example = "strength: 5000 psi",
     .meaning = "specified strength; by EN 206 its class, such as C30/37",
     .required = true},
    {.path = "strength_age",
     .value = quantity(Dimension::time, {.low = 1, .high = 365}),
     .example = "strength_age: 28 d",
     .default_text = "28 d",
     .meaning = "age at which the strength is specified"},
    {.path = "specimen",
     .value = text(),
     .example = "specimen: cylinder 4 in x 8 in",
     .meaning = "what all specimens are: a cylinder and its size, or 'cube 150 mm'",
     .required = true},
    {.path = "batches",
     .shape = Shape::section,
     .example = "batches: {B-01: {cast: 2026-03-02, w_cm: 0.40, air: 6.2 %}}",
     .meaning = "batches that were sampled, in order of casting"},
    {.path = "batches.*",
     .shape = Shape::section,
     .example = "B-01: {cast: 2026-03-02, w_cm: 0.40, air: 6.2 %}",
     .meaning = "one batch"},
    {.path = "batches.*.cast",
     .value = date(),
     .example = "cast: 2026-03-02",
     .meaning = "day of casting; of a trial it may be left out"},
    {.path = "batches.*.purpose",
     .value = one_of(purposes),
     .example = "purpose: trial",
     .default_text = "production",
     .meaning = "production is judged; trials serve the line of strength over w/cm only"},
    {.path = "batches.*.w_cm",
     .value = usually(number({.low = 0.15, .high = 1.5}), {.low = 0.25, .high = 0.8}),
     .example = "w_cm: 0.40",
     .meaning = "mixing water over cementitious material, as batched"},
    {.path = "batches.*.air",
     .value = usually(percentage({.low = 0, .high = 20}, 0.1), {.low = 0.8, .high = 12}),
     .example = "air: 6.2 %",
     .meaning = "air of the fresh concrete"},
    {.path = "specimens",
     .shape = Shape::section,
     .example = "specimens: from specimens.csv",
     .meaning = "what was crushed, here or in a CSV file beside this one",
     .required = true,
     .from_file = true},
    {.path = "specimens.*",
     .shape = Shape::section,
     .example = "B-01/1: {batch: B-01, age: 28 d, strength: 5390 psi}",
     .meaning = "one cylinder or cube"},
    {.path = "specimens.*.batch",
     .value = text(),
     .example = "batch: B-01",
     .meaning = "the batch it was made of",
     .required = true},
    {.path = "specimens.*.age",
     .value = quantity(Dimension::time, age_d),
     .example = "age: 28 d",
     .meaning = "its age when crushed",
     .required = true},
    {.path = "specimens.*.strength",
     .value = usually(quantity(Dimension::stress, strength_mpa), {.low = 2, .high = 120}),
     .example = "strength: 5390 psi",
     .meaning = "its compressive strength",
     .required = true},
};

} // namespace

std::span<const Field> strength_fields() {
    return fields;
}

} // namespace boardmark::input
