// The mixture: shares, doses, roles, and which figures of the materials it makes necessary.

#include "mix_text.hpp"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinRel;
using core::DoseBasis;

namespace {

using Faults = std::vector<std::string>;

/// The sound mix with a second cementitious material and these shares.
std::string with_shares(const std::string& shares) {
    return changed(changed(sound_mix, "  stone:\n", "  slag: {kind: slag cement}\n  stone:\n"),
                   "binder: {cement: 100 %}", "binder: " + shares);
}

std::string without(const std::string& line) {
    return changed(sound_mix, line, "");
}

} // namespace

TEST_CASE("shares keep their order and their materials") {
    const core::Mix mix = mix_of(with_shares("{slag: 25 %, cement: 75 %}"));
    REQUIRE(mix.binder.size() == 2);
    CHECK(mix.binder[0].material->name == "slag");
    CHECK(mix.binder[0].percent == 25);
    CHECK(mix.binder[1].material->kind == core::Kind::portland_cement);
    CHECK(mix.binder[1].percent == 75);
}

TEST_CASE("shares add up to a hundred within one part in a million") {
    const auto [shares, fault] = GENERATE(table<std::string, std::string>({
        {"{cement: 75 %, slag: 25 %}", ""},
        {"{cement: 66.66666 %, slag: 33.33334 %}", ""},
        {"{cement: 66.66666 %, slag: 33.33333 %}", ""}, // 99.99999
        {"{cement: 66.6666 %, slag: 33.3333 %}",
         "23:3 mixture.binder adds up to 99.9999 %, not 100 %"},
        {"{cement: 75 %, slag: 20 %}", "23:3 mixture.binder adds up to 95 %, not 100 %"},
        {"{cement: 75 %, slag: 35.5 %}", "23:3 mixture.binder adds up to 110.5 %, not 100 %"},
    }));
    INFO(shares);
    const Faults expected = fault.empty() ? Faults{} : Faults{fault};
    CHECK(faults_in(with_shares(shares)) == expected);
}

TEST_CASE("a share that could not be read does not also spoil the sum") {
    CHECK(faults_in(with_shares("{cement: 75 %, slag: 25}")) ==
          Faults{"23:32 mixture.binder.slag: '25' has no unit; a percentage (%) is expected"});
}

TEST_CASE("names of the mixture stand for materials of their role") {
    struct Case {
        std::string from;
        std::string to;
        std::string fault;
    };
    const auto [from, to, fault] = GENERATE(values<Case>({
        {"{cement: 100 %}", "{cemnt: 100 %}", "22:12 'cemnt' is not among the materials"},
        {"{cement: 100 %}", "{sand: 100 %}", "22:12 mixture.binder: sand is fine aggregate"},
        {"{stone: 100 %}", "{cement: 100 %}", "23:12 mixture.coarse: cement is portland cement"},
        {"{sand: 100 %}", "{reducer: 100 %}",
         "24:10 mixture.fine: reducer is high-range water reducer"},
    }));
    INFO(to);
    CHECK(faults_in(changed(sound_mix, from, to)) == Faults{fault});
}

TEST_CASE("a material with a fault of its own is not also told as unknown") {
    CHECK(faults_in(changed(sound_mix, "kind: portland cement", "kind: portland cment")) ==
          Faults{"8:18 materials.cement.kind: 'portland cment' is not a kind of material known "
                 "here"});
}

TEST_CASE("doses keep the basis that they are written in") {
    struct Case {
        std::string written;
        DoseBasis basis;
        double amount;
    };
    const auto [written, basis, amount] = GENERATE(values<Case>({
        {"8 fl oz/cwt", DoseBasis::volume, 8 * 29.5735295625e-6 / 45.359237},
        {"650 mL/100 kg", DoseBasis::volume, 650e-8},
        {"0.8 %", DoseBasis::percent, 0.8},
    }));
    INFO(written);
    const core::Mix mix = mix_of(with_dose(written));
    REQUIRE(mix.admixtures.size() == 1);
    REQUIRE(mix.admixtures[0].dose);
    CHECK(mix.admixtures[0].dose->basis == basis);
    CHECK_THAT(mix.admixtures[0].dose->amount, WithinRel(amount, 1e-9));
}

TEST_CASE("as needed is no dose") {
    const core::Mix mix = mix_of(with_dose("as needed"));
    REQUIRE(mix.admixtures.size() == 1);
    CHECK_FALSE(mix.admixtures[0].dose);
}

TEST_CASE("a dose is held against the maximum of its product") {
    const auto [dose, maximum, fault] = GENERATE(table<std::string, std::string, std::string>({
        {"8 fl oz/cwt", "8 fl oz/cwt", ""},
        {"8 fl oz/cwt", "521.6 mL/100 kg", ""}, // 521.59: the same in other units
        {"8.1 fl oz/cwt", "8 fl oz/cwt",
         "25:25 mixture.admixtures.reducer: the dose is above 'maximum_dose', 8 fl oz/cwt"},
        {"0.8 %", "8 fl oz/cwt",
         "25:25 mixture.admixtures.reducer: the dose and 'maximum_dose' are in two kinds of unit"},
        {"as needed", "8 fl oz/cwt", ""},
    }));
    INFO(dose << " of at most " << maximum);
    const Faults expected = fault.empty() ? Faults{} : Faults{fault};
    CHECK(faults_in(with_dose(dose, "water_reduction: standard minimum, maximum_dose: " +
                                        maximum)) == expected);
}

