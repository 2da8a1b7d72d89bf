// A whole file: version, heading, the yard, the order of faults, and that byte-order marks and line
// ends change nothing.

#include "mix_text.hpp"

#include <catch2/catch.hpp>

#include <map>
#include <string>
#include <vector>

using namespace boardmark;
using namespace boardmark::test;
using input::Purpose;

namespace {

using Faults = std::vector<std::string>;

const std::string yard = "boardmark: 1\n"
                         "title: The yard\n"
                         "materials:\n"
                         "  cement: {kind: white cement}\n"
                         "  stone: {kind: coarse aggregate, nominal_max_size: 20 mm, "
                         "relative_density: 2.70, absorption: 0.4 %, "
                         "dry_rodded_density: 1600 kg/m3}\n"
                         "  sand: {kind: fine aggregate, relative_density: 2.60, "
                         "absorption: 0.8 %, fineness_modulus: 2.6}\n";

const std::string mix_from_yard = "boardmark: 1\n"
                                  "title: Quay terrace\n"
                                  "reporting: si\n"
                                  "requirements: {strength: 30 MPa, slump: 80 mm}\n"
                                  "materials: from yard.yaml\n"
                                  "mixture:\n"
                                  "  binder: {cement: 100 %}\n"
                                  "  coarse: {stone: 100 %}\n"
                                  "  fine: {sand: 100 %}\n";

/// Reads with other files at hand, by their names.
input::MixReading read_with(const std::string& mix,
                            const std::map<std::string, std::string>& files) {
    auto options = read_options(Purpose::proportion);
    options.load =
        [files](const std::string& name) -> std::variant<std::string, input::LoadFailure> {
        const auto found = files.find(name);
        if (found == files.end()) {
            return input::LoadFailure{"it is not there"};
        }
        return found->second;
    };
    return input::read_mix(mix, "mix.yaml", options);
}

/// Faults as "file:line:column message".
Faults placed(const input::Diagnostics& diagnostics) {
    Faults faults = faults_of(diagnostics);
    for (std::size_t i = 0; i < faults.size(); ++i) {
        faults[i].insert(0, diagnostics[i].file + ":");
    }
    return faults;
}

std::string with_windows_line_ends(const std::string& text) {
    std::string result;
    for (const char character : text) {
        result += character == '\n' ? std::string{"\r\n"} : std::string{character};
    }
    return result;
}

} // namespace

TEST_CASE("the heading arrives") {
    const core::Mix mix = mix_of(sound_mix);
    CHECK(mix.title == "Quay terrace");
    CHECK(mix.system == core::UnitSystem::us);
    CHECK(mix_of(changed(sound_mix, "reporting: us", "reporting: si")).system ==
          core::UnitSystem::si);
}

TEST_CASE("the method may be named in two ways and left out") {
    const auto [line, readable] = GENERATE(table<std::string, bool>({
        {"", true},
        {"method: ACI 211.1\n", true},
        {"method: ACI 211.1-91\n", true},
        {"method: ACI 211.1-22\n", false},
    }));
    INFO(line);
    CHECK(faults_in(changed(sound_mix, "requirements:\n", line + "requirements:\n")).empty() ==
          readable);
}

TEST_CASE("a byte-order mark and the line ends of Windows give the same mix") {
    const std::string mark = "\xEF\xBB\xBF";
    const auto text =
        GENERATE_COPY(as<std::string>{}, mark + sound_mix, with_windows_line_ends(sound_mix),
                      mark + with_windows_line_ends(sound_mix));
    const core::Mix mix = mix_of(text);
    const core::Mix expected = mix_of(sound_mix);
    CHECK(mix.title == expected.title);
    CHECK(mix.requirements.strength_mpa == expected.requirements.strength_mpa);
    CHECK(mix.binder.at(0).material->name == expected.binder.at(0).material->name);
    CHECK(mix.fine.at(0).material->aggregate.fineness_modulus ==
          expected.fine.at(0).material->aggregate.fineness_modulus);
}

TEST_CASE("a byte-order mark and the line ends of Windows shift no column") {
    const std::string wrong = changed(sound_mix, "boardmark: 1", "boardmark: 2");
    const Faults expected = faults_in(wrong);
    REQUIRE(expected.size() == 1);
    CHECK(faults_in("\xEF\xBB\xBF" + wrong) == expected);
    CHECK(faults_in(with_windows_line_ends(wrong)) == expected);
}

