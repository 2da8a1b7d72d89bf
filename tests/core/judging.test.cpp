// Verdicts of many mixes: none of them costs an allocation.

#include "allocations.hpp"
#include "base_mix.hpp"
#include "support.hpp"

#include <catch2/catch.hpp>

namespace {

using namespace boardmark;

/// A mix that almost every check looks at.
const test::BaseMix busy{
    .requirements = "  exposure: [F2, S1, W1, C2]\n"
                    "  slump_window: 3 in to 5 in\n"
                    "  time_to_place: 60 min\n"
                    "  section: {thickness: 10 in, clear_bar_spacing: 5 in, clear_cover: 2 in}\n"
                    "  minimum_binder: 500 lb/yd3\n"
                    "  strength_curve: {0.36: 6900 psi, 0.40: 6200 psi, 0.45: 5400 psi}\n"
                    "  finish: board-marked\n",
    .reducer = "water_reduction: {4 fl oz/cwt: 8 %, 8 fl oz/cwt: 16 %}, maximum_dose: 12 fl "
               "oz/cwt, retains: {30 min: 90 %, 60 min: 75 %}",
    .binder = "{cement: 75 %, slag: 25 %}"};

} // namespace

TEST_CASE("the verdicts of a mix cost no allocation once the buffer has room") {
    test::BaseMix mix = busy;
    mix.requirements += GENERATE(
        as<std::string>{},
        "  strength_records: {tests: 18, standard_deviation: 480 psi, strength: 5000 psi, age: 9 "
        "months}\n",
        "  strength_records: {tests: 18, standard_deviation: 480 psi}\n",
        "  strength_records: {tests: 3, standard_deviation: 480 psi}\n");
    INFO(mix.requirements);
    const test::Solved solved = test::solve(test::text(mix));
    std::vector<core::Finding> verdicts;
    core::judge(solved.mix, solved.proportions, solved.tables, verdicts);
    const std::size_t found = verdicts.size();
    const std::size_t before = test::allocations;
    core::judge(solved.mix, solved.proportions, solved.tables, verdicts);
    const std::size_t after = test::allocations;
    CHECK(after - before == 0);
    CHECK(verdicts.size() == found);
    CHECK(found > 25); // of about thirty, so that there is something not to allocate for
    CHECK(before > 0); // counted at all
}

TEST_CASE("the figures of a mix cost no allocation once the buffer has room and are its own") {
    const test::Solved solved = test::solve(test::text(busy));
    const auto& mix = std::get<core::CompleteMix>(solved.mix);
    core::Proportions figures{};
    REQUIRE_FALSE(core::figures(mix, solved.tables, figures));
    const std::size_t before = test::allocations;
    const bool unresolved = core::figures(mix, solved.tables, figures).has_value();
    const std::size_t after = test::allocations;
    CHECK(after - before == 0);
    CHECK_FALSE(unresolved);
    CHECK(figures.worksheet.steps.empty());
    CHECK(figures.selection.w_cm == solved.proportions.selection.w_cm);
    CHECK(figures.totals.fresh_density_kg_m3 == solved.proportions.totals.fresh_density_kg_m3);
    REQUIRE(figures.ingredients.size() == solved.proportions.ingredients.size());
    for (std::size_t i = 0; i < figures.ingredients.size(); ++i) {
        CHECK(figures.ingredients[i].name == solved.proportions.ingredients[i].name);
        CHECK(figures.ingredients[i].kg_m3 == solved.proportions.ingredients[i].kg_m3);
    }
}
