// Results files: what becomes of a sound one, and where and how each fault is told.

#include <boardmark/input/strength/read_strength.hpp>
#include <boardmark/units/date.hpp>

#include "mix_text.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace boardmark;
using boardmark::test::changed;
using Catch::Matchers::WithinRel;

namespace {

const std::string of_cubes = "boardmark: 1\n"
                             "title: Quay terrace\n"
                             "reporting: si\n"
                             "code: EN 206\n"
                             "strength: C30/37\n"
                             "specimen: cube 150 mm\n"
                             "batches: {B-01: {cast: 2026-03-02}}\n"
                             "specimens: {a: {batch: B-01, age: 28 d, strength: 44 MPa}}\n";

/// The same under ACI, with cylinders.
const std::string of_cylinders =
    changed(changed(changed(of_cubes, "EN 206", "ACI 318-19"), "C30/37", "5000 psi"), "cube 150 mm",
            "cylinder 4 in x 8 in");

/// Classes of EN 206 table 12.
input::StrengthOptions options(const char* today = "2026-06-01", const std::string& table = "") {
    return {.load = [table](const std::string&) -> std::variant<std::string, input::LoadFailure> {
                return table;
            },
            .classes = {{"C30/37", 30, 37}, {"C35/45", 35, 45}},
            .today = units::read_date(today)};
}

core::StrengthRecord record_of(const std::string& yaml) {
    const auto reading = input::read_strength(yaml, "results.yaml", options());
    INFO(input::render(reading.diagnostics));
    REQUIRE(reading.record);
    return **reading.record;
}

using Faults = std::vector<std::string>;

} // namespace

TEST_CASE("the strength of a class is that of the specimens: of cubes and of cylinders") {
    // EN 206 table 12: C30/37 has 30 N/mm2 of cylinders 150 mm x 300 mm and 37 of cubes of 150 mm.
    const core::StrengthRecord cubes = record_of(of_cubes);
    CHECK(cubes.code == core::AcceptanceCode::en_206);
    CHECK(cubes.strength_class == "C30/37");
    CHECK(cubes.specified_mpa == 37);
    CHECK(cubes.specimen.shape == core::SpecimenShape::cube);
    CHECK(cubes.specimen.height_mm == 150);
    CHECK(cubes.assessment == core::Assessment::conformity);
    const core::StrengthRecord cylinders = record_of(
        changed(of_cubes, "cube 150 mm", "cylinder 150 mm x 300 mm\nassessment: identity"));
    CHECK(cylinders.specified_mpa == 30);
    CHECK(cylinders.specimen.height_mm == 300);
    CHECK(cylinders.assessment == core::Assessment::identity);
    const core::StrengthRecord aci = record_of(of_cylinders);
    CHECK_THAT(aci.specified_mpa, WithinRel(test::inside(5000, "psi"), 1e-12));
    CHECK(aci.strength_class.empty());
}

TEST_CASE("a core brings its days and its hour with it") {
    const core::StrengthRecord record =
        record_of(of_cylinders +
                  "nominal_max_size: 19 mm\n"
                  "cores: {C1: {test: B-01, diameter: 95 mm, length: 142 mm, strength: 30 MPa,\n"
                  "  drilled: 2026-05-04, bagged_after: 30 min, last_wetted: 2026-05-05,\n"
                  "  tested: 2026-05-11}}\n");
    CHECK(record.nominal_size_mm == 19);
    REQUIRE(record.cores.size() == 1);
    const core::DrilledCore& core = record.cores.front();
    CHECK(core.batch == 0);
    CHECK(*core.bagged_after_h == Approx(0.5));
    CHECK(*core.tested - *core.drilled == 7);
    CHECK(*core.last_wetted - *core.drilled == 1);
}

TEST_CASE("a trial needs no day, and without a day of today none lies after it") {
    const core::StrengthRecord record =
        record_of(changed(of_cylinders, "cast: 2026-03-02", "purpose: trial"));
    CHECK(record.batches.front().purpose == core::BatchPurpose::trial);
    CHECK_FALSE(record.batches.front().cast);
    const std::string later = changed(of_cylinders, "2026-03-02", "2126-03-02");
    CHECK(input::read_strength(later, "results.yaml", options("none")).record);
    CHECK_FALSE(input::read_strength(later, "results.yaml", options()).record);
}