TEST_CASE("the version of the format has its own words for each way to be wrong") {
    const auto [line, fault] = GENERATE(table<std::string, std::string>({
        {"", "1:1 the file has no 'boardmark'; it says which version of the format follows"},
        {"boardmark: 2\n", "1:12 boardmark: version '2' of the format is not known here; this "
                           "program reads version 1"},
        {"boardmark: \"1\"\n", "1:12 boardmark: the version is a bare number, not a text"},
        {"boardmark: 1.0\n", "1:12 boardmark: the version is a whole number"},
        {"boardmark:\n", "1:1 boardmark has no value"},
    }));
    INFO(line);
    CHECK(faults_in(changed(sound_mix, "boardmark: 1\n", line)) == Faults{fault});
}

TEST_CASE("required sections that are missing are told at the top of the file") {
    const auto [text, fault] = GENERATE(table<std::string, std::string>({
        {changed(sound_mix, "title: Quay terrace\n", ""), "1:1 the file has no 'title'"},
        {changed(sound_mix, "reporting: us\n", ""),
         "1:1 the file has no 'reporting'; it selects units and tables"},
        {sound_mix.substr(0, sound_mix.find("mixture:")),
         "1:1 the file has no 'mixture'; nor 'proportions'"},
        {changed(sound_mix, "requirements:\n  strength: 4500 psi\n  slump: 4 in\n", ""),
         "1:1 the file has no 'requirements'"},
    }));
    CHECK(faults_in(text) == Faults{fault});
}

TEST_CASE("the root of a file holds keys") {
    const auto [text, fault] = GENERATE(table<std::string, std::string>({
        {"concrete\n", "1:1 expected keys and values at top level, found a single value"},
        {"- boardmark: 1\n", "1:1 expected keys and values at top level, found a list"},
    }));
    INFO(text);
    CHECK(faults_in(text) == Faults{fault});
}

TEST_CASE("faults are told in the order of the file however they are found") {
    std::string text = changed(sound_mix, "{cement: 100 %}", "{cemnt: 100 %}"); // found last
    text = changed(text, "4 in", "4 kg");
    text = changed(text, "kind: fine aggregate", "kind: fine agregate");
    text = changed(text, "title: Quay terrace", "title: \"\"");
    CHECK(faults_in(text) ==
          Faults{"2:8 title: the text is empty",
                 "6:10 requirements.slump: '4 kg' is a mass (lb, kg); a length (in, ft, mm, m) is "
                 "expected",
                 "16:11 materials.sand.kind: 'fine agregate' is not a kind of material known here",
                 "22:12 'cemnt' is not among the materials"});
}

TEST_CASE("faults of one line are told from left to right") {
    CHECK(faults_in(changed(sound_mix, "{cement: 100 %}", "{lime: 50, chalk: 50}")) ==
          Faults{"22:18 mixture.binder.lime: '50' has no unit; a percentage (%) is expected",
                 "22:29 mixture.binder.chalk: '50' has no unit; a percentage (%) is expected"});
}

TEST_CASE("a wrong value is not also told as missing") {
    CHECK(faults_in(changed(sound_mix, "slump: 4 in", "slump: 4")) ==
          Faults{"6:10 requirements.slump: '4' has no unit; a length (in, ft, mm, m) is expected"});
    CHECK(faults_in(changed(sound_mix, "absorption: 0.5 %", "absorption: half")) ==
          Faults{"13:17 materials.stone.absorption: 'half' does not begin with a number"});
}

TEST_CASE("a misspelt key is not also told as missing") {
    struct Case {
        std::string from;
        std::string to;
        std::string fault;
    };
    const auto [from, to, fault] = GENERATE(values<Case>({
        {"slump:", "slmup:", "6:3 'requirements.slmup' is not a key of this format"},
        {"title:", "titel:", "2:1 'titel' is not a key of this format"},
        {"reporting:", "reportng:", "3:1 'reportng' is not a key of this format"},
        {"    kind: coarse", "    knd: coarse",
         "10:5 'materials.stone.knd' is not a key of this format"},
        {"absorption: 0.5", "absorbtion: 0.5",
         "13:5 'materials.stone.absorbtion' is not a key of this format"},
        {"fineness_modulus", "finess_modulus",
         "19:5 'materials.sand.finess_modulus' is not a key of this format"},
    }));
    INFO(to);
    CHECK(faults_in(changed(sound_mix, from, to)) == Faults{fault});
}

