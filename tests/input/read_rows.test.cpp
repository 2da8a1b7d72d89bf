// CSV of a record: what a spreadsheet may do to it is read or refused by line and column.

#include <boardmark/input/csv/read_rows.hpp>

#include <catch2/catch.hpp>

using namespace boardmark;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

constexpr auto header = "batch,date,mix,slump (mm)\n";

input::RowsReading read(const std::string& text) {
    return input::read_rows(text, "rows.csv");
}

std::string faults_of(const std::string& text) {
    const auto reading = read(text);
    CHECK_FALSE(reading.sound);
    CHECK(reading.trials.empty());
    CHECK(reading.specimens.empty());
    return input::render(reading.diagnostics, "nothing was saved");
}

struct Wrong {
    std::string text;
    std::string says;
};

} // namespace

TEST_CASE("rows of trials are read in the units of their header") {
    const auto reading = read("Batch,date,mix,slump (in),density (lb/ft3),temperature (degF),w/cm\n"
                              "T-1,2026-03-02,quay-wall.yaml,4,143.1,68,0.403\n");
    REQUIRE(reading.sound);
    REQUIRE(reading.trials.size() == 1);
    const auto& trial = reading.trials.front();
    CHECK(trial.batch == "T-1");
    CHECK(trial.date == "2026-03-02");
    CHECK_THAT(*trial.slump_mm, WithinAbs(101.6, 1e-9)); // 1 in = 25.4 mm exactly
    // 1 lb/ft3 = 16.01846 kg/m3, NIST SP 811 (2008), Appendix B.8
    CHECK_THAT(*trial.density_kg_m3, WithinAbs(143.1 * 16.01846, 1e-3));
    CHECK_THAT(*trial.temperature_c, WithinAbs(20, 1e-9));
    CHECK(trial.w_cm == 0.403);
    CHECK(trial.air_percent == std::nullopt);
    CHECK(reading.system == core::UnitSystem::us);
    REQUIRE(reading.places.size() == 1);
    CHECK(reading.places.front().line == 2);
}

TEST_CASE("a column named specimen makes it specimens") {
    const auto reading = read("date,age (d),strength (psi),specimen,batch\n"
                              "2026-03-02,28,5990,A-1,T-1\n");
    REQUIRE(reading.sound);
    REQUIRE(reading.specimens.size() == 1);
    CHECK(reading.specimens.front().specimen == "A-1");
    // 1 psi = 6.894757e-3 MPa, NIST SP 811 (2008), Appendix B.8
    CHECK_THAT(*reading.specimens.front().strength_mpa, WithinAbs(5990 * 6.894757e-3, 1e-4));
}

TEST_CASE("what spreadsheets write is read") {
    const auto text =
        GENERATE(std::string{"batch,date,mix,slump (mm)\r\nT-1,2026-03-02,m.yaml,76.2\r\n"},
                 std::string{"\xEF\xBB\xBF"
                             "batch,date,mix,slump (mm)\nT-1,2026-03-02,m.yaml,76.2\n"},
                 std::string{"\"batch\",\"date\",\"mix\",\"slump (mm)\"\n"
                             "\"T-1\",\"2026-03-02\",\"m.yaml\",\"76.2\"\n"},
                 std::string{"batch, date, mix, slump(mm)\n\nT-1,2026-03-02,m.yaml,76.2\n\n"},
                 std::string{"batch,date,mix,slump (mm)\nT-1,2026-03-02,m.yaml,76.2"});
    INFO(text);
    const auto reading = read(text);
    INFO(input::render(reading.diagnostics));
    REQUIRE(reading.sound);
    REQUIRE(reading.trials.size() == 1);
    CHECK(reading.trials.front().slump_mm == 76.2);
    CHECK(reading.trials.front().mix == "m.yaml");
}

TEST_CASE("the mark against formulas goes, once") {
    const auto reading = read("batch,date,mix,title\n"
                              "'=1+1,2026-03-02,''quoted,\"a \"\"b\"\", c\"\n");
    REQUIRE(reading.sound);
    CHECK(reading.trials.front().batch == "=1+1");
    CHECK(reading.trials.front().mix == "'quoted");
    CHECK(reading.trials.front().title == "a \"b\", c");
}

