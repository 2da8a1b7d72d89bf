// The way of strength results into the computation: each number made impossible, each part left out
// or contradicted, one by one.

#include <boardmark/core/strength/strength_findings.hpp>
#include <boardmark/reference/tables.hpp>

#include <catch2/catch.hpp>

#include <algorithm>
#include <limits>

using namespace boardmark;
using core::Field;
using core::StrengthRecord;

namespace {

/// Results that state everything once. Figures are of no published record.
StrengthRecord whole_record() {
    return {.title = "quay terrace",
            .system = core::UnitSystem::si,
            .code = core::AcceptanceCode::en_206,
            .assessment = core::Assessment::identity,
            .specified_mpa = 30,
            .code_name = "EN 206",
            .strength_class = "C30/37",
            .specimen = {core::SpecimenShape::cylinder, 150, 300},
            .batches = {{.name = "B1", .cast = 20500, .w_cm = 0.45, .air_percent = 6},
                        {.name = "B2", .cast = 20501, .w_cm = 0.42, .air_percent = 5.5}},
            .specimens = {{"B1/1", 0, 28, 38}, {"B1/2", 0, 28, 37}, {"B2/1", 1, 28, 41}},
            .cores = {{.name = "K1",
                       .batch = 1,
                       .diameter_mm = 100,
                       .length_mm = 190,
                       .strength_mpa = 31,
                       .drilled = 20530,
                       .bagged_after_h = 1,
                       .last_wetted = 20531,
                       .tested = 20537}},
            .nominal_size_mm = 19};
}

bool names(const core::Faults& faults, Field field) {
    return std::ranges::any_of(faults, [&](const core::Fault& fault) {
        return fault.field == field && !fault.message.empty();
    });
}

std::string told(const core::Faults& faults) {
    std::string text;
    for (const core::Fault& fault : faults) {
        text += fault.message + "\n";
    }
    return text;
}

struct RecordNumber {
    Field field;
    void (*set)(StrengthRecord&, double);
};

constexpr RecordNumber numbers[] = {
    {Field::specified_strength, [](StrengthRecord& r, double x) { r.specified_mpa = x; }},
    {Field::record_age, [](StrengthRecord& r, double x) { r.strength_age_d = x; }},
    {Field::nominal_max_size, [](StrengthRecord& r, double x) { r.nominal_size_mm = x; }},
    {Field::specimen, [](StrengthRecord& r, double x) { r.specimen.width_mm = x; }},
    {Field::specimen, [](StrengthRecord& r, double x) { r.specimen.height_mm = x; }},
    {Field::batch_w_cm, [](StrengthRecord& r, double x) { r.batches[1].w_cm = x; }},
    {Field::batch_air, [](StrengthRecord& r, double x) { r.batches[1].air_percent = x; }},
    {Field::specimen_age, [](StrengthRecord& r, double x) { r.specimens[2].age_d = x; }},
    {Field::specimen_strength, [](StrengthRecord& r, double x) { r.specimens[2].strength_mpa = x; }},
    {Field::core_size, [](StrengthRecord& r, double x) { r.cores[0].diameter_mm = x; }},
    {Field::core_size, [](StrengthRecord& r, double x) { r.cores[0].length_mm = x; }},
    {Field::core_strength, [](StrengthRecord& r, double x) { r.cores[0].strength_mpa = x; }},
    {Field::core_days, [](StrengthRecord& r, double x) { r.cores[0].bagged_after_h = x; }},
};

struct RecordFault {
    const char* what;
    Field field;
    void (*make)(StrengthRecord&);
};

constexpr RecordFault faulty[] = {
    {"no system", Field::system, [](StrengthRecord& r) { r.system = core::UnitSystem{9}; }},
    {"no code", Field::acceptance_code, [](StrengthRecord& r) { r.code = core::AcceptanceCode{9}; }},
    {"no assessment", Field::assessment,
     [](StrengthRecord& r) { r.assessment = core::Assessment{9}; }},
    {"no shape", Field::specimen,
     [](StrengthRecord& r) { r.specimen.shape = core::SpecimenShape{9}; }},
    {"a cube that is none", Field::specimen,
     [](StrengthRecord& r) { r.specimen.shape = core::SpecimenShape::cube; }},
    {"cubes that cylinders are asked for", Field::specimen,
     [](StrengthRecord& r) {
         r.code = core::AcceptanceCode::aci_318;
         r.specimen = {core::SpecimenShape::cube, 150, 150};
     }},
    {"no purpose", Field::cast_batches,
     [](StrengthRecord& r) { r.batches[0].purpose = core::BatchPurpose{9}; }},
    {"production without a day", Field::cast_day,
     [](StrengthRecord& r) { r.batches[0].cast.reset(); }},
    {"a batch without a name", Field::name, [](StrengthRecord& r) { r.batches[0].name.clear(); }},
    {"a batch twice", Field::cast_batches, [](StrengthRecord& r) { r.batches[0].name = "B2"; }},
    {"a specimen twice", Field::crushed_specimens,
     [](StrengthRecord& r) { r.specimens[1].name = "B1/1"; }},
    {"a specimen of no batch", Field::crushed_specimens,
     [](StrengthRecord& r) { r.specimens[0].batch = 2; }},
    {"a core of no batch", Field::drilled_cores, [](StrengthRecord& r) { r.cores[0].batch = 2; }},
    {"a core before its concrete", Field::core_days,
     [](StrengthRecord& r) { r.cores[0].drilled = 20400; }},
    {"a core tested before it was wetted", Field::core_days,
     [](StrengthRecord& r) { r.cores[0].tested = 20530; }},
};

} // namespace

TEST_CASE("Results that state everything pass the door and are judged") {
    INFO(told(core::faults_of(whole_record())));
    const auto entered = core::complete(whole_record());
    REQUIRE(std::holds_alternative<core::CompleteRecord>(entered));
    const auto findings = core::find_strength(std::get<core::CompleteRecord>(entered), 20600,
                                              reference::tables(core::UnitSystem::si));
    REQUIRE(findings.tests.size() == 2);
    CHECK(findings.tests[0].test.mean_mpa == 37.5); // of 38 and 37
    CHECK_FALSE(findings.checks.empty());
}

TEST_CASE("A number of results that is none, or beyond all reach, is a fault of its field") {
    const double infinite = std::numeric_limits<double>::infinity();
    for (const RecordNumber& number : numbers) {
        for (const double wrong :
             {std::numeric_limits<double>::quiet_NaN(), infinite, -infinite, -1e9, 1e9}) {
            StrengthRecord record = whole_record();
            number.set(record, wrong);
            const core::Faults faults = core::faults_of(record);
            INFO(core::name_of(number.field) << " " << wrong << ": " << told(faults));
            CHECK(names(faults, number.field));
            CHECK(std::holds_alternative<core::Faults>(core::complete(record)));
        }
    }
}

TEST_CASE("What results lack or contradict is a fault of its field") {
    for (const RecordFault& wrong : faulty) {
        StrengthRecord record = whole_record();
        wrong.make(record);
        const core::Faults faults = core::faults_of(record);
        INFO(wrong.what << ": " << told(faults));
        CHECK(names(faults, wrong.field));
    }
}

TEST_CASE("What may be left out of results is no fault") {
    StrengthRecord record = whole_record();
    record.cores.clear();
    record.nominal_size_mm.reset();
    record.batches[0].w_cm.reset();
    record.batches[1].air_percent.reset();
    record.batches[1].purpose = core::BatchPurpose::trial;
    record.batches[1].cast.reset();
    INFO(told(core::faults_of(record)));
    CHECK(core::faults_of(record).empty());
}
