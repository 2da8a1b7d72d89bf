// What the name of a standard says of a material. The types are those of ASTM C150, C494, C595,
// C1017, C1157, EN 197-1 and EN 934-2, from memory, but for the set of C494's types, which is read.

#include <boardmark/core/mix/designation.hpp>

#include <catch2/catch.hpp>

#include <string>

using namespace boardmark;
using core::CementType;

TEST_CASE("the type of a cement is told by its standard, not by the end of a name") {
    using Row = std::pair<std::string, CementType>;
    const auto [standard, type] = GENERATE(values<Row>({
        {"ASTM C150 I", CementType::one_to_three},
        {"ASTM C150 I/II", CementType::one_to_three},
        {"ASTM C150/C150M-22 Type II", CementType::one_to_three},
        {"ASTM C 150 III", CementType::one_to_three},
        {"ASTM C150 IIA", CementType::one_to_three},
        {"AASHTO M 85 Type II", CementType::one_to_three},
        {"Type I/II", CementType::one_to_three},
        {"CEM I 42.5 R", CementType::one_to_three},
        {"EN 197-1 - CEM I 52,5 N-SR 3", CementType::one_to_three},
        {"CEM I 32.5 N-LH", CementType::other_portland},
        {"ASTM C150 II(MH)", CementType::other_portland}, // slower than II
        {"ASTM C150 II/V", CementType::other_portland},   // one outside I to III decides
        {"ASTM C150 IV", CementType::other_portland},
        {"ASTM C150 V", CementType::other_portland},
        {"ASTM C595 IL(10)", CementType::limestone},
        {"CEM II/A-LL 42.5 N", CementType::limestone},
        {"EN 197-1 CEM II/B-L 32.5 R", CementType::limestone},
        {"CEM II/A-M (S-LL) 42.5 N", CementType::blended},
        {"CEM II/B-S 42.5 N", CementType::blended},
        {"EN 197-1 CEM II", CementType::blended}, // ends like a Type II
        {"EN 197-1 CEM III", CementType::blended},
        {"EN 197-1 CEM III/A 42.5 N", CementType::blended},
        {"CEM V", CementType::blended},
        {"ASTM C595 IS(40)", CementType::blended},
        {"ASTM C595 I", CementType::blended},
        {"AASHTO M 240 IP(25)", CementType::blended},
        {"ASTM C1157 GU", CementType::not_told},
        {"ASTM C1157 Type I", CementType::not_told},
        {"ASTM C150-22", CementType::not_told},
        {"class I", CementType::not_told},
        {"", CementType::not_told},
    }));
    INFO(standard);
    CHECK(core::cement_type(standard) == type);
}

TEST_CASE("what an admixture's standard says that it does") {
    struct Row {
        std::string standard, c494;
        bool high_range, retards;
    };
    // ASTM C494 Table 1, initial setting, deviation from control: B, D and G 1:00 to 3:30 later; A
    // and F from 1:00 earlier to 1:30 later.
    const auto row = GENERATE(values<Row>({
        {"ASTM C494 A", "A", false, false},
        {"ASTM C494 B", "B", false, true},
        {"ASTM C494 C", "C", false, false},
        {"ASTM C494 D", "D", false, true},
        {"ASTM C494 E", "E", false, false},
        {"ASTM C494 F", "F", true, false},
        {"ASTM C494 G", "G", true, true},
        {"ASTM C494 S", "S", false, false},
        {"ASTM C494/C494M-19 Types A and F", "AF", true, false},
        {"astm c 494 type g", "G", true, true},
        {"C494F", "F", true, false},
        {"AASHTO M 194 G", "G", true, true},
        {"Type D", "D", false, true},
        {"F", "F", true, false},
        {"ASTM C494", "", false, false},
        {"ASTM C260", "", false, false},
        {"ASTM C1017 Type I", "", true, false},
        {"ASTM C1017 Type II", "", true, true},
        {"EN 934-2", "", false, false},
        {"EN 934-2 T2", "", false, false},
        {"EN 934-2: T3.1/3.2", "", true, false},
        {"EN 934-2 Table 11.1", "", true, true},
        {"EN 934-2 T10", "", false, true},
        {"EN 934-2, set retarding plasticizer", "", false, true},
        {"EN 934-2 superplasticiser", "", true, false},
        {"high-range water reducer", "", true, false},
    }));
    INFO(row.standard);
    const auto type = core::admixture_type(row.standard);
    CHECK(type.c494 == row.c494);
    CHECK(type.high_range == row.high_range);
    CHECK(type.retards == row.retards);
}
