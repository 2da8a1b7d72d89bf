#include "paper_fields.hpp"

#include "../values/field_values.hpp"

namespace boardmark::input {
namespace {

using units::Dimension;

constexpr std::string_view carried_by[] = {"performance", "proportions"};

constexpr Value paper_age() {
    return usually(quantity(Dimension::time, {.low = 1, .high = 3653}), {.low = 14, .high = 1100});
}

// Dates of what is handed in with a mix.
constexpr Field dated[] = {
    {.path = "papers",
     .shape = Shape::section,
     .example = "papers: {cement: {mill_certificate: 2027-03-01}, trial_batches: 2027-03-20}",
     .meaning = "the dates on the papers that are handed in with the mix"},
    {.path = "papers.trial_batches",
     .value = date(),
     .example = "trial_batches: 2027-03-20",
     .meaning = "when the trial batches behind the proportions were made"},
    {.path = "papers.records",
     .value = date(),
     .example = "records: 2026-01-15",
     .meaning = "the last test of the strength record"},
    {.path = "papers.*",
     .shape = Shape::section,
     .example = "cement: {mill_certificate: 2027-03-01}",
     .meaning = "papers of one material, by its name under 'materials'"},
    {.path = "papers.*.mill_certificate",
     .value = date(),
     .example = "mill_certificate: 2027-03-01",
     .meaning = "of a cement"},
    {.path = "papers.*.report",
     .value = date(),
     .example = "report: 2027-02-10",
     .meaning = "test report of an aggregate or a supplementary cementitious material"},
    {.path = "papers.*.certificate",
     .value = date(),
     .example = "certificate: 2027-01-20",
     .meaning = "of an admixture: that it conforms to its standard"},
    {.path = "papers.*.reactivity",
     .value = date(),
     .example = "reactivity: 2026-06-30",
     .meaning = "evidence that an aggregate does not react with alkali, or is kept from it"},
};

// What the designer's files say of the papers of the job.
constexpr Field of_the_job[] = {
    {.path = "schedule",
     .shape = Shape::section,
     .example = "schedule: {first_pour: 2027-05-10, pour_days: 3}",
     .meaning = "days of the job, from which the days of the papers are counted"},
    {.path = "schedule.first_pour",
     .value = date(),
     .example = "first_pour: 2027-05-10",
     .meaning = "when the first concrete of the work is placed"},
    {.path = "schedule.mockup",
     .value = date(),
     .example = "mockup: 2027-03-11",
     .meaning = "when the mock-up is cast"},
    {.path = "schedule.pour_days",
     .value = usually(count({.low = 1, .high = 2000}), {.low = 1, .high = 60}),
     .example = "pour_days: 3",
     .meaning = "days on which concrete is placed; each has a strength test at least"},
    {.path = "concrete_by",
     .value = one_of(carried_by),
     .example = "concrete_by: performance",
     .meaning = "who carries w/cm and proves it: the supplier, who chooses the proportions, or the "
                "designer, who states them"},
    {.path = "paper_ages",
     .shape = Shape::section,
     .example = "paper_ages: {mill_certificate: 90 d, aggregate_report: 12 months}",
     .meaning = "how old a paper may be, in place of what is usual; months are the calendar's"},
    {.path = "paper_ages.mill_certificate",
     .value = paper_age(),
     .example = "mill_certificate: 90 d",
     .default_text = "90 d",
     .meaning = "of a cement; the age is from memory"},
    {.path = "paper_ages.supplementary_report",
     .value = paper_age(),
     .example = "supplementary_report: 6 months",
     .default_text = "6 months",
     .meaning = "of a supplementary cementitious material"},
    {.path = "paper_ages.aggregate_report",
     .value = paper_age(),
     .example = "aggregate_report: 12 months",
     .default_text = "12 months",
     .meaning = "grading, densities, absorption; the age is from memory"},
    {.path = "paper_ages.reactivity_report",
     .value = paper_age(),
     .example = "reactivity_report: 24 months",
     .default_text = "24 months",
     .meaning = "of an aggregate and alkali; the age is from memory"},
    {.path = "paper_ages.admixture_certificate",
     .value = paper_age(),
     .example = "admixture_certificate: 12 months",
     .meaning = "of an admixture; no age is asked unless it is stated"},
    {.path = "paper_ages.trial_batches",
     .value = paper_age(),
     .example = "trial_batches: 24 months",
     .default_text = "24 months",
     .meaning = "behind the proportions"},
    {.path = "paper_ages.records",
     .value = paper_age(),
     .example = "records: 24 months",
     .default_text = "24 months",
     .meaning = "of strength tests"},
    {.path = "decisions",
     .shape = Shape::section,
     .example = "decisions: {loads_rejected_by: the owner's laboratory}",
     .meaning = "what the specification asks to be settled, in your own words"},
    {.path = "decisions.tests_by",
     .value = text(),
     .example = "tests_by: a laboratory that the owner pays",
     .meaning = "who samples and tests the concrete"},
    {.path = "decisions.loads_rejected_by",
     .value = text(),
     .example = "loads_rejected_by: the laboratory's technician",
     .meaning = "who may send a load back"},
    {.path = "decisions.accepted_by",
     .value = text(),
     .example = "accepted_by: the designer",
     .meaning = "the one who judges the faces"},
    {.path = "decisions.release_agent",
     .value = text(),
     .example = "release_agent: \"a vegetable-oil emulsion, sprayed thin\"",
     .meaning = "kind of release agent and how it is put on"},
    {.path = "decisions.bar_supports",
     .value = text(),
     .example = "bar_supports: \"of concrete of the same mix, or stainless steel\"",
     .meaning = "what spacers and chairs at the faces are made of"},
    {.path = "decisions.tying_wire",
     .value = text(),
     .example = "tying_wire: soft stainless steel",
     .meaning = "wire that ties the bars"},
    {.path = "decisions.tie_holes",
     .value = text(),
     .example = "tie_holes: \"a precast plug, 1/4 in behind the face\"",
     .meaning = "how the holes of form ties are left"},
    {.path = "decisions.curing",
     .value = text(),
     .example = "curing: \"forms left on, then damp covers that do not touch the face\"",
     .meaning = "means of curing"},
    {.path = "decisions.patching",
     .value = text(),
     .example = "patching: only where the designer has marked a place",
     .meaning = "which faults are patched at all"},
    {.path = "decisions.sealer",
     .value = text(),
     .example = "sealer: \"silane, 40 % or more, clear\"",
     .meaning = "sealer of the faces, or none"},
    {.path = "decisions.deicers",
     .value = text(),
     .example = "deicers: \"none in the first winter, sand instead\"",
     .meaning = "deicing salt in the first winter"},
};

} // namespace

std::span<const Field> dated_paper_fields() {
    return dated;
}

std::span<const Field> job_fields() {
    return of_the_job;
}

} // namespace boardmark::input
