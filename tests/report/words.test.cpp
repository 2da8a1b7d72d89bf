#include <boardmark/report/writing/words.hpp>

#include <catch2/catch.hpp>

#include <sstream>
#include <string>

using namespace boardmark;
using core::Argument;
using core::Measure;
using core::Phrase;
using core::UnitSystem;
using report::words;

namespace {

Phrase compared(double value, double limit, Measure measure) {
    return {"{value}, at most {limit}",
            {Argument{"value", core::Quantity{value, measure}},
             Argument{"limit", core::Quantity{limit, measure}}}};
}

} // namespace

TEST_CASE("a value and its limit are shown so that they differ where they differ") {
    struct Row {
        double value;
        double limit;
        Measure measure;
        std::string us;
        std::string si;
    };
    const Row row = GENERATE(
        Row{0.40, 0.45, Measure::w_cm, "0.40, at most 0.45", "0.40, at most 0.45"},
        Row{0.45, 0.45, Measure::w_cm, "0.45, at most 0.45", "0.45, at most 0.45"},
        Row{0.454, 0.45, Measure::w_cm, "0.454, at most 0.45", "0.454, at most 0.45"},
        Row{0.4504, 0.45, Measure::w_cm, "0.4504, at most 0.45", "0.4504, at most 0.45"},
        Row{0.45004, 0.45, Measure::w_cm, "0.45004, at most 0.45", "0.45004, at most 0.45"},
        Row{0.4499, 0.45, Measure::w_cm, "0.4499, at most 0.45", "0.4499, at most 0.45"},
        Row{7.54, 7.5, Measure::percent, "7.54 %, at most 7.50 %", "7.54 %, at most 7.50 %"},
        Row{0.1503, 0.15, Measure::chloride, "0.1503 %, at most 0.1500 %",
            "0.1503 %, at most 0.1500 %"},
        // 31 MPa is 4496.17 psi, 4500 psi is 31.0264 MPa
        Row{31, 31.0264078192576, Measure::strength, "4496 psi, at most 4500 psi",
            "31.00 MPa, at most 31.03 MPa"},
        // 640 lb/yd3 is 379.6969 kg/m3
        Row{379.6, 379.696909604981, Measure::concentration, "639.8 lb/yd3, at most 640.0 lb/yd3",
            "379.6 kg/m3, at most 379.7 kg/m3"},
        Row{19.1, 19.05, Measure::aggregate_size, "0.752 in, at most 0.75 in",
            "19.10 mm, at most 19.05 mm"});
    INFO(row.value << " against " << row.limit);
    const Phrase phrase = compared(row.value, row.limit, row.measure);
    CHECK(words(phrase, UnitSystem::us) == row.us);
    CHECK(words(phrase, UnitSystem::si) == row.si);
}

TEST_CASE("differences of unit conversion alone ask for no digits") {
    CHECK(words(compared(0.45 * (1 + 1e-12), 0.45, Measure::w_cm), UnitSystem::us) ==
          "0.45, at most 0.45");
    CHECK(words(compared(5000 * 0.00689475729316836, 34.4737864658418, Measure::strength),
                UnitSystem::us) == "5000 psi, at most 5000 psi");
}

TEST_CASE("other quantities of the sentence keep their digits") {
    Phrase phrase = compared(0.4504, 0.45, Measure::w_cm);
    phrase.text += "; S1 allows {limit_S1}";
    phrase.arguments.push_back(Argument{"limit_S1", core::Quantity{0.5, Measure::w_cm}});
    CHECK(words(phrase, UnitSystem::us) == "0.4504, at most 0.45; S1 allows 0.50");
}

