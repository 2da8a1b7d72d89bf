// A submitted mix: amounts of any volume become amounts of one cubic metre.

#include "mix_text.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <string>
#include <vector>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::WithinRel;

namespace {

using Faults = std::vector<std::string>;

const core::SubmittedAmount& amount_of(const core::SubmittedMix& mix, const std::string& name) {
    return *std::ranges::find(mix.amounts, name, [](const core::SubmittedAmount& amount) {
        return amount.material->name;
    });
}

/// The submitted mix with one amount more.
std::string with_amount(const std::string& line) {
    return changed(submitted_mix, "  air: 6 %\n", "  " + line + "\n  air: 6 %\n");
}

Faults check_faults(const std::string& yaml) {
    return faults_in(yaml, input::Purpose::check);
}

} // namespace

TEST_CASE("amounts arrive per cubic metre") {
    const core::SubmittedMix mix = submitted_of(submitted_mix); // of 2 m3
    CHECK(mix.title == "A submittal");
    CHECK(mix.water_kg_m3 == 150);
    CHECK_FALSE(mix.water_m3_m3);
    CHECK(mix.air_percent == 6);
    CHECK_FALSE(mix.water_includes_admixtures);
    REQUIRE(mix.amounts.size() == 3);
    CHECK(amount_of(mix, "cement").kg_m3 == 380);
    CHECK(amount_of(mix, "stone").kg_m3 == 1000);
    CHECK(amount_of(mix, "sand").kg_m3 == 770);
    CHECK_THAT(mix.nominal_max_size_mm, WithinRel(19.05, 1e-9));
}

TEST_CASE("amounts of a cubic yard are scaled to a cubic metre") {
    const core::SubmittedMix mix =
        submitted_of(changed(submitted_mix, "volume: 2 m3", "volume: 1 yd3"));
    CHECK_THAT(*mix.water_kg_m3, WithinRel(300 / 0.764554857984, 1e-9));
}

TEST_CASE("liquids may be submitted by volume") {
    const core::SubmittedMix water =
        submitted_of(changed(submitted_mix, "water: 300 kg", "water: 300 L"));
    CHECK_FALSE(water.water_kg_m3);
    CHECK_THAT(*water.water_m3_m3, WithinRel(0.15, 1e-9));

    const core::SubmittedMix reducer = submitted_of(with_amount("reducer: 5 L"));
    CHECK_FALSE(amount_of(reducer, "reducer").kg_m3);
    CHECK_THAT(*amount_of(reducer, "reducer").m3_m3, WithinRel(0.0025, 1e-9));

    CHECK(amount_of(submitted_of(with_amount("reducer: 5 kg")), "reducer").kg_m3 == 2.5);
}

TEST_CASE("an admixture as needed counts as nothing and is dosed by trial") {
    const core::SubmittedMix mix = submitted_of(with_amount("reducer: as needed"));
    CHECK(amount_of(mix, "reducer").by_trial);
    CHECK(amount_of(mix, "reducer").kg_m3 == 0);
    CHECK_FALSE(amount_of(mix, "cement").by_trial);
}

TEST_CASE("the water may be said to hold the liquid of the admixtures") {
    CHECK(submitted_of(with_amount("water_includes_admixtures: yes")).water_includes_admixtures);
}

TEST_CASE("the largest stone that is submitted gives the size") {
    const std::string two_stones =
        changed(with_amount("rubble: 100 kg"), "  sand: {kind",
                "  rubble: {kind: coarse aggregate, nominal_max_size: 40 mm}\n  sand: {kind");
    CHECK(submitted_of(two_stones).nominal_max_size_mm == 40);
    const std::string described_only = changed(two_stones, "  rubble: 100 kg\n", "");
    CHECK_THAT(submitted_of(described_only).nominal_max_size_mm, WithinRel(19.05, 1e-9));
}

TEST_CASE("what a submittal must say") {
    const auto [line, fault] = GENERATE(table<std::string, std::string>({
        {"  volume: 2 m3\n", "10:1 proportions has no 'volume'; amounts are of some volume"},
        {"  water: 300 kg\n", "10:1 proportions has no 'water'; the submittal has it"},
        {"  air: 6 %\n", "10:1 proportions has no 'air'; the submittal has it"},
        {"  cement: 760 kg\n",
         "10:1 proportions has no 'cementitious material'; the submittal has it"},
    }));
    INFO(line);
    CHECK(check_faults(changed(submitted_mix, line, "")) == Faults{fault});
}

