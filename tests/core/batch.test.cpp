// Batch weights at the moistures of the stockpile.

#include <boardmark/core/basis/tables.hpp>
#include <boardmark/core/basis/unresolved.hpp>
#include <boardmark/core/batch/batch.hpp>

#include "base_mix.hpp"
#include "support.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;

namespace {

Solved mix_to_batch(const std::string& sand_moisture = "6.0 %") {
    std::string yaml = text({.requirements = "  average_strength: 5000 psi\n"});
    const std::size_t at = yaml.find("moisture: 6.0 %");
    yaml.replace(at, 15, "moisture: " + sand_moisture);
    return solve(yaml, input::Purpose::batch);
}

core::Batch batch_of(const Solved& solved, const core::BatchOrder& order) {
    return boardmark::test::made(
        core::batch(solved.proportions, order, solved.tables.water_density_kg_m3));
}

const core::BatchItem& item(const core::Batch& batch, const std::string& name) {
    return *std::ranges::find(batch.items, name, &core::BatchItem::name);
}

} // namespace

TEST_CASE("aggregates are weighed wet and their free water leaves the water") {
    const Solved solved = mix_to_batch();
    const core::Batch batch = batch_of(solved, {.volume_m3 = 0.05, .resolution_kg = {}});
    const double stone_dry = *solved.ingredient("stone").dry_kg_m3 * 0.05;
    const double sand_dry = *solved.ingredient("sand").dry_kg_m3 * 0.05;
    CHECK_THAT(item(batch, "stone").kg, WithinAbs(stone_dry * 1.02, 1e-9));
    CHECK_THAT(item(batch, "sand").kg, WithinAbs(sand_dry * 1.06, 1e-9));
    const double free_kg = stone_dry * 0.015 + sand_dry * 0.053;
    CHECK_THAT(batch.free_water_kg, WithinAbs(free_kg, 1e-9));
    CHECK_THAT(item(batch, "water").kg,
               WithinAbs(solved.ingredient("water").kg_m3 * 0.05 - free_kg, 1e-9));
    CHECK_THAT(batch.w_cm, WithinAbs(solved.proportions.totals.w_cm, 1e-12));
}

TEST_CASE("an aggregate drier than SSD takes water") {
    const core::Batch batch =
        batch_of(mix_to_batch("0.2 %"), {.volume_m3 = 0.05, .resolution_kg = {}});
    CHECK(*item(batch, "sand").free_water_kg < 0);
}

TEST_CASE("a stockpile wetter than the mix has room for leads to no batch") {
    try {
        batch_of(mix_to_batch("30 %"), {.volume_m3 = 0.05, .resolution_kg = {}});
        FAIL("a batch followed");
    } catch (const core::Unresolved& unresolved) {
        CHECK_THAT(unresolved.what.text, Contains("would be negative"));
        CHECK_THAT(unresolved.ways_out.front().text, Contains("measure the moistures again"));
    }
}

TEST_CASE("weights come in whole steps of the scale and the ratio is theirs") {
    const core::Batch batch = batch_of(mix_to_batch(), {.volume_m3 = 0.02, .resolution_kg = 0.5});
    double sum_kg = 0;
    for (const core::BatchItem& weighed : batch.items) {
        INFO(weighed.name);
        if (weighed.role != core::Role::admixture) {
            CHECK_THAT(std::remainder(weighed.kg, 0.5), WithinAbs(0, 1e-9));
        }
        sum_kg += weighed.kg;
    }
    CHECK_THAT(batch.mass_kg, WithinAbs(sum_kg, 1e-9));
    CHECK(batch.w_cm != Approx(0.48).margin(1e-6)); // no longer the exact one
    CHECK(batch.w_cm == Approx(0.48).margin(0.03));
}

TEST_CASE("a scale too coarse for an item is refused by its name") {
    try {
        batch_of(mix_to_batch(), {.volume_m3 = 0.002, .resolution_kg = 5});
        FAIL("a batch followed");
    } catch (const core::Unresolved& unresolved) {
        CHECK_THAT(unresolved.what.text, Contains("rounds to zero"));
    }
}

TEST_CASE("the ticket says when the reducer goes in and what is dosed by trial") {
    const core::Batch batch = batch_of(mix_to_batch(), {.volume_m3 = 0.05, .resolution_kg = {}});
    REQUIRE(batch.order.size() == 6);
    CHECK_THAT(batch.order[0].text, Contains("Weigh {tenth} of the water separately"));
    CHECK_THAT(batch.order[1].text, Contains("by trial") && Contains("before you weigh"));
    CHECK_THAT(batch.order[2].text, Contains("the rest of the water at the mixer"));
    CHECK_THAT(batch.order[3].text, Contains("Measure the slump before {name}"));
    CHECK_THAT(batch.order[4].text, Contains("Add only as much of the water set aside"));
    CHECK_THAT(batch.order[5].text, Contains("goes in last") && Contains("From then on add no water"));
    CHECK(item(batch, "agent").by_trial);
    CHECK(item(batch, "reducer").litres.has_value());
    CHECK_FALSE(item(batch, "cement").litres.has_value());
    CHECK(std::ranges::count(batch.items, "air", &core::BatchItem::name) == 0);
}

TEST_CASE("a ratio that rounding lifts over the limit is judged as it will be weighed") {
    std::string yaml = text({.requirements = "  average_strength: 5000 psi\n"
                                             "  exposure: [F2, S1, W1, C2]\n"});
    const Solved solved = solve(yaml, input::Purpose::batch);
    CHECK(solved.check("w_cm.exposure")->verdict == core::Verdict::holds);
    const core::Batch batch =
        batch_of(solved, {.volume_m3 = inside(1.25, "ft3"), .resolution_kg = inside(2, "lb")});
    REQUIRE(batch.w_cm > 0.405);
    const auto checks = core::assess(solved.mix, solved.proportions, batch, solved.tables);
    const auto found = std::ranges::find(checks, "w_cm.exposure", &core::Check::id);
    CHECK(found->verdict == core::Verdict::fails);
    CHECK(*found->value == batch.w_cm);
}

TEST_CASE("the ticket names the slump before the reducer") {
    const Solved solved = solve(text({.requirements = "  average_strength: 5000 psi\n"
                                                      "  slump_before_reducer: 3 in\n",
                                      .slump = "8 in"}),
                                input::Purpose::batch);
    const core::Batch batch = batch_of(solved, {.volume_m3 = 0.05, .resolution_kg = {}});
    CHECK(std::ranges::any_of(batch.order, [](const core::Phrase& step) {
        return step.text.find("{before}") != std::string::npos;
    }));
}