TEST_CASE("a misspelt section is not also told as missing") {
    const auto [from, to] = GENERATE(table<std::string, std::string>({
        {"\nrequirements:", "\nrequirments:"},
        {"\nmixture:", "\nmixtur:"},
        {"\nmaterials:", "\nmaterial:"},
        {"  binder: {cement", "  bindr: {cement"},
        {"  coarse: {stone", "  corase: {stone"},
        {"  fine: {sand", "  fnie: {sand"},
        {"  slump: 4 in\n", "  slump: 4 in\n  strenght_records: {tests: 18}\n"},
    }));
    INFO(to);
    const Faults faults = faults_in(changed(sound_mix, from, to));
    REQUIRE(faults.size() == 1);
    CHECK_THAT(faults[0], Catch::Matchers::EndsWith("is not a key of this format"));
}

TEST_CASE("a key with a point in it is not the key of a section") {
    const Faults faults =
        faults_in(changed(sound_mix, "reporting: us\n", "reporting: us\nrequirements.air: 6 %\n"));
    CHECK(faults == Faults{"4:1 'requirements.air' is not a key of this format"});
}

TEST_CASE("a warning stands beside the mix") {
    const auto reading = input::read_mix(with_requirement("air: 0.06 %"), "test.yaml",
                                         read_options(Purpose::proportion));
    CHECK(reading.mix.has_value());
    REQUIRE(reading.diagnostics.size() == 1);
    CHECK(reading.diagnostics[0].severity == input::Severity::warning);
}

TEST_CASE("percentages that look like fractions are warned of") {
    const auto text =
        GENERATE(with_requirement("air: 0.06 %"), with_selections("fine_share: 0.44 %"),
                 with_selections("air: 0.06 %"), with_dose("as needed", "solids: 0.35 %"),
                 with_dose("4 fl oz/cwt", "water_reduction: {4 fl oz/cwt: 0.08 %}"),
                 with_cement("    contains: {slag cement: 0.3 %}\n"));
    INFO(text);
    const auto reading = input::read_mix(text, "test.yaml", read_options(Purpose::proportion));
    CHECK(reading.mix.has_value());
    REQUIRE(reading.diagnostics.size() == 1);
    CHECK_THAT(reading.diagnostics[0].message, Catch::Matchers::EndsWith("is unusually small"));
}

TEST_CASE("small figures that are usual are not warned of") {
    const auto text =
        GENERATE(with_cement("    chloride: 0.01 %\n"), with_cement("    alkali: 0.55 %\n"),
                 with_sand("    moisture: 1.2 %\n"));
    INFO(text);
    CHECK(faults_in(text).empty());
}

TEST_CASE("a file holds a mixture or proportions and not both") {
    CHECK(faults_in(sound_mix + "proportions: {volume: 1 m3}\n", Purpose::check) ==
          Faults{"25:1 'mixture' and 'proportions' cannot both be given: amounts are either "
                 "selected or submitted"});
}

TEST_CASE("a submitted mix is not proportioned") {
    CHECK(faults_in(submitted_mix, Purpose::proportion) ==
          Faults{"10:1 'proportions' are submitted amounts; there is nothing to proportion"});
}

TEST_CASE("moistures of the command line name aggregates of the file") {
    const auto [name, known] = GENERATE(table<std::string, bool>({
        {"sand", true},
        {"cement", false},
        {"gravel", false},
    }));
    INFO(name);
    auto options = read_options(Purpose::proportion);
    options.moisture_percent = {{name, 5.0}};
    const auto faults = faults_of(input::read_mix(sound_mix, "test.yaml", options).diagnostics);
    const Faults expected{"0:0 --moisture: '" + name + "' is not an aggregate of this file"};
    CHECK(faults == (known ? Faults{} : expected));
}