TEST_CASE("what is wrong in a results file and where") {
    struct Row {
        std::string text;
        Faults faults;
    };
    const std::string core =
        "cores: {C1: {test: B-01, diameter: 95 mm, length: 142 mm, strength: 30 MPa";
    const std::string cubes_under_aci = "specimen: ACI 318-19 judges cylinders; cubes show more "
                                        "strength and are not converted here";
    const Row rows[] = {
        {changed(of_cubes, "C30/37", "C30/35"),
         {"5:11 strength: 'C30/35' is not a strength class of EN 206"}},
        {changed(of_cubes, "C30/37", "high"),
         {"5:11 strength: 'high' is not a strength class of EN 206"}},
        {changed(of_cubes, "cube 150 mm", "cube 150"),
         {"6:11 specimen: 'cube 150' is neither a cylinder nor a cube"}},
        // Limits of the reader itself: 40 to 700 mm, a cylinder is higher than wide.
        {changed(of_cubes, "cube 150 mm", "cube 1500 mm"),
         {"6:11 specimen: 'cube 1500 mm' is neither a cylinder nor a cube"}},
        {changed(of_cubes, "cube 150 mm", "cube 15 mm"),
         {"6:11 specimen: 'cube 15 mm' is neither a cylinder nor a cube"}},
        {changed(of_cubes, "cube 150 mm", "cube 150 kg"),
         {"6:11 specimen: 'cube 150 kg' is neither a cylinder nor a cube"}},
        {changed(of_cubes, "cube 150 mm", "cylinder 150 mm"),
         {"6:11 specimen: 'cylinder 150 mm' is neither a cylinder nor a cube"}},
        {changed(of_cubes, "cube 150 mm", "cylinder 150 x 300 mm"),
         {"6:11 specimen: 'cylinder 150 x 300 mm' is neither a cylinder nor a cube"}},
        {changed(of_cubes, "cube 150 mm", "cylinder 150 mm x 300"),
         {"6:11 specimen: 'cylinder 150 mm x 300' is neither a cylinder nor a cube"}},
        {changed(of_cubes, "cube 150 mm", "cylinder 300 mm x 150 mm"),
         {"6:11 specimen: 'cylinder 300 mm x 150 mm' is neither a cylinder nor a cube"}},
        {changed(of_cylinders, "cylinder 4 in x 8 in", "cube 6 in"), {"6:11 " + cubes_under_aci}},
        {of_cylinders + "assessment: identity\n",
         {"9:1 'assessment' belongs to EN 206; ACI 318-19 has one kind of acceptance"}},
        // 2 to 200 MPa is a specified strength.
        {changed(of_cylinders, "5000 psi", "5000"),
         {"5:11 strength: '5000' is not a specified strength of ACI 318-19"}},
        {changed(of_cylinders, "5000 psi", "5 in"),
         {"5:11 strength: '5 in' is not a specified strength of ACI 318-19"}},
        {changed(of_cylinders, "5000 psi", "1 MPa"),
         {"5:11 strength: '1 MPa' is not a specified strength of ACI 318-19"}},
        {changed(of_cylinders, "5000 psi", "201 MPa"),
         {"5:11 strength: '201 MPa' is not a specified strength of ACI 318-19"}},
        {changed(of_cylinders, "ACI 318-19", "DIN 1045"),
         {"4:7 code: 'DIN 1045' is not one of 'ACI 318-19', 'EN 206'"}},
        {changed(of_cylinders, "batch: B-01, ", ""), {"8:13 specimens.a has no 'batch'"}},
        {changed(of_cylinders, "batch: B-01", "batch: north"),
         {"8:24 'north' is not among the batches"}},
        // A batch whose own keys are wrong is told there, and not once more at its specimen.
        {changed(of_cylinders, "{cast: 2026-03-02}", "2026-03-02"),
         {"7:17 batches.B-01: expected keys and values, found a single value"}},
        {changed(of_cylinders, "a: {batch: B-01, age: 28 d, strength: 44 MPa}", "a: 44 MPa"),
         {"8:16 specimens.a: expected keys and values, found a single value"}},
        {changed(of_cylinders, "batches: {B-01: {cast: 2026-03-02}}\n", ""),
         {"1:1 the file has no 'batches'"}},
        {changed(of_cylinders, "2026-03-02", "2026-06-02"),
         {"7:24 B-01 is cast on 2026-06-02, after today, 2026-06-01",
          "8:35 a would be crushed on 2026-06-30, after today, 2026-06-01"}},
        {of_cylinders + core + ", last_wetted: 2026-06-02}}\n",
         {"9:90 C1 would be wetted on 2026-06-02, after today, 2026-06-01"}},
        {of_cylinders + core + ", drilled: 2026-04-02, tested: 2026-04-01}}\n",
         {"9:106 C1: 'tested' is before 'drilled'"}},
        {of_cylinders + "cores: {C1: 30 MPa}\n",
         {"9:13 cores.C1: expected keys and values, found a single value"}},
        {of_cylinders + "cores: {C1: {diameter: 95 mm, length: 142 mm, strength: 30 MPa}}\n",
         {"9:9 cores.C1 has no 'test'"}},
    };
    for (const Row& row : rows) {
        INFO(row.text);
        const auto reading = input::read_strength(row.text, "results.yaml", options());
        CHECK(test::faults_of(reading.diagnostics) == row.faults);
        CHECK_FALSE(reading.record);
    }
}