TEST_CASE("blanks around a cell belong to no name") {
    // Nobody sees them, and 'S1 ' would be another specimen, 'wall.yaml ' another mix than without.
    const auto trials = read("batch, date , mix,slump (mm)\n"
                             " T-1 ,2026-03-02 ,\twall.yaml , 76.2 \n\"T-2 \",2026-03-02,m,\n");
    INFO(input::render(trials.diagnostics));
    REQUIRE(trials.trials.size() == 2);
    CHECK(trials.trials[0].batch == "T-1");
    CHECK(trials.trials[0].mix == "wall.yaml");
    CHECK(trials.trials[0].slump_mm == 76.2);
    CHECK(trials.trials[1].batch == "T-2 "); // in quotes a blank is meant (RFC 4180)
    const std::string specimens = "specimen,batch,date,age (d),strength (psi)\n";
    CHECK_THAT(faults_of(specimens + "S1 ,B1,2026-02-20,28,5000\n S1,B1,2026-02-20,28,5000\n"),
               Contains("rows.csv:3:2: error: 'S1' is in line 2 as well"));
}

TEST_CASE("wrong files are refused where they are wrong") {
    const auto wrong = GENERATE(
        Wrong{"", "rows.csv: error: the file holds no rows"},
        Wrong{"\n\n", "the file holds no rows"}, Wrong{header, "the file holds no rows"},
        Wrong{"batch;date;mix\nT-1;2026-03-02;m.yaml\n",
              "rows.csv:1:1: error: the columns are separated by semicolons"},
        Wrong{"batch,dat,mix\n", "rows.csv:1:7: error: 'dat' is not a column known here"},
        Wrong{"batch,dat,mix\n", "did you mean 'date'?"},
        Wrong{"batch,date,mix,colour\n", "one of: batch, date, mix, title, density"},
        Wrong{"batch,date,mix,date\n", "rows.csv:1:16: error: the column 'date' is given twice"},
        Wrong{"batch,date\n", "there is no column 'mix'"},
        Wrong{"batch,date,mix,slump\n", "'slump' does not say its unit"},
        Wrong{"batch,date,mix,slump\n", "write 'slump (mm)'"},
        Wrong{"batch,date,mix,slump (inch)\n", "'inch' is not a unit known here"},
        Wrong{"batch,date,mix,slump (psi)\n", "'psi' is a stress"},
        Wrong{"batch,date,mix,w/cm (%)\n", "'w/cm' has no unit"},
        Wrong{std::string{header} + "T-1,2026-03-02,m\n",
              "rows.csv:2:16: error: the row has 3 cells; the header names 4 columns"},
        Wrong{std::string{header} + "T-1,2026-03-02,m,1,2\n", "the row has 5 cells"},
        Wrong{std::string{header} + "T-1,2026-03-02,m,abc\n",
              "rows.csv:2:18: error: slump: 'abc mm' does not begin with a number"},
        Wrong{std::string{header} + "T-1,2026-03-02,m,\"76,2\"\n", "a number has no comma"},
        Wrong{std::string{header} + "T-1,2026-03-02,m,nan\n", "not a number that can be measured"},
        Wrong{std::string{header} + "T-1,2026-03-02,m,306\n", "306 mm is out of range"},
        Wrong{std::string{header} + "T-1,2026-03-02,m,-1\n", "-1 mm is out of range"},
        Wrong{std::string{header} + "T-1,2.3.2026,m,76\n",
              "rows.csv:2:5: error: date: '2.3.2026' is not a date"},
        Wrong{std::string{header} + "T-1,2026-02-30,m,76\n", "is not a date"},
        Wrong{std::string{header} + ",2026-03-02,m,76\n",
              "rows.csv:2:1: error: batch: the cell is empty"},
        Wrong{std::string{header} + "T-1,,m,76\n", "date: the cell is empty"},
        Wrong{std::string{header} + "   ,2026-03-02,m,76\n", "batch: the cell is empty"},
        Wrong{std::string{header} + std::string(201, 'x') + ",2026-03-02,m,76\n",
              "the text has 201 characters"},
        Wrong{std::string{header} + "T-1,2026-03-02,m,76\nT-1,2026-03-03,m,76\n",
              "rows.csv:3:1: error: 'T-1' is in line 2 as well"},
        Wrong{std::string{header} + "T-1,2026-03-02,\"m,76\n",
              "rows.csv:2:16: error: the quote is not closed on its line"},
        Wrong{std::string{header} + "T\"1,2026-03-02,m,76\n", "there is a quote inside a cell"},
        Wrong{std::string{header} + "\"T\"1,2026-03-02,m,76\n", "there is a quote inside a cell"},
        Wrong{std::string{header} + "T-1,2026-03-02,m\ra,76\n", "a lone carriage return"},
        Wrong{std::string{header} + "T-1,2026-03-02,m\x1b[2J,76\n", "a control character"},
        Wrong{std::string{header} + "T-1,2026-03-02,\xE9,76\n", "the text is not UTF-8 here"},
        Wrong{std::string(input::largest_csv_file + 1, 'x'), "larger than 8 MiB"});
    INFO(wrong.text.substr(0, 300));
    CHECK_THAT(faults_of(wrong.text), Contains(wrong.says));
}

