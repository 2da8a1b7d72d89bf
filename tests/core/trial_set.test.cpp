// Trial sets: the same mix at several ratios, one slump, one air, one water.

#include <boardmark/core/trial/trial_set.hpp>

#include "base_mix.hpp"
#include "support.hpp"

#include <catch2/catch.hpp>

using namespace boardmark;
using namespace boardmark::test;
using Catch::Matchers::Contains;
using Catch::Matchers::WithinAbs;
using core::Verdict;

namespace {

core::CompleteMix mix_with(const std::string& requirements, const std::string& selections = "{}") {
    return std::get<core::CompleteMix>(
        read(text({.requirements = "  average_strength: 5000 psi\n" + requirements,
                   .selections = selections}),
             input::Purpose::batch));
}

core::TrialSet set_of(const core::CompleteMix& mix, const std::vector<double>& ratios,
                      const std::optional<core::BatchOrder>& order = std::nullopt) {
    return core::trial_set(mix, ratios, order, reference::tables(mix->system));
}

Verdict verdict(const core::TrialMix& mix, const std::string& id) {
    return std::ranges::find(mix.solved()->checks, id, &core::Check::id)->verdict;
}

bool advises(const core::TrialSet& set, const std::string& word) {
    return std::ranges::any_of(set.advice, [&](const core::Phrase& advice) {
        return advice.text.find(word) != std::string::npos;
    });
}

} // namespace

TEST_CASE("each mix of a set has its ratio, the same water and the same air") {
    const auto set = set_of(mix_with("  exposure: [F2]\n"), {0.36, 0.40, 0.45});
    REQUIRE(set.mixes.size() == 3);
    // ACI 211.1-91 Table 6.3.3: 305 lb/yd3 at 3/4 in, 3 to 4 in of slump, air-entrained; 16 % less
    for (const core::TrialMix& mix : set.mixes) {
        INFO(mix.w_cm);
        const core::Totals& totals = mix.solved()->proportions.totals;
        CHECK_THAT(totals.w_cm, WithinAbs(mix.w_cm, 1e-12));
        CHECK_THAT(in_unit(totals.water_kg_m3, "lb/yd3"), WithinAbs(305 * 0.84, 1e-6));
        CHECK(mix.solved()->proportions.selection.air_percent == 6);
        CHECK_THAT(*totals.volume_m3, WithinAbs(1, 1e-9));
    }
}

TEST_CASE("a ratio that breaks a limit is made all the same and fails") {
    // ACI 318-19 Table 19.3.2.1: C2 0.40
    const auto set = set_of(mix_with("  exposure: [C2]\n"), {0.36, 0.40, 0.45});
    CHECK(verdict(set.mixes[0], "w_cm.exposure") == Verdict::holds);
    CHECK(verdict(set.mixes[1], "w_cm.exposure") == Verdict::holds);
    CHECK(verdict(set.mixes[2], "w_cm.exposure") == Verdict::fails);
}

TEST_CASE("the least binder asked for does not move the ratio of a trial but its check fails") {
    const auto set = set_of(mix_with("  minimum_binder: 600 lb/yd3\n"), {0.40, 0.60});
    CHECK_THAT(set.mixes[1].solved()->proportions.totals.w_cm, WithinAbs(0.60, 1e-12));
    CHECK(verdict(set.mixes[0], "binder.minimum") == Verdict::holds);
    CHECK(verdict(set.mixes[1], "binder.minimum") == Verdict::fails);
}

TEST_CASE("a ratio from which no mix follows leaves the others as they are") {
    // 286 lb/yd3 of water at 0.12: 2380 lb/yd3 of cement (12.1 ft3) leave no room for sand
    const auto set = set_of(mix_with(""), {0.12, 0.40});
    CHECK(set.mixes[0].solved() == nullptr);
    CHECK(set.mixes[1].solved() != nullptr);
}

TEST_CASE("an order gives each mix its batch and judges it as weighed") {
    const auto set = set_of(
        mix_with("  exposure: [C2]\n"), {0.36, 0.40},
        core::BatchOrder{.volume_m3 = inside(1.25, "ft3"), .resolution_kg = inside(2, "lb")});
    for (const core::TrialMix& mix : set.mixes) {
        REQUIRE(mix.solved()->batch);
        const auto& checks = mix.solved()->checks;
        const auto ratio = std::ranges::find(checks, "w_cm.exposure", &core::Check::id);
        CHECK(*ratio->value == mix.solved()->batch->w_cm);
    }
    CHECK_FALSE(set_of(mix_with(""), {0.36, 0.40}).mixes[0].solved()->batch);
}

TEST_CASE("what a file fixes that a set must vary") {
    const auto [selections, what] = GENERATE(table<std::string, std::string>({
        {"{w_cm: 0.40}", "selections.w_cm"},
        {"{binder: 600 lb/yd3}", "selections.binder"},
        {"{binder: 600 lb/yd3, water: 260 lb/yd3}", "selections.binder"},
        {"{w_cm: 0.40, water: 260 lb/yd3}", "selections.w_cm"},
    }));
    INFO(selections);
    const auto fixed = core::fixed_for_a_set(mix_with("", selections)->selections);
    REQUIRE(fixed);
    CHECK_THAT(fixed->what.text, Contains(what));
    CHECK_THAT(fixed->ways_out.front().text, Contains("delete it"));
}

TEST_CASE("a reading of the charts of fine aggregate is one of a single ratio") {
    // Design of normal concrete mixes, 2nd edition, Figure 6: entered with the free w/c.
    core::Selections read{};
    read.fine_share_by_mass_percent = 31;
    const auto fixed = core::fixed_for_a_set(read);
    REQUIRE(fixed);
    CHECK_THAT(fixed->what.text, Contains("selections.fine_share_by_mass"));
    CHECK_THAT(fixed->ways_out.front().text, Contains("for each ratio"));
}

TEST_CASE("water, air and aggregate may be given: all mixes share them") {
    const core::CompleteMix mix =
        mix_with("", "{water: 260 lb/yd3, air: 5 %, coarse_volume: 0.60}");
    CHECK_FALSE(core::fixed_for_a_set(mix->selections));
    for (const core::TrialMix& trial : set_of(mix, {0.36, 0.40}).mixes) {
        CHECK_THAT(in_unit(trial.solved()->proportions.totals.water_kg_m3, "lb/yd3"),
                   WithinAbs(260, 1e-9));
    }
}

TEST_CASE("what to do with a set depends on its size, its range and its batches") {
    const core::CompleteMix mix = mix_with("  exposure: [C2]\n"); // 0.40
    CHECK(advises(set_of(mix, {0.36, 0.45}), "Two trials"));
    CHECK_FALSE(advises(set_of(mix, {0.36, 0.40, 0.45}), "Two trials"));
    CHECK(advises(set_of(mix, {0.42, 0.45, 0.50}), "outside these ratios"));
    CHECK(advises(set_of(mix, {0.30, 0.33, 0.36}), "outside these ratios"));
    CHECK_FALSE(advises(set_of(mix, {0.36, 0.40, 0.45}), "outside these ratios"));
    CHECK(advises(set_of(mix, {0.36, 0.40}), "--volume"));
    CHECK_FALSE(
        advises(set_of(mix, {0.36, 0.40}, core::BatchOrder{.volume_m3 = 0.04}), "--volume"));
}