TEST_CASE("amounts that are refused") {
    struct Case {
        std::string from;
        std::string to;
        std::string fault;
    };
    const auto [from, to, fault] = GENERATE(values<Case>({
        {"2 m3", "0 m3", "11:11 proportions.volume: 0 m3 is out of range (0.0001 m3 to 100 m3)"},
        {"2 m3", "-2 m3", "11:11 proportions.volume: -2 m3 is out of range (0.0001 m3 to 100 m3)"},
        {"300 kg", "0 kg", "12:10 proportions.water: concrete needs water"},
        {"760 kg", "0.5 m3",
         "13:11 proportions.cement: portland cement is submitted by mass; '0.5 m3' is not one"},
        {"2000 kg", "as needed",
         "14:10 proportions.stone: coarse aggregate is submitted by mass; 'as needed' is not one"},
        {"  cement: 760", "  cemnt: 760", "13:3 'cemnt' is not among the materials"},
        {", nominal_max_size: 3/4 in", "",
         "7:3 materials.stone has no 'nominal_max_size'; the air limits depend on it"},
    }));
    INFO(to);
    CHECK(check_faults(changed(submitted_mix, from, to)) == Faults{fault});
}

TEST_CASE("a submitted admixture is held against its data sheet") {
    // 760 kg of binder: 200 mL/100 kg are 1520 mL, 0.2 % are 1.52 kg; 1520 mL of 1.07 are 1.626 kg.
    struct Row {
        const char* maximum;
        const char* amount;
        bool above;
    };
    for (const Row& row : {Row{"200 mL/100 kg", "1520 mL", false},
                           Row{"200 mL/100 kg", "1530 mL", true}, Row{"0.2 %", "1.52 kg", false},
                           Row{"0.2 %", "1.53 kg", true}, Row{"200 mL/100 kg", "1.62 kg", false},
                           Row{"200 mL/100 kg", "1.64 kg", true}, Row{"0.2 %", "1415 mL", false},
                           Row{"0.2 %", "1435 mL", true}, Row{"0.2 %", "as needed", false}}) {
        INFO(row.maximum << ' ' << row.amount);
        const std::string text =
            changed(submitted_mix, "reducer: {kind: high-range water reducer",
                    std::string{"reducer: {kind: high-range water reducer, relative_density: 1.07, "
                                "maximum_dose: "} +
                        row.maximum) +
            "  reducer: " + row.amount + "\n";
        CHECK(check_faults(text) ==
              (row.above ? Faults{std::string{"17:12 proportions.reducer: the amount is above "
                                              "'maximum_dose', "} +
                                  row.maximum}
                         : Faults{}));
    }
}

TEST_CASE("what leads from a dose by volume to one by mass is asked for") {
    const std::string text =
        changed(submitted_mix, "reducer: {kind: high-range water reducer",
                "reducer: {kind: high-range water reducer, maximum_dose: 200 mL/100 kg") +
        "  reducer: 1 kg\n";
    const Faults faults = check_faults(text);
    REQUIRE(faults.size() == 1);
    CHECK(faults.front().find("has no 'relative_density'") != std::string::npos);
}

TEST_CASE("a batch of a submitted mix needs stone and sand") {
    for (const auto& [line, what] : {std::pair{"  stone: 2000 kg\n", "coarse aggregate"},
                                     std::pair{"  sand: 1540 kg\n", "fine aggregate"}}) {
        const Faults faults = faults_in(changed(submitted_mix, line, ""), input::Purpose::batch);
        CHECK(std::ranges::count(faults, std::string{"10:1 proportions has no '"} + what +
                                             "'; batch weights need it") == 1);
    }
}

TEST_CASE("no cementitious material is left where it weighs nothing") {
    CHECK(check_faults(changed(submitted_mix, "760 kg", "0 kg")) ==
          Faults{"10:1 proportions has no 'cementitious material'; the submittal has it"});
}

TEST_CASE("selections do not go with a submitted mix") {
    CHECK(check_faults(submitted_mix + "selections: {air: 5 %}\n") ==
          Faults{"17:1 'selections' do not go with submitted 'proportions'"});
}

TEST_CASE("only a batch of a submitted mix asks for the aggregate test reports") {
    CHECK(check_faults(submitted_mix).empty());
    CHECK(faults_in(submitted_mix, input::Purpose::batch).size() == 6);
}