TEST_CASE("wrong files of specimens are refused where they are wrong") {
    const std::string sound = "specimen,batch,date,age (d),strength (psi)\n";
    const auto wrong = GENERATE_COPY(
        Wrong{sound, "the file holds no rows"},
        Wrong{"specimen,batch,dat,age (d),strength (psi)\n",
              "rows.csv:1:16: error: 'dat' is not a column known here"},
        Wrong{"specimen,batch,dat,age (d),strength (psi)\n", "did you mean 'date'?"},
        Wrong{"specimen,batch,date,age (d),strength (psi),colour\n", "one of: specimen, batch"},
        Wrong{"specimen,batch,date,age (d),strength (psi),batch\n",
              "rows.csv:1:44: error: the column 'batch' is given twice"},
        Wrong{"specimen,batch,date,strength (psi)\n", "there is no column 'age'"},
        Wrong{"specimen,batch,date,strength (psi)\n", "add 'age (d)'"},
        Wrong{"specimen,batch,date,age,strength (psi)\n", "'age' does not say its unit"},
        Wrong{"specimen,batch,date,age (days and),strength (psi)\n",
              "'days and' is not a unit known here"},
        Wrong{"specimen,batch,date,age (d),strength (mm)\n", "'mm' is a length"},
        Wrong{"specimen,batch,date (d),age (d),strength (psi)\n", "'date' has no unit"},
        Wrong{"specimen,batch,date,age (d),\n", "'' is not a column known here"},
        Wrong{sound + "A-1,T-1,2026-03-02,28\n",
              "rows.csv:2:20: error: the row has 4 cells; the header names 5 columns"},
        Wrong{sound + "A-1,T-1,2026-03-02,,5990\n", "age: the cell is empty"},
        Wrong{sound + "A-1,T-1,2026-03-02,28,\"5,990\"\n", "a number has no comma"},
        Wrong{sound + "A-1,T-1,soon,28,5990\n", "date: 'soon' is not a date"},
        Wrong{sound + "A-1,T-1,2026-03-02,28,5990\nA-1,T-1,2026-03-02,28,6010\n",
              "rows.csv:3:1: error: 'A-1' is in line 2 as well"});
    INFO(wrong.text);
    CHECK_THAT(faults_of(wrong.text), Contains(wrong.says));
}

TEST_CASE("a relative yield in percent is refused, an unusual one asked back") {
    // The ratio of two volumes that were meant to be the same: 0.9 to 1.1; common practice, no
    // source.
    const std::string named = "batch,date,mix,relative yield\nT-1,2026-03-02,m,";
    CHECK_THAT(faults_of(named + "99.8\n"),
               Contains("relative yield: 99.8 is out of range") && Contains("0.998?"));
    CHECK_THAT(faults_of(named + "100.4\n"), Contains("1.004?"));
    CHECK_THAT(faults_of("batch,date,mix,w/cm\nT-1,2026-03-02,m,40\n"), Contains("0.4?"));
    const auto unusual = read(named + "1.2\n");
    CHECK(unusual.sound);
    CHECK_THAT(input::render(unusual.diagnostics), Contains("relative yield: 1.2 is unusual"));
    CHECK(read(named + "1.05\n").diagnostics.empty());
}

TEST_CASE("all errors of a file are told, the rows after them as well") {
    const std::string told = faults_of(std::string{header} + "T-1,2026-03-02,m,abc\n" +
                                       "T-2,tomorrow,m,400\n" + "T-3,2026-03-02,m,76\n");
    CHECK_THAT(told, Contains("rows.csv:2:18"));
    CHECK_THAT(told, Contains("rows.csv:3:5"));
    CHECK_THAT(told, Contains("rows.csv:3:16"));
    CHECK_THAT(told, Contains("3 errors in rows.csv; nothing was saved"));
}