TEST_CASE("a quantity with a limit of its own is told from it, and the limit need not be told") {
    // 4 psi is 0.0276 MPa; 84.499 of 84.5 % (by hand, to as many digits as differ)
    const auto apart = [](double amount, double limit, Measure measure, UnitSystem system) {
        return words({"{short}",
                      {Argument{"short", core::Quantity{amount, measure}},
                       Argument{"short_limit", core::Quantity{limit, measure}}}},
                     system);
    };
    constexpr double four_psi_mpa = 4 * 0.00689475729316836;
    CHECK(apart(four_psi_mpa, 0, Measure::strength, UnitSystem::us) == "4 psi");
    CHECK(apart(four_psi_mpa, 0, Measure::strength, UnitSystem::si) == "0.03 MPa");
    CHECK(apart(100 * four_psi_mpa, 0, Measure::strength, UnitSystem::us) == "400 psi");
    CHECK(apart(84.499, 84.5, Measure::percent, UnitSystem::us) == "84.499 %");
}

TEST_CASE("a value stands alone and a limit of another measure is not compared") {
    CHECK(words({"air {value}", {Argument{"value", core::Quantity{6.04, Measure::percent}}}},
                UnitSystem::us) == "air 6.0 %");
    CHECK(words({"{value} and {limit}",
                 {Argument{"value", core::Quantity{6.04, Measure::percent}},
                  Argument{"limit", core::Quantity{6.04, Measure::strength}}}},
                UnitSystem::si) == "6.0 % and 6.0 MPa");
}

TEST_CASE("a name in a sentence is harmless and is never read as a place for a value") {
    const auto [name, shown] = GENERATE(table<std::string, std::string>({
        {"sand", "sand"},
        {"{value}", "{value}"},
        {"{", "{"},
        {"}}", "}}"},
        {"\x1B[31mred", "\\u001B[31mred"},
        {"sand\xE2\x80\xAE"
         "dnas",
         "sand\\u202Ednas"},
        {"a\nb", "a\\u000Ab"},
        {"\xFF", "\\xFF"},
        {"砂", "砂"},
    }));
    INFO(name);
    CHECK(words({"{name} states none", {Argument{"name", name}}}, UnitSystem::us) ==
          shown + " states none");
}

TEST_CASE("a sentence without values is printed as it is") {
    CHECK(words({"nothing is taken off", {}}, UnitSystem::si) == "nothing is taken off");
    CHECK(words({"", {}}, UnitSystem::si).empty());
}

TEST_CASE("why no mix follows is told with numbered ways out and fits the page") {
    const core::Unresolved unresolved{
        {"{source} ends at {most} slump; this mix is to have {slump}, at which water alone would "
         "make it segregate",
         {Argument{"source", "ACI 211.1-91 Table 6.3.3"},
          Argument{"most", core::Quantity{177.8, Measure::slump}},
          Argument{"slump", core::Quantity{203.2, Measure::slump}}}},
        {{"state the slump before the high-range water reducer goes in; the reducer brings the "
          "flow, and the table is entered with the slump of the water alone",
          {}},
         {"give the water found by trial", {}}}};
    const std::string told = report::text(unresolved, "wall\x1B[0m.yaml", UnitSystem::us);
    std::string on_one_line;
    std::istringstream page{told};
    for (std::string line; std::getline(page, line);) {
        INFO(line);
        CHECK(line.size() <= 100);
        on_one_line += (on_one_line.empty() ? "" : " ") + line.substr(line.find_first_not_of(' '));
    }
    CHECK(on_one_line ==
          "wall\\u001B[0m.yaml: no mix follows: ACI 211.1-91 Table 6.3.3 ends at 7 in slump; this "
          "mix "
          "is to have 8 in, at which water alone would make it segregate "
          "ways out: "
          "1. state the slump before the high-range water reducer goes in; the reducer brings the "
          "flow, and the table is entered with the slump of the water alone "
          "2. give the water found by trial");
    CHECK(told.find("\n  1. state") != std::string::npos);
    CHECK(told.find("\n  2. give") != std::string::npos);
    CHECK(told.ends_with("trial\n"));
}