TEST_CASE("a class that is nearly one is asked back by its name") {
    const auto advice = [](const char* strength) {
        const auto reading =
            input::read_strength(changed(of_cubes, "C30/37", strength), "results.yaml", options());
        return reading.diagnostics.front().advice;
    };
    CHECK(advice("C30/35") == "did you mean 'C30/37'?");
    CHECK(advice("30 MPa") == "write the class, which says what cylinders and what cubes have: "
                              "'strength: C30/37'");
}

TEST_CASE("a specified strength that is rarely so low is asked back and used") {
    // 10 MPa: common practice, no source.
    for (const auto& [strength, warnings] : {std::pair{"9.9 MPa", 1}, std::pair{"10 MPa", 0}}) {
        const auto reading = input::read_strength(changed(of_cylinders, "5000 psi", strength),
                                                  "results.yaml", options());
        CHECK(reading.record);
        CHECK(reading.diagnostics.size() == std::size_t(warnings));
    }
}

TEST_CASE("a table of specimens: blanks, quotes and empty cells") {
    const std::string from = changed(of_cylinders,
                                     "batches: {B-01: {cast: 2026-03-02}}\nspecimens: {a: {batch: "
                                     "B-01, age: 28 d, strength: 44 MPa}}",
                                     "specimens: from specimens.csv");
    const auto read = [&](const std::string& table) {
        return input::read_strength(from, "results.yaml", options("2026-06-01", table));
    };
    const auto sound = read("specimen , batch,cast,age (d),strength (MPa),air (%)\n"
                            "a,B-01 ,2026-03-02,28, 44,  \n"
                            "b,\"B-01\",,28,45\t,5\n");
    INFO(input::render(sound.diagnostics));
    REQUIRE(sound.record);
    const core::StrengthRecord& record = **sound.record;
    REQUIRE(record.batches.size() == 1);
    CHECK(record.batches.front().name == "B-01");
    CHECK(record.batches.front().air_percent == 5.);
    REQUIRE(record.specimens.size() == 2);
    CHECK(record.specimens[0].strength_mpa == 44);
    CHECK(record.specimens[1].strength_mpa == 45);

    struct Row {
        const char* table;
        const char* fault;
        const char* advice;
    };
    const char* row = "\na,B-01,28,44\n";
    for (const Row& wrong : {
             Row{"specimen,batch,age (d),strengh (MPa)",
                 "1:24 'strengh (MPa)' is not a column known here", "did you mean 'strength'?"},
             Row{"specimen,batch (d),age (d),strength (MPa)", "1:10 the column 'batch' has no unit",
                 "write 'batch'"},
             Row{"specimen,batch,age (d),strength (km)", "1:24 'km' is not a unit of strength",
                 "write 'strength (psi)'"},
             Row{"specimen,batch,age (d),age (d)",
                 "1:24 the column 'age (d)' is given a second time", "keep one"},
             Row{"specimen,batch,age (d),air (%)", "1:1 the table has no column 'strength (psi)'",
                 "the first line names the columns"},
         }) {
        INFO(wrong.table);
        const auto reading = read(std::string{wrong.table} + row);
        REQUIRE(test::faults_of(reading.diagnostics) == Faults{wrong.fault});
        CHECK(reading.diagnostics.front().advice == wrong.advice);
    }
    const auto nameless = read("specimen,batch,cast,age (d),strength (MPa)\na,,2026-03-02,28,44\n");
    CHECK(test::faults_of(nameless.diagnostics).front() == "2:3 specimens.a.batch has no value");
}

TEST_CASE("a file of another kind is told by what it holds") {
    const auto reading = input::read_strength(test::sound_mix, "mix.yaml", options());
    REQUIRE(reading.diagnostics.size() == 1);
    CHECK(reading.diagnostics.front().message ==
          "this is a mix file; 'mixture' does not belong in another kind of file");
    CHECK(reading.diagnostics.front().advice.ends_with(
        "'boardmark starter results' shows a file of results"));
}