TEST_CASE("a reduction is demanded only where the water comes from the table") {
    struct Case {
        std::string dose;
        std::string more; ///< further sections of the file
        bool demanded;
    };
    const auto [dose, more, demanded] = GENERATE(values<Case>({
        {"8 fl oz/cwt", "", true},
        {"as needed", "", false},
        {"8 fl oz/cwt", "selections: {water: 256 lb/yd3}\n", false},
        {"8 fl oz/cwt", "selections: {w_cm: 0.45, binder: 640 lb/yd3}\n", false},
        {"8 fl oz/cwt", "selections: {binder: 640 lb/yd3}\n", true},
        {"8 fl oz/cwt", "selections: {w_cm: 0.45}\n", true},
    }));
    INFO(dose << ", " << more);
    const Faults faults = faults_in(with_dose(dose, "solids: 35 %") + more);
    const Faults expected{"20:3 materials.reducer has no 'water_reduction'; the product data "
                          "sheet or the supplier has it"};
    CHECK(faults == (demanded ? expected : Faults{}));
}

TEST_CASE("a reducer that works for flow needs no reduction") {
    const std::string text = changed(with_dose("8 fl oz/cwt", "solids: 35 %"), "  slump: 4 in\n",
                                     "  slump: 8 in\n  slump_before_reducer: 3 in\n");
    CHECK(faults_in(text).empty());
}

TEST_CASE("a slump before the reducer asks for a high-range reducer in the mixture") {
    const Faults expected{"7:3 requirements.slump_before_reducer: the mixture holds no high-range "
                          "water reducer"};
    CHECK(faults_in(with_requirement("slump_before_reducer: 3 in")) == expected);
    const std::string of_normal_range =
        changed(changed(with_dose("8 fl oz/cwt"), "high-range water reducer", "water reducer"),
                "  slump: 4 in\n", "  slump: 4 in\n  slump_before_reducer: 3 in\n");
    CHECK(faults_in(of_normal_range) == expected);
}

TEST_CASE("a figure that the method needs is asked for with the paper that has it") {
    const auto [line, fault] = GENERATE(table<std::string, std::string>({
        {"    nominal_max_size: 3/4 in\n",
         "9:3 materials.stone has no 'nominal_max_size'; the water table needs it"},
        {"    relative_density: 2.68\n",
         "9:3 materials.stone has no 'relative_density'; the aggregate test report has it"},
        {"    absorption: 0.5 %\n",
         "9:3 materials.stone has no 'absorption'; the aggregate test report has it"},
        {"    dry_rodded_density: 100 lb/ft3\n",
         "9:3 materials.stone has no 'dry_rodded_density'; the aggregate test report has it"},
        {"    relative_density: 2.64\n",
         "15:3 materials.sand has no 'relative_density'; the aggregate test report has it"},
        {"    absorption: 0.7 %\n",
         "15:3 materials.sand has no 'absorption'; the aggregate test report has it"},
        {"    fineness_modulus: 2.8\n",
         "15:3 materials.sand has no 'fineness_modulus'; the sieve analysis of the sand has it"},
    }));
    INFO(line);
    CHECK(faults_in(without(line)) == Faults{fault});
}

TEST_CASE("figures that the selections make needless are not asked for") {
    const auto [line, selections] = GENERATE(table<std::string, std::string>({
        {"    dry_rodded_density: 100 lb/ft3\n", "selections: {fine_share: 44 %}\n"},
        {"    fineness_modulus: 2.8\n", "selections: {fine_share: 44 %}\n"},
        {"    fineness_modulus: 2.8\n", "selections: {coarse_volume: 0.62}\n"},
    }));
    INFO(line);
    CHECK(faults_in(without(line) + selections).empty());
}

TEST_CASE("a measured density of the blend stands in for those of its stones") {
    const std::string text =
        changed(without("    dry_rodded_density: 100 lb/ft3\n"), "  coarse: {stone: 100 %}\n",
                "  coarse: {stone: 100 %}\n  coarse_dry_rodded_density: 1650 kg/m3\n");
    CHECK(mix_of(text).blend_dry_rodded_density_kg_m3 == 1650);
}

TEST_CASE("usual figures stand in for missing ones where the file says so") {
    const auto line = GENERATE(as<std::string>{}, "    relative_density: 2.68\n",
                               "    absorption: 0.5 %\n", "    dry_rodded_density: 100 lb/ft3\n");
    INFO(line);
    CHECK(faults_in(changed(with_stone("    typical: yes\n"), line, "")).empty());
}

TEST_CASE("a batch asks for moistures and refuses usual figures") {
    const auto batch_faults = [](const std::string& text) {
        return faults_in(text, input::Purpose::batch);
    };
    const std::string wet = changed(with_sand("    moisture: 6.0 %\n"), "    absorption: 0.5 %\n",
                                    "    absorption: 0.5 %\n    moisture: 2.0 %\n");
    CHECK(batch_faults(wet).empty());
    CHECK(batch_faults(changed(wet, "    moisture: 6.0 %\n", "")) ==
          Faults{"16:3 materials.sand has no 'moisture'; batch weights need the moisture of "
                 "today's stockpile"});
    CHECK(batch_faults(
              changed(wet, "    moisture: 2.0 %\n", "    moisture: 2.0 %\n    typical: yes\n")) ==
          Faults{"15:5 materials.stone has usual figures only: an estimate must not be batched"});
}

TEST_CASE("a mixture has binder and coarse and fine aggregate") {
    const auto [line, fault] = GENERATE(table<std::string, std::string>({
        {"  binder: {cement: 100 %}\n", "21:1 mixture has no 'binder'"},
        {"  coarse: {stone: 100 %}\n", "21:1 mixture has no 'coarse'"},
        {"  fine: {sand: 100 %}\n", "21:1 mixture has no 'fine'"},
    }));
    INFO(line);
    CHECK(faults_in(without(line)) == Faults{fault});
}