TEST_CASE("materials come from the yard") {
    const auto reading = read_with(mix_from_yard, {{"yard.yaml", yard}});
    REQUIRE(reading.mix);
    CHECK(reading.diagnostics.empty());
    const core::Mix& mix = std::get<core::CompleteMix>(*reading.mix);
    CHECK(mix.title == "Quay terrace"); // the yard's own title is another
    CHECK(mix.binder.at(0).material->kind == core::Kind::white_cement);
    CHECK(mix.coarse.at(0).material->aggregate.nominal_max_size_mm == 20);
    CHECK(mix.fine.at(0).material->aggregate.fineness_modulus == 2.6);
}

TEST_CASE("a yard with a byte-order mark is the same yard") {
    CHECK(read_with(mix_from_yard, {{"yard.yaml", "\xEF\xBB\xBF" + yard}}).mix.has_value());
}

TEST_CASE("yards that cannot be had") {
    const auto [name, fault] = GENERATE(table<std::string, std::string>({
        {"other.yaml", "mix.yaml:5:12 materials: 'other.yaml' cannot be read: it is not there"},
        {"../yard.yaml",
         "mix.yaml:5:12 materials: '../yard.yaml' lies outside the folder of this file"},
        {"/yard.yaml",
         "mix.yaml:5:12 materials: '/yard.yaml' lies outside the folder of this file"},
        {"a/../../yard.yaml",
         "mix.yaml:5:12 materials: 'a/../../yard.yaml' lies outside the folder of this file"},
        {"..\\yard.yaml",
         "mix.yaml:5:12 materials: '..\\yard.yaml' lies outside the folder of this file"},
    }));
    INFO(name);
    const auto reading =
        read_with(changed(mix_from_yard, "yard.yaml", name), {{"yard.yaml", yard}});
    CHECK_FALSE(reading.mix);
    CHECK(placed(reading.diagnostics) == Faults{fault});
}

TEST_CASE("a yard outside the folder is not even asked for") {
    auto options = read_options(Purpose::proportion);
    bool asked = false;
    options.load = [&](const std::string&) {
        asked = true;
        return std::variant<std::string, input::LoadFailure>{input::LoadFailure{""}};
    };
    input::read_mix(changed(mix_from_yard, "yard.yaml", "../yard.yaml"), "mix.yaml", options);
    CHECK_FALSE(asked);
    input::read_mix(mix_from_yard, "mix.yaml", options);
    CHECK(asked);
}

TEST_CASE("faults of a yard are told at their place in the yard") {
    struct Case {
        std::string from;
        std::string to;
        std::string fault;
    };
    const auto [from, to, fault] = GENERATE(values<Case>({
        {"boardmark: 1\n", "",
         "yard.yaml:1:1 the file has no 'boardmark'; it says which version of the format follows"},
        {"white cement", "white cment",
         "yard.yaml:4:18 materials.cement.kind: 'white cment' is not a kind of material known "
         "here"},
        {"title: The yard\n", "reporting: us\n",
         "yard.yaml:2:1 'reporting' is not a key of this format"},
        {"title: The yard\n", "title: *x\n", "yard.yaml:2:8 anchors and aliases are not supported"},
        {"absorption: 0.8 %, ", "",
         "yard.yaml:6:3 materials.sand has no 'absorption'; the aggregate test report has it"},
    }));
    INFO(to);
    const auto reading = read_with(mix_from_yard, {{"yard.yaml", changed(yard, from, to)}});
    CHECK_FALSE(reading.mix);
    CHECK(placed(reading.diagnostics) == Faults{fault});
}

TEST_CASE("a key behind the materials of a yard is judged like one before them") {
    const auto reading = read_with(mix_from_yard, {{"yard.yaml", yard + "reporting: us\n"}});
    CHECK(placed(reading.diagnostics) ==
          Faults{"yard.yaml:7:1 'reporting' is not a key of this format"});
}

TEST_CASE("faults of the mix come before those of its yard") {
    const auto reading = read_with(changed(mix_from_yard, "{cement: 100 %}", "{lime: 100 %}"),
                                   {{"yard.yaml", changed(yard, "white cement", "white cment")}});
    const Faults faults = placed(reading.diagnostics);
    REQUIRE(faults.size() == 2);
    CHECK(faults[0].starts_with("mix.yaml:7:12 "));
    CHECK(faults[1].starts_with("yard.yaml:4:18 "));
}
